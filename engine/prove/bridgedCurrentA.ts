import { settleFrom } from "../network/index.ts";
import type { QuickState } from "../operate/index.ts";
import type { ProofSolver } from "./proofSolver.ts";

/** Rounds of relays that chase each other; their whole cycle is far shorter. */
const ROUND_COUNT = 12;

/**
 * Largest current of an element under a short. Where a relay drops out with the volts, pulls again and drops again nothing comes to
 * rest: then every network on the way counts, from the relays as the fault finds them.
 *
 * @param state  without the short, at rest.
 * @returns Infinity where some network on the way has no solution.
 */
export function bridgedCurrentA(
  { solve, compiled }: Pick<ProofSolver, "solve" | "compiled">,
  state: QuickState,
  short: NonNullable<QuickState["short"]>,
  element: number,
): number {
  const bridged = { ...state, short };
  const settled = solve(bridged);
  if (settled.converged) return Math.abs(settled.elementA[element]!);
  const { pulled } = solve(state);
  const { overrides, shorts, relays } = compiled.solveBoth(bridged).networkState;
  let largestA = 0;
  for (let maxRoundCount = 1; maxRoundCount <= ROUND_COUNT; maxRoundCount++) {
    const options = { overrides, shorts, maxRoundCount };
    const met = settleFrom(compiled.compiledNetwork, relays, pulled, options);
    if (!met.converged) return Number.POSITIVE_INFINITY;
    largestA = Math.max(largestA, Math.abs(met.solution.branchA[element]!));
  }
  return largestA;
}
