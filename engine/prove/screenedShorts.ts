import {
  planScreen,
  type RelayStatus,
  type Screen,
  type Short,
  screenFaults,
  settleInPlace,
} from "../network/index.ts";
import type { CompiledJob, QuickState } from "../operate/index.ts";
import { cellOf, LOWEST_RATIO, type Opening, openingTimes } from "./openingTimes.ts";
import type { ProofPlan } from "./proofPlan.ts";
import { type ShortPlan, shortPlan } from "./shortPlan.ts";

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
  let screen: Screen | null = null;
  for (const { state, nodes } of states) {
    const fed = isEverywhere
      ? shorts.pairs
      : shorts.pairs.filter(([a, b]) => nodes.has(a) || nodes.has(b));
    const solve = fed.length === 0 ? null : solveInState(compiled, state);
    if (solve === null) continue;
    for (let from = 0; from < fed.length; from += PAIRS_AT_ONCE) {
      const pairs = fed.slice(from, from + PAIRS_AT_ONCE);
      const { shortOhm, watched } = shorts;
      const request = { pairs, shortOhm, monitoredBranches: watched };
      screen = planScreen(compiled.compiledNetwork, request, screen);
      // The solves before have moved the workspace on.
      const { pulled } = solve([]);
      screenFaults(screen);
      tallyScreen(tally, screen.monitoredA, shorts, opening);
      confirm(tally, plan, compiled, { pairs, shorts, screen, pulled, solve });
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

function tallyScreen(
  tally: Tally,
  monitoredA: Float64Array,
  { watched }: ShortPlan,
  opening: readonly (Opening | null)[],
): void {
  const count = watched.length;
  // What is no fuse is never over its rating.
  const ratedA = Float64Array.from(opening, (fuse) => fuse?.ratingA ?? Infinity);
  const cells = new Int32Array(count);
  for (let at = 0; at < monitoredA.length; at += count) {
    tally.screenedCount++;
    let first = -1;
    let firstS = Infinity;
    let overCount = 0;
    for (let k = 0; k < count; k++) {
      const currentA = Math.abs(monitoredA[at + k]!);
      cells[k] = -1;
      if (!(currentA >= ratedA[k]! * LOWEST_RATIO)) continue;
      overCount++;
      const cell = cellOf(currentA, ratedA[k]!);
      cells[k] = cell;
      const longestS = opening[k]!.maxS[cell]!;
      if (longestS < firstS) [first, firstS] = [k, longestS];
    }
    if (first < 0) {
      tally.sustainedCount += Number(overCount > 0);
      continue;
    }
    tally.first[first] = tally.first[first]! + 1;
    if (overCount === 1) continue;
    for (let k = 0; k < count; k++) {
      if (cells[k]! < 0 || k === first || tally.overlap[first]!.has(k)) continue;
      if (opening[k]!.minS[cells[k]!]! < firstS) tally.overlap[first]!.add(k);
    }
  }
}

interface Batch {
  readonly pairs: readonly (readonly [number, number])[];
  readonly shorts: ShortPlan;
  readonly screen: Screen;
  /** Relays with nothing shorted. */
  readonly pulled: readonly boolean[];
  readonly solve: SolveInState;
}

type SolveInState = (shorts: readonly Short[]) => RelayStatus;

/**
 * One state under one short after another, left in the workspace: what the state sets is looked up once, and the linear part stays
 * reduced as long as no relay moves. Only with the engine still, when no source has anything to settle. Null where the state has no solution.
 */
function solveInState(compiled: CompiledJob, state: QuickState): SolveInState | null {
  const { converged, networkState } = compiled.solve(state);
  if (!converged) return null;
  const { overrides, relays } = networkState;
  const start = relays.map(({ held }) => held);
  return (shorts) => settleInPlace(compiled.compiledNetwork, relays, start, { overrides, shorts });
}

/** Solves a few of the screened shorts in full, to know how far the screening is off. */
function confirm(
  tally: Tally,
  { solver }: ProofPlan,
  { jobNetwork, compiledNetwork }: CompiledJob,
  { pairs, shorts, screen, pulled, solve }: Batch,
): void {
  const { names } = jobNetwork.nodes;
  const { pattern, work } = compiledNetwork;
  const { faultA } = screen;
  for (let f = tally.screenedCount % CONFIRM_EVERY; f < faultA.length; f += CONFIRM_EVERY) {
    const [a, b] = pairs[Math.floor(f / shorts.shortOhm.length)]!;
    const ohm = shorts.shortOhm[f % shorts.shortOhm.length]!;
    if (names[a]!.endsWith("~") || names[b]!.endsWith("~")) continue;
    const full = solve([{ a, b, ohm }]);
    solver.tally.solvedCount++;
    tally.confirmedCount++;
    if (full.pulled.some((one, k) => one !== pulled[k])) {
      tally.relayMovedCount++;
      continue;
    }
    const volts = (node: number): number => work.positionV[pattern.positionOfNode[node]!]!;
    const fullA = (volts(a) - volts(b)) / ohm;
    if (Math.abs(fullA) < LEAST_COMPARED_A) continue;
    const errorPercent = (100 * Math.abs(fullA - faultA[f]!)) / Math.abs(fullA);
    const isEarth = [a, b].some((node) => names[node] === jobNetwork.earth);
    const key = isEarth ? "largestErrorPercent" : "neighbourErrorPercent";
    tally[key] = Math.max(tally[key], errorPercent);
  }
}
