import { createPrivateKey, X509Certificate } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { CertifiedNames, KeyedCertificate } from "./authority.ts";

/** Where the shop lays its own certificate (with the chain behind it) and its key, in the folder of the door. */
const CERTIFICATE = "certificate.pem";
const KEY = "certificate-key.pem";

export type ShopCertificate =
  | { readonly ok: true; readonly keyed: KeyedCertificate; readonly names: CertifiedNames }
  | { readonly ok: false; readonly code: "no-shop-certificate" | "bad-shop-certificate" };

/** Reads the shop's certificate and sees that it can be used: of this day, made out to a host, with the key that belongs to it. */
export function shopCertificate(folder: string, now: Date): ShopCertificate {
  let keyed: KeyedCertificate;
  try {
    keyed = {
      certificate: readFileSync(join(folder, CERTIFICATE), "utf8"),
      key: readFileSync(join(folder, KEY), "utf8"),
    };
  } catch {
    return { ok: false, code: "no-shop-certificate" };
  }
  try {
    const certificate = new X509Certificate(keyed.certificate);
    const names = namesOf(certificate);
    const isNow = new Date(certificate.validFrom) <= now && now < new Date(certificate.validTo);
    const isMadeOut = names.addresses.length + names.names.length > 0;
    if (isNow && isMadeOut && certificate.checkPrivateKey(createPrivateKey(keyed.key))) {
      return { ok: true, keyed, names };
    }
  } catch {
    // Not a certificate or not a key: the same to the shop as one that does not fit.
  }
  return { ok: false, code: "bad-shop-certificate" };
}

/** Hosts a certificate is made out to. A name for a whole family of hosts (`*.`) names none, since the door's list is exact. */
function namesOf({ subjectAltName }: X509Certificate): CertifiedNames {
  const entries = (subjectAltName ?? "").split(", ");
  const after = (prefix: string): readonly string[] =>
    entries
      .filter((entry) => entry.startsWith(prefix))
      .map((entry) => entry.slice(prefix.length).toLowerCase())
      .filter((name) => /^[a-z0-9.-]+$/.test(name));
  return { addresses: after("IP Address:"), names: after("DNS:") };
}
