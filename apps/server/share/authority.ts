// Has to stand before the certificate library, which leans on it.
import "reflect-metadata";
import { webcrypto } from "node:crypto";
import { AsnConvert } from "@peculiar/asn1-schema";
import { GeneralName, GeneralSubtree, GeneralSubtrees, NameConstraints } from "@peculiar/asn1-x509";
import {
  AuthorityKeyIdentifierExtension,
  BasicConstraintsExtension,
  cryptoProvider,
  ExtendedKeyUsageExtension,
  Extension,
  KeyUsageFlags,
  KeyUsagesExtension,
  PemConverter,
  SubjectAlternativeNameExtension,
  SubjectKeyIdentifierExtension,
  X509Certificate,
  X509CertificateGenerator,
} from "@peculiar/x509";

const DAY_MS = 86_400_000;
/** An authority lives as long as a phone does; a leaf is made anew long before its end. */
const AUTHORITY_DAYS = 5 * 365;
const LEAF_DAYS = 30;
/** Clocks in a workshop are not all right. */
const EARLIER_DAYS = 1;
const SERVER_AUTHENTICATION = "1.3.6.1.5.5.7.3.1";
const NAME_CONSTRAINTS = "2.5.29.30";
const ALGORITHM = { name: "ECDSA", namedCurve: "P-256", hash: "SHA-256" } as const;
/** Addresses that mean something on a private network only (RFC 1918). */
const PRIVATE_NETWORKS = ["10.0.0.0/8", "172.16.0.0/12", "192.168.0.0/16"] as const;

/** A certificate and its private key, both as PEM text. */
export interface KeyedCertificate {
  readonly certificate: string;
  readonly key: string;
}

/** What a certificate is made out to. */
export interface CertifiedNames {
  readonly addresses: readonly string[];
  readonly names: readonly string[];
}

const pair = () => webcrypto.subtle.generateKey(ALGORITHM, true, ["sign", "verify"]);

async function keyText(key: webcrypto.CryptoKey): Promise<string> {
  return PemConverter.encode(await webcrypto.subtle.exportKey("pkcs8", key), "PRIVATE KEY");
}

function lifeFrom(now: Date, days: number): { notBefore: Date; notAfter: Date } {
  return {
    notBefore: new Date(now.getTime() - EARLIER_DAYS * DAY_MS),
    notAfter: new Date(now.getTime() + days * DAY_MS),
  };
}

/** A critical extension by which phones refuse whatever this authority might sign for any other host. */
function constraintsOf({ addresses, names }: CertifiedNames): Extension {
  const bases = [
    ...[...PRIVATE_NETWORKS, ...addresses.map((address) => `${address}/32`)].map(
      (iPAddress) => new GeneralName({ iPAddress }),
    ),
    ...names.map((dNSName) => new GeneralName({ dNSName })),
  ];
  const permittedSubtrees = new GeneralSubtrees(bases.map((base) => new GeneralSubtree({ base })));
  const constraints = new NameConstraints({ permittedSubtrees });
  return new Extension(NAME_CONSTRAINTS, true, AsnConvert.serialize(constraints));
}

/**
 * A certificate authority of this bench alone. It can vouch for servers on private networks and under the machine's own names, and for
 * nothing else: not for a bank, not for mail, not for another authority (RFC 5280, 4.2.1.9 and 4.2.1.10).
 */
export async function makeAuthority(reach: CertifiedNames, now: Date): Promise<KeyedCertificate> {
  cryptoProvider.set(webcrypto as Crypto);
  const keys = await pair();
  const made = await X509CertificateGenerator.createSelfSigned({
    // The day tells two authorities of one bench apart in a phone's list.
    name: `CN=Copperwright bench ${now.toISOString().slice(0, 10)}`,
    ...lifeFrom(now, AUTHORITY_DAYS),
    signingAlgorithm: ALGORITHM,
    keys: keys as CryptoKeyPair,
    extensions: [
      new BasicConstraintsExtension(true, 0, true),
      new KeyUsagesExtension(KeyUsageFlags.keyCertSign | KeyUsageFlags.cRLSign, true),
      new ExtendedKeyUsageExtension([SERVER_AUTHENTICATION]),
      constraintsOf(reach),
      await SubjectKeyIdentifierExtension.create(keys.publicKey as CryptoKey),
    ],
  });
  return { certificate: made.toString("pem"), key: await keyText(keys.privateKey) };
}

/** A short-lived certificate of the server, signed by the authority, for the addresses and names given. */
export async function makeLeaf(
  authority: KeyedCertificate,
  { addresses, names }: CertifiedNames,
  now: Date,
): Promise<KeyedCertificate> {
  cryptoProvider.set(webcrypto as Crypto);
  const issuer = new X509Certificate(authority.certificate);
  const signingKey = await webcrypto.subtle.importKey(
    "pkcs8",
    PemConverter.decodeFirst(authority.key),
    ALGORITHM,
    false,
    ["sign"],
  );
  const keys = await pair();
  const made = await X509CertificateGenerator.create({
    subject: "CN=Copperwright bench server",
    issuer: issuer.subject,
    ...lifeFrom(now, LEAF_DAYS),
    signingAlgorithm: ALGORITHM,
    signingKey: signingKey as CryptoKey,
    publicKey: keys.publicKey as CryptoKey,
    extensions: [
      new BasicConstraintsExtension(false, undefined, true),
      new KeyUsagesExtension(KeyUsageFlags.digitalSignature, true),
      new ExtendedKeyUsageExtension([SERVER_AUTHENTICATION]),
      new SubjectAlternativeNameExtension([
        ...addresses.map((value) => ({ type: "ip" as const, value })),
        ...names.map((value) => ({ type: "dns" as const, value })),
      ]),
      await AuthorityKeyIdentifierExtension.create(issuer.publicKey),
      await SubjectKeyIdentifierExtension.create(keys.publicKey as CryptoKey),
    ],
  });
  return { certificate: made.toString("pem"), key: await keyText(keys.privateKey) };
}
