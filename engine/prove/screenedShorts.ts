import { fuseOpeningTimeS } from "../heat/index.ts";
import { planScreen, screenFaults } from "../network/index.ts";
import type { CompiledJob, QuickState } from "../operate/index.ts";
import { fuseBand } from "../operate/index.ts";
import { fusesOf } from "./allWires.ts";
import type { ProofPlan } from "./proofPlan.ts";
import { type ShortPlan, shortPlan } from "./shortPlan.ts";
import { READING } from "./wireSurvival.ts";

export interface ScreenedShorts {
  readonly screenedCount: number;
  readonly confirmedCount: number;
  /** Largest difference of a screened fault current from the full solve, %, over shorts to earth of more than 5 A that move no relay. */
  readonly largestErrorPercent: number;
  /** The same between neighbours: one that feeds a cold lamp is screened with the cold lamp's slope, far too high. */
  readonly neighbourErrorPercent: number;
  /** Confirmed shorts that moved a relay: no screening holds for them. */
  readonly relayMovedCount: number;
  /** Screened shorts in which each fuse is the first to open by its longest time. */
  readonly firstToOpen: Readonly<Record<string, number>>;
  /** Fuses that would open in no order one can be sure of: the band of the one overlaps that of the other. */
  readonly overlaps: Readonly<Record<string, readonly string[]>>;
  /** Shorts no fuse opens although one of them carries more than its rating. */
  readonly sustainedCount: number;
}

/** Every so many-th screened short is solved in full to measure the screening. */
const CONFIRM_EVERY = 499;
/** Smaller currents open no fuse worth the name, A. */
const LEAST_COMPARED_A = 5;
/** Pairs screened in one go. */
const PAIRS_AT_ONCE = 2048;

/** A state with the nodes no other state feeds better. */
export interface StateToScreen {
  readonly state: QuickState;
  readonly nodes: ReadonlySet<number>;
}

/** Places times states up to which every place is screened in every state; beyond, in the states that feed one of its ends best. */
const MOST_EVERYWHERE = 200_000;

/**
 * Screens every short of the plan in the states that feed some node best, one factorisation a state; of a machine too large for that
 * in the states that feed one of its own ends best.
 *
 * @param ofCount  number of states of all shares together.
 */
export function screenedShorts(
  plan: ProofPlan,
  compiled: CompiledJob,
  states: readonly StateToScreen[],
  ofCount = states.length,
): ScreenedShorts {
  const shorts = shortPlan(plan);
  const isEverywhere = shorts.pairs.length * ofCount <= MOST_EVERYWHERE;
  const opening = openingTimes(plan, shorts);
  const tally = newTally(shorts);
  for (const { state, nodes } of states) {
    const fed = isEverywhere
      ? shorts.pairs
      : shorts.pairs.filter(([a, b]) => nodes.has(a) || nodes.has(b));
    if (fed.length === 0 || !compiled.solve(state).converged) continue;
    for (let from = 0; from < fed.length; from += PAIRS_AT_ONCE) {
      const pairs = fed.slice(from, from + PAIRS_AT_ONCE);
      const screen = planScreen(compiled.compiledNetwork, {
        pairs,
        shortOhm: shorts.shortOhm,
        monitoredBranches: shorts.watched,
      });
      // The confirming solves before have moved the workspace on.
      if (from > 0) compiled.solve(state);
      screenFaults(screen);
      tallyScreen(tally, screen.monitoredA, shorts, opening);
      confirm(tally, plan, compiled, state, { pairs, shorts, screen });
    }
  }
  const byFuse = (counts: readonly number[]) =>
    Object.fromEntries(shorts.fuseIds.flatMap((id, k) => (id === "" ? [] : [[id, counts[k]!]])));
  return {
    screenedCount: tally.screenedCount,
    confirmedCount: tally.confirmedCount,
    largestErrorPercent: tally.largestErrorPercent,
    neighbourErrorPercent: tally.neighbourErrorPercent,
    relayMovedCount: tally.relayMovedCount,
    firstToOpen: byFuse(tally.first),
    overlaps: Object.fromEntries(
      shorts.fuseIds.flatMap((id, k) =>
        id === "" ? [] : [[id, shorts.fuseIds.filter((_, j) => tally.overlap[k]!.has(j))]],
      ),
    ),
    sustainedCount: tally.sustainedCount,
  };
}

interface Tally {
  screenedCount: number;
  confirmedCount: number;
  largestErrorPercent: number;
  neighbourErrorPercent: number;
  relayMovedCount: number;
  sustainedCount: number;
  readonly first: number[];
  readonly overlap: Set<number>[];
}

function newTally({ watched }: ShortPlan): Tally {
  return {
    screenedCount: 0,
    confirmedCount: 0,
    largestErrorPercent: 0,
    neighbourErrorPercent: 0,
    relayMovedCount: 0,
    sustainedCount: 0,
    first: watched.map(() => 0),
    overlap: watched.map(() => new Set()),
  };
}

/** Shortest and longest opening time of each watched fuse as a table over the logarithm of current over rating. */
interface Opening {
  readonly ratingA: number;
  readonly minS: Float64Array;
  readonly maxS: Float64Array;
}

const CELLS_PER_DOUBLING = 32;
const LOWEST_RATIO = 1;
const CELL_COUNT = 32 * 12;

function openingTimes({ input }: ProofPlan, { fuseIds }: ShortPlan): readonly (Opening | null)[] {
  const fuses = fusesOf(input.job);
  return fuseIds.map((id) => {
    const fuse = fuses.get(id);
    if (fuse === undefined) return null;
    const ratingA = fuse.ratingA;
    const { points, largestA, smallestA } = fuseBand(fuse);
    const timeAt = (cellIndex: number, edge: "minS" | "maxS"): number => {
      const currentA = ratingA * LOWEST_RATIO * 2 ** (cellIndex / CELLS_PER_DOUBLING);
      const rated = edge === "minS" ? smallestA : largestA;
      const band = { points, reading: READING, ratingA: rated, currentA };
      return fuseOpeningTimeS(band)[edge] ?? Infinity;
    };
    const cells = Array.from({ length: CELL_COUNT }, (_, cell) => cell);
    return {
      ratingA,
      minS: Float64Array.from(cells, (cell) => timeAt(cell, "minS")),
      maxS: Float64Array.from(cells, (cell) => timeAt(cell, "maxS")),
    };
  });
}

function cellOf(currentA: number, { ratingA }: Opening): number {
  const ratio = currentA / (ratingA * LOWEST_RATIO);
  return ratio < 1
    ? -1
    : Math.min(CELL_COUNT - 1, Math.floor(Math.log2(ratio) * CELLS_PER_DOUBLING));
}

function tallyScreen(
  tally: Tally,
  monitoredA: Float64Array,
  { watched }: ShortPlan,
  opening: readonly (Opening | null)[],
): void {
  const count = watched.length;
  for (let at = 0; at < monitoredA.length; at += count) {
    tally.screenedCount++;
    let first = -1;
    let firstS = Infinity;
    let isOver = false;
    for (let k = 0; k < count; k++) {
      const fuse = opening[k];
      if (fuse == null) continue;
      const cell = cellOf(Math.abs(monitoredA[at + k]!), fuse);
      if (cell < 0) continue;
      isOver = true;
      if (fuse.maxS[cell]! < firstS) [first, firstS] = [k, fuse.maxS[cell]!];
    }
    if (first < 0) {
      tally.sustainedCount += Number(isOver);
      continue;
    }
    tally.first[first] = tally.first[first]! + 1;
    for (let k = 0; k < count; k++) {
      const fuse = opening[k];
      if (k === first || fuse == null || tally.overlap[first]!.has(k)) continue;
      const cell = cellOf(Math.abs(monitoredA[at + k]!), fuse);
      if (cell >= 0 && fuse.minS[cell]! < firstS) tally.overlap[first]!.add(k);
    }
  }
}

interface Batch {
  readonly pairs: readonly (readonly [number, number])[];
  readonly shorts: ShortPlan;
  readonly screen: ReturnType<typeof planScreen>;
}

/** Solves a few of the screened shorts in full, to know how far the screening is off. */
function confirm(
  tally: Tally,
  { solver }: ProofPlan,
  compiled: CompiledJob,
  state: QuickState,
  { pairs, shorts, screen }: Batch,
): void {
  const { names } = compiled.jobNetwork.nodes;
  const { faultA } = screen;
  const whole = compiled.solve(state);
  for (let f = tally.screenedCount % CONFIRM_EVERY; f < faultA.length; f += CONFIRM_EVERY) {
    const [a, b] = pairs[Math.floor(f / shorts.shortOhm.length)]!;
    const ohm = shorts.shortOhm[f % shorts.shortOhm.length]!;
    if (names[a]!.endsWith("~") || names[b]!.endsWith("~")) continue;
    const full = compiled.solve({ ...state, short: [{ a: names[a]!, b: names[b]!, ohm }] });
    solver.tally.solvedCount++;
    tally.confirmedCount++;
    const fullA = full.shortA[0]!;
    if (full.pulled.some((pulled, k) => pulled !== whole.pulled[k])) {
      tally.relayMovedCount++;
      continue;
    }
    if (Math.abs(fullA) < LEAST_COMPARED_A) continue;
    const errorPercent = (100 * Math.abs(fullA - faultA[f]!)) / Math.abs(fullA);
    const isEarth = [a, b].some((node) => names[node] === compiled.jobNetwork.earth);
    const key = isEarth ? "largestErrorPercent" : "neighbourErrorPercent";
    tally[key] = Math.max(tally[key], errorPercent);
  }
}
