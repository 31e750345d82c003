import { fuseOpeningTimeS } from "../heat/index.ts";
import type { PartOf } from "../job/index.ts";
import { fuseBand } from "../operate/index.ts";
import { fusesOf } from "./allWires.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { ShortPlan } from "./shortPlan.ts";
import { READING } from "./wireSurvival.ts";

/** Shortest and longest opening time of each watched fuse as a table over the logarithm of current over rating. */
export interface Opening {
  readonly ratingA: number;
  readonly minS: Float64Array;
  readonly maxS: Float64Array;
}

const CELLS_PER_DOUBLING = 32;
export const LOWEST_RATIO = 1;
const CELL_COUNT = 32 * 12;

/** Fuses alike share one table. */
export function openingTimes(
  { input }: ProofPlan,
  { fuseIds }: ShortPlan,
): readonly (Opening | null)[] {
  const fuses = fusesOf(input.job);
  const known = new Map<string, Opening>();
  return fuseIds.map((id) => {
    const fuse = fuses.get(id);
    if (fuse === undefined) return null;
    const { type, marking, ratingA } = fuse;
    const key = `${type} ${marking} ${ratingA}`;
    const opening = known.get(key) ?? openingOf(fuse);
    known.set(key, opening);
    return opening;
  });
}

function openingOf(fuse: PartOf<"fuse">): Opening {
  const { ratingA } = fuse;
  const { points, largestA, smallestA } = fuseBand(fuse);
  const minS = new Float64Array(CELL_COUNT);
  const maxS = new Float64Array(CELL_COUNT);
  for (let cell = 0; cell < CELL_COUNT; cell++) {
    const currentA = ratingA * LOWEST_RATIO * 2 ** (cell / CELLS_PER_DOUBLING);
    const at = (ratedA: number) =>
      fuseOpeningTimeS({ points, reading: READING, ratingA: ratedA, currentA });
    const bySmallest = at(smallestA);
    const byLargest = largestA === smallestA ? bySmallest : at(largestA);
    minS[cell] = bySmallest.minS ?? Infinity;
    maxS[cell] = byLargest.maxS ?? Infinity;
  }
  return { ratingA, minS, maxS };
}

export function cellOf(currentA: number, ratingA: number): number {
  const ratio = currentA / (ratingA * LOWEST_RATIO);
  return ratio < 1
    ? -1
    : Math.min(CELL_COUNT - 1, Math.floor(Math.log2(ratio) * CELLS_PER_DOUBLING));
}
