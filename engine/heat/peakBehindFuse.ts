import { adiabaticEndC } from "./adiabatic.ts";
import { type FuseBand, longestOpeningS } from "./fuseOpeningTimeS.ts";
import { follow, type Lump } from "./transient.ts";

/** How long a conductor may be hot, and how hot. Shorter is hotter: shortC ≥ longC ≥ foreverC. */
export interface DurationLimits {
  /** Up to `shortS` the heat is reckoned as all kept (adiabatic) and may end at `shortC`. */
  readonly shortS: number;
  readonly shortC: number;
  /** Up to `longS` the conductor may reach `longC`. */
  readonly longS: number;
  readonly longC: number;
  /** Without end. */
  readonly foreverC: number;
}

export type Duration = "short" | "long" | "forever";

export interface FusedLump {
  /**
   * The conductor with its way of losing heat. Its loss table begins at or below `startC` and ends above every limit;
   * the end is the ceiling. With the capacity of the metal alone the peak is never underrated.
   */
  readonly lump: Lump;
  /** Heat capacity of the metal alone, J/mK: what the short class is reckoned with. */
  readonly metalJPerMK: number;
  /** Hottest healthy state, °C: where every fault begins. */
  readonly startC: number;
  readonly fuse: FuseBand;
  /** Rating of the fuse, A; the sum for fuses side by side. */
  readonly ratingA: number;
  /** What flows in the conductor besides and passes no fuse of these, A; absent: nothing. It heats, and opens nothing. */
  readonly besideA?: number;
  readonly limits: DurationLimits;
}

export interface Exposure {
  /** Through the conductor: what passes the fuse, and what flows besides, A. */
  readonly currentA: number;
  /** How long the current may flow; null: without end. */
  readonly timeS: number | null;
  readonly duration: Duration;
  readonly peakC: number;
  readonly limitC: number;
  readonly marginK: number;
  readonly i2tA2s: number | null;
  /** The peak lies beyond the end of the loss table; `peakC` is that end. */
  readonly overCeiling: boolean;
}

export function durationOf(limits: DurationLimits, timeS: number | null): Duration {
  if (timeS !== null && timeS <= limits.shortS) return "short";
  return timeS !== null && timeS <= limits.longS ? "long" : "forever";
}

/**
 * Hottest the conductor gets under a constant current for a time, against the limit of that duration. It never falls
 * when current or time grows: under a constant current the temperature moves one way, and the start counts as a peak.
 *
 * @param timeS     s; null: without end.
 * @param duration  the class to judge by; given apart so that a stretch of currents can be judged as one.
 */
export function exposure(
  fused: Pick<FusedLump, "lump" | "metalJPerMK" | "startC" | "limits" | "besideA">,
  fault: {
    readonly currentA: number;
    readonly timeS: number | null;
    readonly duration: Duration;
  },
): Exposure {
  const { timeS, duration } = fault;
  const currentA = fault.currentA + (fused.besideA ?? 0);
  const ceilingC = fused.lump.loss.temperaturesC.at(-1) as number;
  const i2tA2s = timeS === null ? null : currentA * currentA * timeS;
  const endC =
    duration === "short" && i2tA2s !== null
      ? adiabaticEndC({
          ohmPerM20: fused.lump.ohmPerM20,
          alphaPerK: fused.lump.alphaPerK,
          startC: fused.startC,
          capacityJPerMK: fused.metalJPerMK,
          i2tA2s,
        })
      : follow(
          fused.lump,
          { startC: fused.startC, currentA },
          { timeS: timeS ?? Number.POSITIVE_INFINITY },
        ).temperatureC;
  const peakC = Math.min(Math.max(fused.startC, endC), ceilingC);
  const limitC = fused.limits[`${duration}C`];
  const overCeiling = peakC >= ceilingC;
  return { currentA, timeS, duration, peakC, limitC, marginK: limitC - peakC, i2tA2s, overCeiling };
}

/**
 * One fault current behind a fuse: for how long at most, how hot, against which limit.
 *
 * @param currentA  A, constant until the fuse opens at its longest time.
 */
export function peakBehindFuse(fused: FusedLump, currentA: number): Exposure {
  const timeS = longestOpeningS(fused.fuse, (100 * currentA) / fused.ratingA);
  return exposure(fused, { currentA, timeS, duration: durationOf(fused.limits, timeS) });
}
