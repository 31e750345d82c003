import { type FusePoint, fuseOpeningTimeS } from "../heat/index.ts";
import type { PartOf } from "../job/index.ts";
import { fuseBand } from "../operate/index.ts";
import type { BandPoint, FuseBandCurve } from "./timeCurrent.ts";
import { READING } from "./wireSurvival.ts";

/**
 * Band of a fuse up to a current, as corners of straight lines on logarithmic paper. The fastest is read by the smallest current its
 * number can mean, the slowest by the largest.
 *
 * @param toA  largest current shown, A.
 */
export function fuseBandCurve(fuse: PartOf<"fuse">, toA: number): FuseBandCurve {
  const { points, largestA, smallestA, family } = fuseBand(fuse);
  const slowest = corners(points, largestA, toA, "maxS");
  const carried = points.filter(({ minS }) => minS === "never").at(-1);
  const firstMin = points.find(({ minS }) => minS !== null);
  const carries = carried ?? firstMin;
  return {
    family,
    fastest: corners(points, smallestA, toA, "minS"),
    slowest,
    carriesA: carries === undefined ? null : (carries.loadPercent / 100) * smallestA,
    opensFromA: slowest[0]?.currentA ?? null,
    publishedToA: slowest.findLast(({ published }) => published)?.currentA ?? null,
  };
}

function corners(
  points: readonly FusePoint[],
  ratingA: number,
  toA: number,
  edge: "minS" | "maxS",
): readonly BandPoint[] {
  const gates = points.filter((one) => typeof one[edge] === "number");
  const timeAt = (currentA: number): number | null =>
    fuseOpeningTimeS({ points, reading: READING, ratingA, currentA })[edge];
  const shown = gates.flatMap(({ loadPercent }): BandPoint[] => {
    const currentA = (loadPercent / 100) * ratingA;
    return currentA > toA ? [] : [{ currentA, timeS: timeAt(currentA)!, published: true }];
  });
  const last = gates.at(-1);
  if (last === undefined) return [];
  const endTimeS = timeAt(toA);
  const isBeyond = toA > (last.loadPercent / 100) * ratingA;
  // A shortest time of nought is no point on logarithmic paper: nothing is promised there.
  if (endTimeS === null || endTimeS === 0 || shown.length === 0) return shown;
  return shown.at(-1)!.currentA === toA
    ? shown
    : [...shown, { currentA: toA, timeS: endTimeS, published: !isBeyond }];
}
