import {
  type Duration,
  type DurationLimits,
  type FusePoint,
  type FuseReading,
  follow,
  type Survival,
  survives,
} from "../heat/index.ts";
import type { PartOf } from "../job/index.ts";
import { fuseBand } from "../operate/index.ts";
import type { Conductor } from "../route/index.ts";
import type { Exposure } from "./wireExposures.ts";
import type { PlacedLump } from "./wireLumps.ts";

/** What a current does to a conductor at worst, over every current there can be. */
export interface Peak {
  readonly currentA: number;
  /** Null: without end. */
  readonly timeS: number | null;
  readonly duration: Duration;
  readonly peakC: number;
  readonly limitC: number;
  readonly marginK: number;
  readonly i2tA2s: number | null;
}

export type Ruling = "saved" | "mend" | "stop" | "not-proven" | "unfused";

/** One conductor, one source and its fuses, in the place where that is worst. */
export interface SurvivalAnswer {
  readonly exposure: Exposure;
  readonly placed: PlacedLump;
  /** Null where nothing cuts a battery: there is no worst current below melting. */
  readonly worst: Peak | null;
  readonly short: Peak | null;
  readonly long: Peak | null;
  readonly forever: Peak | null;
  readonly ruling: Ruling;
  /** The ruling rests on a remembered limit. */
  readonly leansOnMemory: boolean;
  /** Why it is not proven: a remembered limit, or a fuse whose published band ends below the current that decides. */
  readonly why: "remembered-limit" | "band-ends" | null;
  /** Where the published band ends, % of rating. */
  readonly endPercent?: number;
}

/** The proven bound lies at most this far over a peak that occurs, K; cells looked at before that is given up. */
const TOLERANCE_K = 2;
const MOST_CELLS = 400;
/** Between its gates a fuse is read on straight lines, as `operate` reads it. */
export const READING: FuseReading = "interpolated";

/**
 * The survival theorem for one conductor: behind fuses F it outlives every fault, in every state, if for every current from
 * F to the most the source can give the heat by the longest opening time stays within the limit of that duration. No state has
 * to be named. Several fuses side by side count as one of their sum, read by the slowest of their bands.
 *
 * What flows in the conductor besides and passes no fuse of F (a touched return's own load, a running generator that joins by another
 * way) heats with the fault's current and opens nothing: the question is asked of I + L for the time of I.
 *
 * @param besideA   L, A; 0 where all the current comes through F.
 * @param carriesA  what the conductor may carry there by the published ratings, A: asked only when it matters.
 */
export function survivalOf(
  conductor: Conductor,
  exposure: Exposure,
  placed: PlacedLump,
  from: {
    readonly fuses: ReadonlyMap<string, PartOf<"fuse">>;
    readonly besideA: number;
    readonly carriesA: () => number;
  },
): SurvivalAnswer {
  const base = { exposure, placed };
  const none = { worst: null, short: null, long: null, forever: null };
  const { sumA, largestA, sourceKind } = exposure;
  if (placed.startC === null || placed.startC > placed.limits.shortC) {
    return { ...base, ...none, ...certain("stop") };
  }
  if (sumA === null || exposure.cut.length === 0) {
    if (sourceKind === "battery") return { ...base, ...none, ...certain("unfused") };
    const forever = endlessPeak(placed, largestA);
    const peaks = { worst: forever, short: null, long: null, forever };
    return { ...base, ...peaks, ...ruled(conductor, placed, peaks, largestA, from.carriesA) };
  }
  const bands = bandsOf(exposure.cut, from.fuses);
  const upTo = (largestFaultA: number): Peaks =>
    worstOfAll(
      bands.map((points) =>
        survives({
          lump: placed.lump,
          metalJPerMK: placed.metalJPerMK,
          startC: placed.startC!,
          fuse: { points, reading: READING },
          ratingA: sumA,
          besideA: from.besideA,
          limits: placed.limits,
          largestFaultA,
          toleranceK: TOLERANCE_K,
          cellCountMax: MOST_CELLS,
        }),
      ),
    );
  const peaks = upTo(Math.max(largestA, sumA / 100));
  const ruling = ruled(conductor, placed, peaks, sumA, from.carriesA);
  if (ruling.ruling !== "stop") return { ...base, ...peaks, ...ruling };
  const endPercent = Math.min(...bands.map(lastGatePercent));
  const endA = (endPercent / 100) * sumA;
  const within = endA < largestA ? upTo(endA) : peaks;
  const inBand = ruled(conductor, placed, within, sumA, from.carriesA);
  const isBeyond = inBand.ruling !== "stop";
  return isBeyond
    ? {
        ...base,
        ...peaks,
        ruling: "not-proven",
        leansOnMemory: false,
        why: "band-ends",
        endPercent,
      }
    : { ...base, ...within, ...inBand };
}

/** Beyond the last published longest time constant I²t is only the usual reading: nobody promises it. */
const lastGatePercent = (points: readonly FusePoint[]): number =>
  Math.max(...points.flatMap(({ loadPercent, maxS }) => (maxS === null ? [] : [loadPercent])));

type Peaks = Pick<SurvivalAnswer, "worst" | "short" | "long" | "forever">;

function worstOfAll(answers: readonly Survival[]): Peaks {
  const least = (peaks: readonly (Peak | null)[]): Peak | null =>
    peaks.reduce<Peak | null>(
      (low, one) => (one !== null && (low === null || one.marginK < low.marginK) ? one : low),
      null,
    );
  return {
    worst: least(answers.map(({ worst }) => worst)),
    short: least(answers.map(({ short }) => short)),
    long: least(answers.map(({ long }) => long)),
    forever: least(answers.map(({ forever }) => forever)),
  };
}

/** Distinct bands of the fuses of a set. */
export function bandsOf(
  cut: readonly string[],
  fuses: ReadonlyMap<string, PartOf<"fuse">>,
): readonly (readonly FusePoint[])[] {
  const bands = new Map(
    cut.map((id) => {
      const { family, points } = fuseBand(fuses.get(id)!);
      return [family, points] as const;
    }),
  );
  return [...bands.values()];
}

/** Where a conductor settles under a current nothing ends. */
function endlessPeak({ lump, startC, limits }: PlacedLump, currentA: number): Peak {
  const { temperatureC } = follow(lump, { startC: startC!, currentA }, { timeS: Infinity });
  const peakC = Math.max(startC!, temperatureC);
  const limitC = limits.foreverC;
  return {
    currentA,
    timeS: null,
    duration: "forever",
    peakC,
    limitC,
    marginK: limitC - peakC,
    i2tA2s: null,
  };
}

/**
 * Limits by duration. The one for seconds is published; those for hours and without end are remembered, so they alone neither
 * stop nor clear: what they would stop is stopped where the fuse is over the published rating or the conductor gets hotter than
 * even seconds allow, what they would clear is clear where it stays within its class or the fuse is within the published rating.
 */
function ruled(
  { rated }: Conductor,
  { classC, limits }: PlacedLump,
  { short, long, forever }: Peaks,
  sumA: number,
  carriesA: () => number,
): Pick<SurvivalAnswer, "ruling" | "leansOnMemory" | "why"> {
  const overRating = rated !== null && sumA > rated.value;
  if (short !== null && short.marginK < 0) return certain("stop");
  if (long !== null && long.marginK < 0) {
    return overRating || isOver(long, limits) ? certain("stop") : REMEMBERED;
  }
  if (forever !== null && forever.marginK < 0) return certain(overRating ? "stop" : "mend");
  const isCool = (peak: Peak | null): boolean => peak === null || peak.peakC <= classC;
  if ((isCool(long) && isCool(forever)) || sumA <= carriesA()) return certain("saved");
  return REMEMBERED;
}

const certain = (ruling: Ruling) => ({ ruling, leansOnMemory: false, why: null });
const REMEMBERED = {
  ruling: "not-proven",
  leansOnMemory: true,
  why: "remembered-limit",
} as const;

const isOver = ({ peakC }: Peak, { shortC }: DurationLimits): boolean => peakC > shortC;
