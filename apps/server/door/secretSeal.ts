import { createHash, randomBytes, timingSafeEqual } from "node:crypto";

const SECRET_BYTES = 32;

/** A secret nobody guesses: 256 bits, in letters an address and a cookie may hold. */
export function newSecret(): string {
  return randomBytes(SECRET_BYTES).toString("base64url");
}

/** What is kept in the place of a secret: its SHA-256, from which it cannot be had back. */
export function sealOf(secret: string): string {
  return createHash("sha256").update(secret, "utf8").digest("hex");
}

/** Whether a secret is the sealed one, in a time that says nothing about how much of it was right. */
export function isSealed(secret: string, seal: string): boolean {
  return timingSafeEqual(Buffer.from(sealOf(secret), "hex"), Buffer.from(seal, "hex"));
}
