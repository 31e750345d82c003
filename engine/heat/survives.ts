import { type FuseGate, longestGates, longestOpening } from "./fuseOpeningTimeS.ts";
import {
  type Duration,
  type DurationLimits,
  durationOf,
  type Exposure,
  exposure,
  type FusedLump,
} from "./peakBehindFuse.ts";

export interface SurvivalQuestion extends FusedLump {
  /** Largest current any fault can drive through this conductor, A, > 0. */
  readonly largestFaultA: number;
  /** How far the proven peak may lie above one that really occurs, K, > 0. */
  readonly toleranceK: number;
  /** Most cells looked at before giving up on the tolerance (never on the bound). */
  readonly cellCountMax: number;
}

export interface Survival {
  /** Every current from 1.0 × rating to the largest fault is within its limit. */
  readonly ok: boolean;
  /** Where the margin is smallest. `peakC` is a proven upper bound over the whole stretch of currents. */
  readonly worst: Exposure;
  /** The same for each class of duration; null where no current falls into it. */
  readonly short: Exposure | null;
  readonly long: Exposure | null;
  readonly forever: Exposure | null;
  /** True when every bound is within the tolerance of a state that occurs. */
  readonly settled: boolean;
  readonly cellCount: number;
}

/** Currents from `low` to `high`, % of rating, all judged by one class of duration. */
interface Cell {
  readonly lowPercent: number;
  readonly highPercent: number;
  readonly duration: Duration;
  /** Current high, time of the low end: hotter than anything in the cell. */
  readonly bound: Exposure;
  /** Hottest found at the two ends. */
  readonly seenC: number;
}

/**
 * Does a conductor behind a fuse survive every current from the fuse's rating to the largest fault?
 *
 * Between grid points the answer stays sound because heat rises with current and with time, while the longest opening
 * time falls with current: over a cell [a, b] nothing is hotter than current b for the time of a. Cells begin and end
 * at every gate of the band and wherever the duration class changes; the hottest is halved (on a log scale) until its
 * bound lies within `toleranceK` of a state at one of its ends. Below the first guaranteed gate the current flows for
 * ever, and the steady temperature at the top of that stretch bounds it.
 *
 * @param asked  lump, fuse, limits by duration, largest fault A, tolerance K. Pure numbers; see `FusedLump`.
 * @returns the worst of each class. A bound that was not settled is still a bound: `ok` is never too kind.
 */
export function survives(asked: SurvivalQuestion): Survival {
  assertQuestion(asked);
  const question = laidOut(asked);
  const forever = foreverExposure(question);
  let cellCount = 0;
  let settled = true;
  const worstOf: Partial<Record<Duration, Exposure>> = forever ? { forever } : {};
  const stretches = timedStretches(question);
  for (const duration of ["short", "long", "forever"] as const) {
    const own = stretches.filter((stretch) => stretch.duration === duration);
    const search = hottest(own, cellsOf(question));
    cellCount += search.cellCount;
    settled &&= search.settled;
    const soFar = worstOf[duration];
    if (search.worst && !(soFar && soFar.marginK <= search.worst.marginK)) {
      worstOf[duration] = search.worst;
    }
  }
  const { short = null, long = null } = worstOf;
  const all = Object.values(worstOf).sort((a, b) => a.marginK - b.marginK);
  const worst = all[0] as Exposure;
  const ok = worst.marginK >= 0;
  return { ok, worst, short, long, forever: worstOf.forever ?? null, settled, cellCount };
}

/** With the fuse's longest time at a current in % of rating. */
interface Question extends SurvivalQuestion {
  readonly opensS: (loadPercent: number) => number | null;
}

/** Field by field, so that every question has its fields in the same places: code made fast for one serves the next. */
function laidOut(asked: SurvivalQuestion): Question {
  const { lump, limits, fuse } = asked;
  return {
    lump: {
      ohmPerM20: lump.ohmPerM20,
      alphaPerK: lump.alphaPerK,
      capacityJPerMK: lump.capacityJPerMK,
      loss: lump.loss,
    },
    metalJPerMK: asked.metalJPerMK,
    startC: asked.startC,
    fuse,
    ratingA: asked.ratingA,
    besideA: asked.besideA ?? 0,
    limits,
    largestFaultA: asked.largestFaultA,
    toleranceK: asked.toleranceK,
    cellCountMax: asked.cellCountMax,
    opensS: longestOpening(fuse),
  };
}

/** The stretch of currents at which the fuse is not guaranteed to open. */
function foreverExposure(question: Question): Exposure | null {
  const faultPercent = (100 * question.largestFaultA) / question.ratingA;
  const first = longestGates(question.fuse.points)[0];
  if (first !== undefined && first.loadPercent <= Math.min(100, faultPercent)) return null;
  const firstA = ((first?.loadPercent ?? Infinity) / 100) * question.ratingA;
  const currentA = Math.min(firstA, question.largestFaultA);
  return exposure(question, { currentA, timeS: null, duration: "forever" });
}

interface Stretch {
  readonly lowPercent: number;
  readonly highPercent: number;
  readonly duration: Duration;
}

/** Stretches of guaranteed opening, cut at the gates and where the class of duration changes. */
function timedStretches(question: Question): readonly Stretch[] {
  const faultPercent = (100 * question.largestFaultA) / question.ratingA;
  const gates = longestGates(question.fuse.points);
  const first = gates[0];
  if (first === undefined || first.loadPercent > faultPercent) return [];
  const cuts = new Set([faultPercent]);
  for (const [i, gate] of gates.entries()) {
    cuts.add(gate.loadPercent);
    if (question.fuse.reading === "interpolated") {
      for (const loadPercent of classChanges(gate, gates[i + 1], question.limits))
        cuts.add(loadPercent);
    }
  }
  const lowest = Math.max(first.loadPercent, Math.min(100, faultPercent));
  const sorted = [...cuts, lowest].filter((cut) => cut >= lowest && cut <= faultPercent);
  sorted.sort((a, b) => a - b);
  if (sorted.at(-1) === lowest) sorted.push(lowest);
  return sorted.slice(1).map((highPercent, i) => {
    const lowPercent = sorted[i] as number;
    const middleS = question.opensS(Math.sqrt(lowPercent * highPercent));
    return { lowPercent, highPercent, duration: durationOf(question.limits, middleS) };
  });
}

/** Where the line from a gate to the next (or on, at constant I²t) meets the two bounds of duration. */
function classChanges(gate: FuseGate, next: FuseGate | undefined, limits: DurationLimits) {
  const exponent = next
    ? Math.log(next.timeS / gate.timeS) / Math.log(next.loadPercent / gate.loadPercent)
    : -2;
  const changes: number[] = [];
  for (const timeS of [limits.shortS, limits.longS]) {
    const loadPercent = gate.loadPercent * (timeS / gate.timeS) ** (1 / exponent);
    if (loadPercent > gate.loadPercent && !(next && loadPercent >= next.loadPercent))
      changes.push(loadPercent);
  }
  return changes;
}

/** Makes cells of one class of duration. Cells side by side share an end, and halves the ends of the whole: each is followed once. */
function cellsOf(question: Question): CellMaker {
  const { limits, ratingA, fuse, opensS } = question;
  const capS = { short: limits.shortS, long: limits.longS, forever: Infinity };
  const endsC = new Map<number, number>();
  const cellOver = ({ lowPercent, highPercent, duration }: Stretch): Cell => {
    const timeAt = (loadPercent: number): number =>
      Math.min(opensS(loadPercent) as number, capS[duration]);
    const at = (loadPercent: number, timeS: number): Exposure =>
      exposure(question, { currentA: (loadPercent / 100) * ratingA, timeS, duration });
    const endC = (loadPercent: number): number => {
      const peakC = endsC.get(loadPercent) ?? at(loadPercent, timeAt(loadPercent)).peakC;
      endsC.set(loadPercent, peakC);
      return peakC;
    };
    const bound = at(highPercent, timeAt(lowPercent));
    // On a step of the staircase the time of the low end holds right up to the high end.
    const highC = fuse.reading === "staircase" ? bound.peakC : endC(highPercent);
    return { lowPercent, highPercent, duration, bound, seenC: Math.max(endC(lowPercent), highC) };
  };
  return { cellOver, toleranceK: question.toleranceK, cellCountMax: question.cellCountMax };
}

interface CellMaker extends Pick<SurvivalQuestion, "toleranceK" | "cellCountMax"> {
  readonly cellOver: (stretch: Stretch) => Cell;
}

/** Halves the hottest cell until its bound is near enough to something that occurs. All cells share one limit. */
function hottest(stretches: readonly Stretch[], { cellOver, toleranceK, cellCountMax }: CellMaker) {
  const cells = stretches.map(cellOver);
  let cellCount = cells.length;
  // Halves keep both ends of the whole: what was seen never falls.
  let seenC = Number.NEGATIVE_INFINITY;
  for (const cell of cells) seenC = Math.max(seenC, cell.seenC);
  for (;;) {
    let at = 0;
    for (let k = 1; k < cells.length; k++)
      if (cells[k]!.bound.peakC > cells[at]!.bound.peakC) at = k;
    const worst = cells[at];
    if (worst === undefined) return { worst: null, settled: true, cellCount };
    const near = worst.bound.peakC - seenC <= toleranceK;
    if (near || cellCount + 2 > cellCountMax) {
      return { worst: worst.bound, settled: near, cellCount };
    }
    const { duration, lowPercent, highPercent } = worst;
    const middle = Math.sqrt(lowPercent * highPercent);
    const low = cellOver({ lowPercent, highPercent: middle, duration });
    const high = cellOver({ lowPercent: middle, highPercent, duration });
    cells.splice(at, 1);
    cells.push(low, high);
    seenC = Math.max(seenC, low.seenC, high.seenC);
    cellCount += 2;
  }
}

function assertQuestion(question: SurvivalQuestion): void {
  const { limits, lump, ratingA, largestFaultA, toleranceK } = question;
  const ceilingC = lump.loss.temperaturesC.at(-1) as number;
  if (!(limits.shortC >= limits.longC && limits.longC >= limits.foreverC)) {
    throw new Error("limits: a longer time must not allow a hotter conductor");
  }
  if (!(limits.longS >= limits.shortS && limits.shortS > 0)) throw new Error("limits: times");
  if (!(ceilingC > limits.shortC)) {
    throw new Error(`the loss table ends at ${ceilingC} °C, within the limits`);
  }
  if (!(ratingA > 0 && largestFaultA > 0 && toleranceK > 0)) {
    throw new Error("rating, largest fault and tolerance must be above nil");
  }
}
