import { INSTALL_GUIDES } from "./installGuide.ts";
import type { AuthorityLine } from "./ownCertificates.ts";

const steps = (lines: readonly string[]): string =>
  `<ol>${lines.map((line) => `<li>${escaped(line)}</li>`).join("")}</ol>`;

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

/** The page a phone reads before it trusts the bench: plain, without a script, good for any browser. */
export function authorityPage(
  authority: AuthorityLine | null,
  secureAddress: string | null,
): string {
  const head = `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="color-scheme" content="light dark"><title>Copperwright: certificate</title></head><body><main>`;
  const tail = "</main></body></html>";
  if (authority === null) {
    return `${head}<h1>This bench has no certificate of its own</h1><p>Its owner can have one made on the bench's own machine, under Jobs, Other devices.</p>${tail}`;
  }
  const guides = INSTALL_GUIDES.map(
    ({ platform, install, remove }) =>
      `<section><h2>${escaped(platform)}</h2>${steps(install)}<p>To take it away again:</p>${steps(remove)}</section>`,
  ).join("");
  const address =
    secureAddress === null
      ? ""
      : `<p>Afterwards open <a href="${escaped(secureAddress)}">${escaped(secureAddress)}</a> and pair this device there.</p>`;
  return `${head}<h1>Let this device trust the bench</h1>
<p>With the certificate this device can edit, keep jobs for when there is no network, and have the bench as an app. The certificate can vouch for machines on a workshop's network only, for no web site and no mail.</p>
<p><a href="/authority.crt">The certificate</a>, good until ${authority.endsAt.slice(0, 10)}. This page came over a plain connection, so compare its SHA-256 fingerprint with the one on the bench's own machine:</p>
<p><code>${escaped(authority.sha256)}</code></p>
${guides}${address}${tail}`;
}
