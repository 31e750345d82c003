import { packingBounds } from "./packingBounds.ts";
import { packingPolish } from "./packingPolish.ts";
import { packingSearch } from "./packingSearch.ts";
import { seededRandom } from "./seededRandom.ts";
import { type RimPacking, smallPacking } from "./smallPackings.ts";

export interface PackedCircles {
  /** Centre of each circle about the middle of the rim, in the order of the diameters given, mm. */
  readonly centres: readonly { readonly xMm: number; readonly yMm: number }[];
  /** Diameter of the rim found, mm: no circle overlaps another or the rim by more than 1e-9 mm. */
  readonly tightestMm: number;
  /** No rim smaller than this can hold them, mm. Proven, not searched. */
  readonly lowerBoundMm: number;
  /** √Σd², mm: the rim whose area is that of the circles. */
  readonly areaBoundMm: number;
  /** Energy evaluations used; 0 where a closed form answers. */
  readonly stepCount: number;
  readonly seed: number;
}

/** Overlap allowed in a result, mm, at diameters of millimetres; scaled with the largest above that. */
const OVERLAP_MM = 1e-9;
/** Largest share of the steps kept for the last stage, and the most that stage is given. */
const POLISH_SHARE = 0.4;
const POLISH_STEPS = 900;

/**
 * Circles in the smallest enclosing circle.
 *
 * Up to three circles: closed form. From four on: a search that is repeatable (seed) and bounded (counted steps), so its
 * result is an upper bound of the best; `lowerBoundMm` says how far from it it can be at most. Every result is checked
 * pair by pair before it is returned.
 *
 * @param asked.diametersMm  each > 0, mm; at least one.
 * @param asked.seed         any integer.
 * @param asked.stepCount    energy evaluations allowed, ≥ 1; `packingStepCount` suggests one. More is never looser by more
 *                           than chance.
 */
export function packCircles(asked: {
  readonly diametersMm: readonly number[];
  readonly seed: number;
  readonly stepCount: number;
}): PackedCircles {
  const { diametersMm, seed } = asked;
  if (diametersMm.length === 0 || !diametersMm.every((d) => d > 0 && d < Infinity)) {
    throw new Error("circles: at least one, and every diameter above nil");
  }
  const order = [...diametersMm.keys()].sort((i, j) => diametersMm[j]! - diametersMm[i]! || i - j);
  const radii = order.map((i) => diametersMm[i]! / 2);
  const packed =
    radii.length <= 3 ? { ...smallPacking(radii), stepCount: 0 } : searched(radii, asked);
  const { lowerBound, areaBound } = packingBounds(radii);
  assertApart(radii, packed);
  const centres = new Array<{ xMm: number; yMm: number }>(radii.length);
  for (const [k, i] of order.entries()) {
    const [xMm, yMm] = packed.centres[k]!;
    centres[i] = { xMm, yMm };
  }
  return {
    centres,
    tightestMm: 2 * packed.radius,
    lowerBoundMm: 2 * lowerBound,
    areaBoundMm: 2 * areaBound,
    stepCount: packed.stepCount,
    seed,
  };
}

/** Steps that give a bundle of this many circles about the care of the published bench, whatever the machine. */
export function packingStepCount(circleCount: number): number {
  return Math.ceil(100_000 / (circleCount + 12));
}

function searched(
  radii: readonly number[],
  asked: { readonly seed: number; readonly stepCount: number },
): RimPacking & { readonly stepCount: number } {
  const mean = radii.reduce((sum, radius) => sum + radius, 0) / radii.length;
  const scaled = Float64Array.from(radii, (radius) => radius / mean);
  const kept = Math.min(POLISH_STEPS, Math.floor(asked.stepCount * POLISH_SHARE));
  const search = packingSearch(scaled, {
    stepCount: asked.stepCount - kept,
    random: seededRandom(asked.seed),
  });
  const { centres, rim, stepCount } = packingPolish(scaled, search.found, kept);
  return {
    radius: rim * mean,
    centres: radii.map((_, i) => [centres[2 * i]! * mean, centres[2 * i + 1]! * mean]),
    stepCount: search.stepCount + stepCount,
  };
}

/** The last word on every result: no pair and no circle and rim overlap. */
function assertApart(radii: readonly number[], packed: RimPacking): void {
  const slack = OVERLAP_MM * Math.max(1, packed.radius);
  for (const [i, [ax, ay]] of packed.centres.entries()) {
    if (!(Math.hypot(ax, ay) + radii[i]! <= packed.radius + slack)) {
      throw new Error(`circle ${i} sticks out of its rim`);
    }
    for (let j = 0; j < i; j++) {
      const [bx, by] = packed.centres[j]!;
      if (!(Math.hypot(ax - bx, ay - by) >= radii[i]! + radii[j]! - slack)) {
        throw new Error(`circles ${j} and ${i} overlap`);
      }
    }
  }
}
