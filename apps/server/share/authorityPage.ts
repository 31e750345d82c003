import { INSTALL_GUIDES } from "./installGuide.ts";
import type { AuthorityLine } from "./ownCertificates.ts";

/** A sheet of its own, since the page may hold no style. */
export const AUTHORITY_STYLE = `:root{color-scheme:light dark}
body{font:1.0625rem/1.5 system-ui,sans-serif;max-width:40rem;margin:0 auto;padding:1rem}
h1{font-size:1.5rem;line-height:1.25}h2{font-size:1.125rem;margin-top:2rem}
a{display:inline-block;padding:.5rem 0;font-weight:600}li{margin:.25rem 0}
`;

const head = `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><link rel="icon" href="/mark.svg" type="image/svg+xml"><link rel="stylesheet" href="/authority.css"><title>Copperwright: certificate</title></head><body><main>`;
const tail = "</main></body></html>";

const steps = (lines: readonly string[]): string =>
  `<ol>${lines.map((line) => `<li>${escaped(line)}</li>`).join("")}</ol>`;

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

/**
 * The page a phone reads before it trusts the bench: without a script, good for any browser. It does not show the fingerprint, since who can
 * alter the certificate on its way can alter this page: that is compared with the bench's own screen.
 */
export function authorityPage(
  authority: AuthorityLine | null,
  secureAddress: string | null,
): string {
  if (authority === null) {
    return `${head}<h1>This bench has no certificate of its own</h1><p>Its owner can have one made on the bench's own machine, under Jobs, Other devices.</p>${tail}`;
  }
  const guides = INSTALL_GUIDES.map(
    ({ platform, install, remove }) =>
      `<section><h2>${escaped(platform)}</h2>${steps(install)}<p>To take it away again:</p>${steps(remove)}</section>`,
  ).join("");
  const address = secureAddress === null ? "" : escaped(secureAddress);
  const afterwards =
    secureAddress === null
      ? "Afterwards the bench's secure address can be opened, while it is shared."
      : `Afterwards open <a href="${address}">${address}</a> and pair this device there.`;
  return `${head}<h1>Let this device trust the bench</h1>
<p>With the certificate this device can edit, keep jobs for when there is no network, and have the bench as an app. It can vouch for machines on a workshop's network only: for no web site and no mail. It is good until ${authority.endsAt.slice(0, 10)}.</p>
<p><a href="/authority.crt">The certificate</a></p>
<p>This page came over a plain connection. Before you trust the certificate, compare the SHA-256 fingerprint <strong>your device shows</strong> with the one on the bench's own machine, under Jobs, Other devices.</p>
<p>${afterwards}</p>
${guides}${tail}`;
}
