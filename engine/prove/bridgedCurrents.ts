import { settleFrom } from "../network/index.ts";
import type { QuickState } from "../operate/index.ts";
import type { ProofSolver } from "./proofSolver.ts";

/** Rounds of relays that chase each other; their whole cycle is far shorter. */
const ROUND_COUNT = 12;

/**
 * Largest current of every element under a short, A. Where a relay drops out with the volts, pulls again and drops again nothing comes
 * to rest: then every network on the way counts, from the relays as the fault finds them.
 *
 * @param state  without the short, at rest.
 * @param pulled  its relays.
 * @returns Infinity throughout where some network on the way has no solution.
 */
export function bridgedCurrents(
  { solve, compiled }: Pick<ProofSolver, "solve" | "compiled">,
  state: QuickState,
  pulled: readonly boolean[],
  short: NonNullable<QuickState["short"]>,
): Float64Array {
  const settled = solve({ ...state, short });
  if (settled.converged) return settled.elementA.map(Math.abs);
  const { overrides, shorts, relays } = settled.networkState;
  const largestA = new Float64Array(settled.elementA.length);
  for (let maxRoundCount = 1; maxRoundCount <= ROUND_COUNT; maxRoundCount++) {
    const options = { overrides, shorts, maxRoundCount, slopes: false };
    const met = settleFrom(compiled.compiledNetwork, relays, pulled, options);
    if (!met.converged) return largestA.fill(Number.POSITIVE_INFINITY);
    raise(largestA, met.solution.branchA);
    // At rest, or back where it was before: more rounds meet the same networks again.
    if (met.roundCount < maxRoundCount) break;
  }
  return largestA;
}

/** Every entry to the larger of itself and the size of the other's. */
export function raise(largestA: Float64Array, currentA: Float64Array): void {
  for (let k = 0; k < largestA.length; k++)
    largestA[k] = Math.max(largestA[k]!, Math.abs(currentA[k]!));
}
