import { type Duration, follow, noLoss } from "../heat/index.ts";
import type { LimitPoint } from "./timeCurrent.ts";
import type { PlacedLump } from "./wireLumps.ts";

/** How long a conductor may carry a current. */
export interface Permitted {
  /** Null: for ever. */
  readonly timeS: number | null;
  /** The limit that ends it. */
  readonly duration: Duration;
}

/** Halvings that find the largest lasting current: 1e-9 of it. */
const HALVINGS = 30;
/** Points between the ends of a curve. */
const POINT_COUNT = 48;
/** No wire of a vehicle carries more for ever, A: where the search ends. */
const MOST_A = 1e4;

/**
 * Longest time a conductor may carry a current, by the limits by duration: up to `shortS` all heat is kept and may end at `shortC`; up
 * to `longS` it may reach `longC`; for ever it may settle at `foreverC`. Falls, or stays, as the current rises.
 *
 * @param besideA  what flows in it besides and passes no fuse, A.
 */
export function permittedTime(
  { lump, metalJPerMK, startC, limits }: PlacedLump,
  throughFuseA: number,
  besideA = 0,
): Permitted {
  const currentA = throughFuseA + besideA;
  if (startC === null || startC >= limits.shortC) return { timeS: 0, duration: "short" };
  const from = { startC, currentA };
  const settled = follow(lump, from, { timeS: Number.POSITIVE_INFINITY });
  if (settled.stoppedBy === "steady" && Math.max(startC, settled.temperatureC) <= limits.foreverC)
    return { timeS: null, duration: "forever" };
  const long = follow(lump, from, { timeS: limits.longS, reachC: limits.longC });
  const longS = startC >= limits.longC ? 0 : Math.min(long.timeS, limits.longS);
  if (longS > limits.shortS) {
    return { timeS: longS, duration: longS === limits.longS ? "forever" : "long" };
  }
  const loss = noLoss({ fromC: startC, toC: limits.shortC + 1 });
  const kept = follow({ ...lump, capacityJPerMK: metalJPerMK, loss }, from, {
    timeS: limits.shortS,
    reachC: limits.shortC,
  });
  return {
    timeS: Math.min(kept.timeS, limits.shortS),
    duration: kept.stoppedBy === "temperature" ? "short" : "long",
  };
}

/** Largest current it may carry for ever, A; 0 where even none is too much. */
export function foreverCurrentA(placed: PlacedLump, besideA = 0): number {
  const isFine = (currentA: number): boolean =>
    permittedTime(placed, currentA, besideA).timeS === null;
  if (!isFine(0)) return 0;
  let [low, high] = [0, 1];
  while (isFine(high) && high < MOST_A) [low, high] = [high, 2 * high];
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (low + high) / 2;
    if (isFine(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Currents to sample between two, evenly on logarithmic paper, ends included. */
export function spacedCurrentsA(fromA: number, toA: number): readonly number[] {
  if (!(toA > fromA)) return [fromA];
  const ratio = Math.log(toA / fromA);
  return Array.from({ length: POINT_COUNT }, (_, k) =>
    k === POINT_COUNT - 1 ? toA : fromA * Math.exp((ratio * k) / (POINT_COUNT - 1)),
  );
}

/** The lowest limit of several conductors, or places of one, over the currents named. */
export function lowestLimit(
  places: readonly { readonly placed: PlacedLump; readonly besideA: number }[],
  currentsA: readonly number[],
): readonly LimitPoint[] {
  return currentsA.flatMap((currentA): LimitPoint[] => {
    let least: LimitPoint | null = null;
    for (const { placed, besideA } of places) {
      const { timeS, duration } = permittedTime(placed, currentA, besideA);
      if (timeS !== null && (least === null || timeS < least.timeS))
        least = { currentA, timeS, duration };
    }
    return least === null ? [] : [least];
  });
}
