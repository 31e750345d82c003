import { randomInt } from "node:crypto";
import { isSealed, sealOf } from "../door/secretSeal.ts";

const LIFE_MS = 120_000;
const TRIES = 5;
const DIGITS = 8;
const CODES = 10 ** DIGITS;

export type PairedRole = "edit" | "view";

export type CodeTried =
  | { readonly ok: true; readonly role: PairedRole }
  | { readonly ok: false; readonly code: "no-code" | "wrong-code" };

/** One code at a time: good once, for two minutes, for five tries. Kept sealed, in memory only. */
export interface Pairing {
  /** A new code; one that waited is void. */
  make(role: PairedRole): { readonly code: string; readonly expiresAt: string };
  attempt(given: string): CodeTried;
  cancel(): void;
}

export function pairing(clock: () => Date): Pairing {
  let waiting: { seal: string; role: PairedRole; endsAtMs: number; triesLeft: number } | null =
    null;
  return {
    make: (role) => {
      const digits = String(randomInt(CODES)).padStart(DIGITS, "0");
      const endsAtMs = clock().getTime() + LIFE_MS;
      waiting = { seal: sealOf(digits), role, endsAtMs, triesLeft: TRIES };
      return {
        code: `${digits.slice(0, DIGITS / 2)} ${digits.slice(DIGITS / 2)}`,
        expiresAt: new Date(endsAtMs).toISOString(),
      };
    },
    attempt: (given) => {
      if (waiting === null || clock().getTime() >= waiting.endsAtMs) {
        waiting = null;
        return { ok: false, code: "no-code" };
      }
      const { seal, role } = waiting;
      if (isSealed(given.replace(/[\s-]/g, ""), seal)) {
        waiting = null;
        return { ok: true, role };
      }
      waiting.triesLeft -= 1;
      if (waiting.triesLeft === 0) waiting = null;
      return { ok: false, code: "wrong-code" };
    },
    cancel: () => {
      waiting = null;
    },
  };
}
