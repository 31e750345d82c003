import { expectedOf, type OperateState, type QuickState } from "../operate/index.ts";
import { groupCombinations, groupingOf } from "./groupStates.ts";
import type { OpenPlace } from "./openPlaces.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { Assignment } from "./stateSpace.ts";
import { type Group, splitVariables } from "./switchGroups.ts";

/** A load from which a rider sees something although its own switch is off. */
export interface StrayLoad {
  readonly load: number;
  readonly shareRatio: number;
  /** Its share with everything whole in the same state. */
  readonly wholeRatio: number;
  readonly open: string | null;
  readonly openNames: readonly string[];
  readonly state: QuickState;
  /** Loads that work in that state with everything whole and no longer do. */
  readonly dimmed: readonly number[];
  /** Loads whose power the stray load shares: they carry its current. */
  readonly working: readonly number[];
}

export interface StrayPart {
  readonly strays: readonly StrayLoad[];
  readonly stateCount: number;
  readonly skippedCount: number;
}

/** A load that gets this share of its rated power with its own switch off is said to stray. */
export const STRAY_RATIO = 0.05;
/** A place that carries less than this changes nothing when it parts, A. */
const CARRIES_NOTHING_A = 1e-6;
/** Of a group with more combinations than this, those are solved in which any four of its switches meet in every way. */
const MOST_COMBINATIONS = 64;
/** The first split of the whole machine (the key, as a rule) is kept, so that any four meet under each of its positions. */
const MOST_SPLITS = 1;

/**
 * What strays with one place open. The place is taken out of the machine and the groups at its two ends are made anew: what
 * shared a lost earth is one group then, with all its switches. Each of its combinations is solved; a combination in
 * which the place carried nothing is left out, because removing a branch without current leaves every voltage as it was.
 *
 * @param wholes  states already solved with everything whole, added to: many places ask for the same.
 * @param mostCount  combinations of a group up to which all are solved; Infinity: always all.
 */
export function strayOf(
  plan: ProofPlan,
  place: OpenPlace,
  wholes: Map<string, WholeState> = new Map(),
  mostCount = MOST_COMBINATIONS,
): StrayPart {
  const { solver, space, still } = plan;
  const engine = space.engines[0]!;
  const grouping = groupingOf(solver, space, {
    running: false,
    opened: place.elements,
    near: place.ends,
    splitFirst: splitVariables(still.trees),
    mostSplits: MOST_SPLITS,
  });
  const looked = lookedAt(plan, place, wholes);
  const queue: { readonly given: Assignment; readonly group: Group }[] = [];
  const visit = (given: Assignment, group: Group): void => {
    const full = space.completed(given, engine);
    if (full === null || looked.visit(full) === 0) return;
    if (combinationCount(plan, group) > mostCount) queue.push({ given, group });
  };
  for (const { group, given } of groupCombinations(space, grouping, mostCount)) visit(given, group);
  // Where something strays, so does something else one switch away: from what is found each switch is moved by itself.
  for (let k = 0; k < queue.length && k < MOST_NEIGHBOURHOODS; k++) {
    const { given, group } = queue[k]!;
    for (const id of group.variables) {
      const { positions } = space.variables.find((one) => one.id === id)!;
      for (const position of positions)
        if (position !== given[id]) visit({ ...given, [id]: position }, group);
    }
  }
  const { found, counts } = looked;
  return { strays: [...found.values()].sort((a, b) => a.load - b.load), ...counts };
}

/** Neighbourhoods of found strays looked at for one place. */
const MOST_NEIGHBOURHOODS = 24;

const combinationCount = ({ space }: ProofPlan, { variables }: Group): number =>
  variables.reduce(
    (product, id) => product * space.variables.find((one) => one.id === id)!.positions.length,
    1,
  );

/** What an open place is held against in a state with everything whole. */
export interface WholeState {
  /** Power of every load over its own. */
  readonly shares: Float64Array;
  /** 1 for every element that carries anything. */
  readonly carries: Uint8Array;
}

function wholeState({ solver }: ProofPlan, state: QuickState): WholeState {
  const solution = solver.glance(state);
  const carries = new Uint8Array(solution.elementA.length);
  solution.elementA.forEach((currentA, k) => {
    carries[k] = Number(Math.abs(currentA) > CARRIES_NOTHING_A);
  });
  return { shares: solver.shares(state, solution), carries };
}

/** States of one place solved so far; a visit tells how many loads strayed for the first time. */
function lookedAt(plan: ProofPlan, place: OpenPlace, wholes: Map<string, WholeState>) {
  const { solver, space } = plan;
  const engine = space.engines[0]!;
  const found = new Map<number, StrayLoad>();
  const solved = new Set<string>();
  const counts = { stateCount: 0, skippedCount: 0 };
  const elements = [...place.elements];
  const visit = (full: Assignment): number => {
    const key = Object.values(full).join("|");
    if (solved.has(key)) return 0;
    solved.add(key);
    const whole = space.quick(full, engine);
    const before = wholes.get(key) ?? wholeState(plan, whole);
    keep(wholes, key, before);
    if (!elements.some((k) => before.carries[k] === 1)) {
      counts.skippedCount++;
      return 0;
    }
    counts.stateCount++;
    const state = { ...whole, open: [place.name] };
    const shares = solver.shares(state, solver.glance(state));
    const wholeShares = before.shares;
    let newCount = 0;
    for (const stray of straysIn(plan, { state, wholeShares, shares })) {
      const known = found.get(stray.load);
      if (known !== undefined && known.shareRatio >= stray.shareRatio) continue;
      if (known === undefined) newCount++;
      found.set(stray.load, { ...stray, open: place.name, openNames: place.names });
    }
    return newCount;
  };
  return { found, counts, visit };
}

/** Whole states kept for the places that follow, bytes; the oldest go first. */
const KEPT_BYTES = 64e6;

function keep(wholes: Map<string, WholeState>, key: string, state: WholeState): void {
  if (wholes.has(key)) return;
  const eachBytes = state.shares.byteLength + state.carries.byteLength;
  if ((wholes.size + 1) * eachBytes > KEPT_BYTES) {
    const oldest = wholes.keys().next();
    if (oldest.done !== true) wholes.delete(oldest.value);
  }
  wholes.set(key, state);
}

interface Solved {
  readonly state: QuickState;
  readonly wholeShares: Float64Array;
  readonly shares: Float64Array;
}

/** Loads that are off by their intents (or dead with everything whole) and get more than the share. */
function straysIn(plan: ProofPlan, solved: Solved): readonly StrayLoad[] {
  const { loads, litRatio } = plan.solver;
  const { state, shares, wholeShares } = solved;
  const found: number[] = [];
  for (let load = 0; load < loads.length; load++) {
    const shareRatio = Math.abs(shares[load]!);
    const wholeRatio = Math.abs(wholeShares[load]!);
    if (!(shareRatio > STRAY_RATIO) || shareRatio <= wholeRatio * 1.01) continue;
    if (wholeRatio > STRAY_RATIO || !isOff(plan, load, state, wholeRatio)) continue;
    found.push(load);
  }
  if (found.length === 0) return [];
  const dimmed = loads.flatMap((_, k) =>
    wholeShares[k]! >= litRatio && shares[k]! < 0.8 * wholeShares[k]! ? [k] : [],
  );
  return found.map((load) => ({
    load,
    shareRatio: Math.abs(shares[load]!),
    wholeRatio: Math.abs(wholeShares[load]!),
    open: null,
    openNames: [],
    state,
    dimmed,
    working: [],
  }));
}

function isOff(plan: ProofPlan, load: number, state: QuickState, wholeRatio: number): boolean {
  const { ref } = plan.solver.loads[load]!.load;
  const expected = expectedOf(plan.input.job, ref, state as OperateState);
  return expected === null ? wholeRatio <= STRAY_RATIO : !expected;
}
