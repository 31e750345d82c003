import { fuseOpeningTimeS, peakBehindFuse } from "../heat/index.ts";
import type { PartOf } from "../job/index.ts";
import { fuseBand } from "../operate/index.ts";
import type { DangerRegion, LimitPoint, TimeCurrentPoint } from "./timeCurrent.ts";
import type { PlacedLump } from "./wireLumps.ts";
import { READING } from "./wireSurvival.ts";

/** A conductor where it lies, with what it carries that passes no fuse of these, A. */
export interface LimitedPlace {
  readonly placed: PlacedLump;
  readonly besideA: number;
}

/**
 * Stretches of current at which the fuse may take longer than some wire may carry it: the same question the survival theorem asks, at
 * the points of the curve.
 *
 * @param points  lowest limit of the places, up to the largest current the source can give.
 * @param topS    where "it need not open at all" is drawn, s.
 */
export function fuseDanger(
  fuse: PartOf<"fuse">,
  curve: { readonly makeId: string; readonly places: readonly LimitedPlace[] },
  points: readonly LimitPoint[],
  topS: number,
): readonly DangerRegion[] {
  const { points: gates, largestA } = fuseBand(fuse);
  const band = { points: gates, reading: READING };
  const regions: DangerRegion[] = [];
  let [lower, upper]: [TimeCurrentPoint[], TimeCurrentPoint[]] = [[], []];
  const close = (): void => {
    if (lower.length > 0) {
      const [fromA, toA] = [lower[0]!.currentA, lower.at(-1)!.currentA];
      regions.push({ makeId: curve.makeId, fromA, toA, lower, upper });
    }
    [lower, upper] = [[], []];
  };
  for (const { currentA, timeS } of points) {
    if (curve.places.every((place) => outlives(place, band, largestA, currentA))) close();
    else {
      const { maxS } = fuseOpeningTimeS({ ...band, ratingA: largestA, currentA });
      lower.push({ currentA, timeS });
      upper.push({ currentA, timeS: Math.max(timeS, maxS ?? topS) });
    }
  }
  close();
  return regions;
}

function outlives(
  { placed, besideA }: LimitedPlace,
  fuse: {
    readonly points: ReturnType<typeof fuseBand>["points"];
    readonly reading: typeof READING;
  },
  ratingA: number,
  currentA: number,
): boolean {
  const { startC, limits } = placed;
  if (startC === null || startC > limits.shortC) return false;
  return peakBehindFuse({ ...placed, startC, fuse, ratingA, besideA }, currentA).marginK >= 0;
}
