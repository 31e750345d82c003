import type { Basis } from "../job/index.ts";

/** From what was measured on the machine to what somebody supposes. */
const strongestFirst: readonly Basis[] = ["measured", "stated", "chosen", "estimated"];

/** Basis of a sum: that of its weakest part. `measured` for no parts at all. */
export function weakestBasis(bases: readonly Basis[]): Basis {
  const weakest = Math.max(0, ...bases.map((basis) => strongestFirst.indexOf(basis)));
  return strongestFirst[weakest] as Basis;
}
