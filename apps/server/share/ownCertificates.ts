import { X509Certificate } from "node:crypto";
import * as z from "zod";
import type { CertifiedNames, KeyedCertificate } from "./authority.ts";
import type { PrivateFiles } from "./privateFiles.ts";

const AUTHORITY_FILE = "authority";
const LEAF_FILE = "leaf";
const DAY_MS = 86_400_000;
/** A leaf is made anew when no more than this is left of it. */
const RENEW_DAYS = 15;
const PRIVATE = /^(10\.|192\.168\.|172\.(1[6-9]|2\d|3[01])\.)/;

const namesSchema = z.object({ addresses: z.array(z.string()), names: z.array(z.string()) });
const keyedSchema = z.object({ certificate: z.string(), key: z.string() });
const authoritySchema = keyedSchema.extend({ madeAt: z.string(), reach: namesSchema });
const leafSchema = keyedSchema.extend({ made: namesSchema });

/** What the owner compares with what a phone shows before trusting it. */
export interface AuthorityLine {
  readonly madeAt: string;
  readonly endsAt: string;
  readonly sha256: string;
}

/** The bench's own certificate authority and the server's certificate made from it, in files only the owner can read. */
export interface OwnCertificates {
  line(): AuthorityLine | null;
  /** The certificate alone, as bytes (DER); never the key. */
  authorityBytes(): Uint8Array | null;
  /** A new authority; the former one, and what it signed, is gone. */
  make(reach: CertifiedNames): Promise<void>;
  remove(): void;
  /** The server's certificate for these names, renewed where it is due; null where the authority is missing, over, or may not vouch for them. */
  leaf(wanted: CertifiedNames): Promise<KeyedCertificate | null>;
}

/** The library that makes certificates takes a sixth of a second to load, so only a bench that has phones pays for it. */
const maker = () => import("./authority.ts");

export function ownCertificates(files: PrivateFiles, clock: () => Date): OwnCertificates {
  const authority = () => {
    const kept = files.read(AUTHORITY_FILE);
    return kept === null ? null : authoritySchema.parse(kept);
  };
  const keptLeaf = () => {
    const kept = leafSchema.safeParse(files.read(LEAF_FILE));
    return kept.success ? kept.data : null;
  };
  return {
    line: () => {
      const kept = authority();
      if (kept === null) return null;
      const { validTo, fingerprint256 } = new X509Certificate(kept.certificate);
      const endsAt = new Date(validTo).toISOString();
      return { madeAt: kept.madeAt, endsAt, sha256: fingerprint256 };
    },
    authorityBytes: () => {
      const kept = authority();
      return kept === null ? null : new X509Certificate(kept.certificate).raw;
    },
    make: async (reach) => {
      const made = await (await maker()).makeAuthority(reach, clock());
      files.remove(LEAF_FILE);
      files.write(AUTHORITY_FILE, { ...made, madeAt: clock().toISOString(), reach });
    },
    remove: () => {
      files.remove(LEAF_FILE);
      files.remove(AUTHORITY_FILE);
    },
    leaf: async (wanted) => {
      const kept = authority();
      if (kept === null || hasEnded(kept, clock(), 0)) return null;
      const made = vouchedFor(wanted, kept.reach);
      if (made.addresses.length < wanted.addresses.length) return null;
      const former = keptLeaf();
      const isSame = former !== null && JSON.stringify(former.made) === JSON.stringify(made);
      if (isSame && !hasEnded(former, clock(), RENEW_DAYS)) return former;
      const fresh = await (await maker()).makeLeaf(kept, made, clock());
      files.write(LEAF_FILE, { ...fresh, made });
      return fresh;
    },
  };
}

function hasEnded({ certificate }: KeyedCertificate, now: Date, sparedDays: number): boolean {
  const endsAtMs = new Date(new X509Certificate(certificate).validTo).getTime();
  return now.getTime() > endsAtMs - sparedDays * DAY_MS;
}

/** What the authority's constraints leave of the names: private addresses always, others as it was made with. */
function vouchedFor(wanted: CertifiedNames, reach: CertifiedNames): CertifiedNames {
  return {
    addresses: wanted.addresses.filter(
      (address) => PRIVATE.test(address) || reach.addresses.includes(address),
    ),
    names: wanted.names.filter((name) => reach.names.includes(name)),
  };
}
