import {
  type PairScreen,
  planPairs,
  type RelayStatus,
  type Short,
  screenPairs,
  settleInPlace,
} from "../network/index.ts";
import type { CompiledJob, QuickState } from "../operate/index.ts";
import { CONFIRM_EVERY, confirmStepCount } from "./confirmStepCount.ts";
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

/** Smaller currents open no fuse worth the name, A. */
const LEAST_COMPARED_A = 5;

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
  const stepCount = isEverywhere
    ? confirmStepCount(shorts.pairs.length * shorts.shortOhm.length * ofCount)
    : CONFIRM_EVERY;
  const screenOf = (pairs: ShortPlan["pairs"]): PairScreen =>
    planPairs(compiled.compiledNetwork, {
      pairs,
      shortOhm: shorts.shortOhm,
      monitoredBranches: shorts.watched,
    });
  const everywhere = isEverywhere ? screenOf(shorts.pairs) : null;
  for (const { state, nodes } of states) {
    const screen =
      everywhere ?? screenOf(shorts.pairs.filter(([a, b]) => nodes.has(a) || nodes.has(b)));
    const solve = screen.request.pairs.length === 0 ? null : solveInState(compiled, state);
    if (solve === null) continue;
    const { pulled } = solve([]);
    const voltsOf = tallyPairs(tally, screen, opening);
    confirm(tally, plan, compiled, { screen, voltsOf, pulled, solve, stepCount });
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

/** Tallies every short of every pair; answers the volts between the nodes of each with nothing shorted. */
function tallyPairs(
  tally: Tally,
  screen: PairScreen,
  opening: readonly (Opening | null)[],
): Float64Array {
  const { pairs, shortOhm } = screen.request;
  const voltsOf = new Float64Array(pairs.length);
  // What is no fuse is never over its rating.
  const ratedA = Float64Array.from(opening, (fuse) => (fuse?.ratingA ?? Infinity) * LOWEST_RATIO);
  const leastOhm = Math.min(...shortOhm);
  const able = new Int32Array(ratedA.length);
  screenPairs(screen, (pair, volts, seenOhm, beforeA, transfer) => {
    voltsOf[pair] = volts;
    tally.screenedCount += shortOhm.length;
    // No short of the pair carries more than the deadest: a fuse that does not meet its rating by that meets it by none.
    const mostA = (Math.abs(volts) / (leastOhm + seenOhm)) * ROUNDING;
    let ableCount = 0;
    for (let k = 0; k < ratedA.length; k++) {
      if (Math.abs(beforeA[k]!) + Math.abs(transfer[k]!) * mostA >= ratedA[k]!)
        able[ableCount++] = k;
    }
    if (ableCount === 0) return;
    const few = able.subarray(0, ableCount);
    let faultA = 0;
    const currentAt = (k: number): number => Math.abs(beforeA[k]! - transfer[k]! * faultA);
    for (let r = 0; r < shortOhm.length; r++) {
      faultA = volts / (shortOhm[r]! + seenOhm);
      tallyShort(tally, opening, few, currentAt);
    }
  });
  return voltsOf;
}

/** So that a bound is not missed by the last bit. */
const ROUNDING = 1 + 1e-9;

/** One short: which fuse opens first, and which others might. */
function tallyShort(
  tally: Tally,
  opening: readonly (Opening | null)[],
  able: Int32Array,
  currentAt: (fuseIndex: number) => number,
): void {
  let first = -1;
  let firstS = Infinity;
  let isOver = false;
  for (let j = 0; j < able.length; j++) {
    const k = able[j]!;
    const fuse = opening[k]!;
    const cell = cellOf(currentAt(k), fuse.ratingA);
    if (cell < 0) continue;
    isOver = true;
    if (fuse.maxS[cell]! < firstS) [first, firstS] = [k, fuse.maxS[cell]!];
  }
  if (first < 0) {
    tally.sustainedCount += Number(isOver);
    return;
  }
  tally.first[first] = tally.first[first]! + 1;
  for (let j = 0; j < able.length; j++) {
    const k = able[j]!;
    if (k === first || tally.overlap[first]!.has(k)) continue;
    const cell = cellOf(currentAt(k), opening[k]!.ratingA);
    if (cell >= 0 && opening[k]!.minS[cell]! < firstS) tally.overlap[first]!.add(k);
  }
}

interface Batch {
  readonly screen: PairScreen;
  /** Between the nodes of each pair with nothing shorted. */
  readonly voltsOf: Float64Array;
  /** Relays with nothing shorted. */
  readonly pulled: readonly boolean[];
  readonly solve: SolveInState;
  /** Every so many-th is solved. */
  readonly stepCount: number;
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
  { screen, voltsOf, pulled, solve, stepCount }: Batch,
): void {
  const { names } = jobNetwork.nodes;
  const { pattern, work } = compiledNetwork;
  const { pairs, shortOhm } = screen.request;
  const count = pairs.length * shortOhm.length;
  for (let f = tally.screenedCount % stepCount; f < count; f += stepCount) {
    const pair = Math.floor(f / shortOhm.length);
    const [a, b] = pairs[pair]!;
    const ohm = shortOhm[f % shortOhm.length]!;
    const screenedA = voltsOf[pair]! / (ohm + screen.room.seenOhm[pair]!);
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
    const errorPercent = (100 * Math.abs(fullA - screenedA)) / Math.abs(fullA);
    const isEarth = [a, b].some((node) => names[node] === jobNetwork.earth);
    const key = isEarth ? "largestErrorPercent" : "neighbourErrorPercent";
    tally[key] = Math.max(tally[key], errorPercent);
  }
}
