import { type FusePoint, fuseOpeningTimeS, type OpeningTime } from "../heat/index.ts";
import type { PartOf } from "../job/index.ts";
import { allTables } from "../tables/index.ts";

/** The published gates a fuse is read by. */
export interface FuseBandOfPart {
  readonly family: string;
  readonly points: readonly FusePoint[];
  /** Continuous rating if the number on it is the largest it can mean, and the smallest, A. */
  readonly largestA: number;
  readonly smallestA: number;
}

/** A fuse of unknown make is read by the slowest family there is. */
const FAMILY = {
  blade: "blade",
  mini: "blade",
  maxi: "maxi",
  "glass-6.3x32": "glass",
  "glass-5x20": "glass-5x20",
  "glass-british": "glass",
  torpedo: "torpedo",
  unknown: "glass",
} as const satisfies Record<PartOf<"fuse">["type"], string>;

/**
 * Time-current band of a fuse by its type and marking. A number that states the blow current is turned into continuous amperes
 * by the lower of the printed chart and half; where nobody knows what the number means both readings are kept.
 */
export function fuseBand(part: PartOf<"fuse">): FuseBandOfPart {
  const continuousA = continuousOfBlowA(part.ratingA);
  const largestA = part.marking === "blow" ? continuousA : part.ratingA;
  const smallestA = part.marking === "continuous" ? part.ratingA : continuousA;
  const wanted = FAMILY[part.type];
  const family = wanted === "blade" && largestA > 30 ? "blade-large" : wanted;
  return { family, points: gates(family, largestA), largestA, smallestA };
}

/** Shortest opening time by the smallest reading of its number, longest by the largest, at a constant current. */
export function fuseOpensS(part: PartOf<"fuse">, currentA: number): OpeningTime {
  const { points, largestA, smallestA } = fuseBand(part);
  const at = (ratingA: number): OpeningTime =>
    fuseOpeningTimeS({ points, reading: "interpolated", ratingA, currentA: Math.abs(currentA) });
  return { minS: at(smallestA).minS, maxS: at(largestA).maxS };
}

function continuousOfBlowA(markedA: number): number {
  const chart = allTables.fuseMarkingConversion.rows
    .filter((row) => row.markedBlowA === markedA)
    .map((row) => row.continuousA);
  return Math.min(markedA / 2, ...chart);
}

/** Gates of a family for a rating; outside the ratings a family is published for, those of its nearest rating. */
function gates(family: string, ratingA: number): readonly FusePoint[] {
  const rows = allTables.fuseTimeCurrent.rows.filter((row) => row.family === family);
  const awayA = ({ ratingFromA, ratingToA }: (typeof rows)[number]): number =>
    Math.max(ratingFromA - ratingA, ratingA - ratingToA, 0);
  const nearestA = Math.min(...rows.map(awayA));
  const points = new Map<number, FusePoint>();
  for (const row of rows) {
    if (awayA(row) > nearestA) continue;
    const { loadPercent, minTimeS, maxTimeS } = row;
    const before = points.get(loadPercent);
    points.set(loadPercent, {
      loadPercent,
      minS: minTimeS ?? before?.minS ?? null,
      maxS: maxTimeS ?? before?.maxS ?? null,
    });
  }
  return [...points.values()].sort((a, b) => a.loadPercent - b.loadPercent);
}
