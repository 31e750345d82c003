import type { QuickState } from "../operate/index.ts";
import { type CurrentTallies, mergedTallies, newCurrentTallies } from "./currentTallies.ts";
import { type OpenPlace, openPlaces } from "./openPlaces.ts";
import type { ProofInput } from "./proofInput.ts";
import { type ProofPlan, proofPlan } from "./proofPlan.ts";
import { type ProvedWires, provedWires } from "./provedWires.ts";
import { type ScreenedShorts, type StateToScreen, screenedShorts } from "./screenedShorts.ts";
import { type StrayLoad, strayOf, type WholeState } from "./strayOf.ts";
import { type SolvedCorner, toleranceCorners } from "./toleranceCorners.ts";
import { type TruthState, truthOf } from "./truthOf.ts";

/** Which share of the work: every count-th piece from the index-th on. */
export interface Share {
  readonly index: number;
  readonly count: number;
}

/** Told as work gets on: pieces done of all pieces of this share and stage. */
export type Progress = (
  stage: "truth" | "stray" | "shorts",
  doneCount: number,
  ofCount: number,
) => void;

/** First stage: what every state does, and what strays. Plain data: it can cross from one thread to another. */
export interface FirstPart {
  readonly share: Share;
  readonly states: readonly TruthState[];
  readonly tallies: CurrentTallies;
  readonly strays: readonly StrayLoad[];
  readonly strayStateCount: number;
  readonly straySkippedCount: number;
  readonly solve: SolveCounts;
}

/** What the second stage has to know of all first shares together. */
export type FirstTold = Pick<FirstPart, "states" | "tallies">;

/** Second stage, which needs the largest currents of the first: the wires, the screened shorts, and the corners of the bands. */
export interface SecondPart {
  readonly share: Share;
  readonly wires: ProvedWires;
  readonly screened: ScreenedShorts;
  readonly corners: readonly SolvedCorner[];
  readonly solve: SolveCounts;
}

export interface SolveCounts {
  readonly solvedCount: number;
  readonly twiceSettledCount: number;
  readonly largestKclResidualA: number;
}

/** What one thread keeps between the stages. */
export interface ProofWork {
  readonly plan: ProofPlan;
  readonly places: readonly OpenPlace[];
}

export function proofWork(input: ProofInput): ProofWork {
  const plan = proofPlan(input);
  return { plan, places: openPlaces(plan.solver.compiled) };
}

const ofShare = <T>(all: readonly T[], { index, count }: Share): readonly T[] =>
  all.filter((_, k) => k % count === index);

/** One stretch of the list: the first of equals stays the first when parts are put together. */
function stretchOfShare<T>(all: readonly T[], { index, count }: Share): readonly T[] {
  const at = (k: number): number => Math.floor((all.length * k) / count);
  return all.slice(at(index), at(index + 1));
}

export function proveFirst(
  { plan, places }: ProofWork,
  share: Share,
  progress?: Progress,
): FirstPart {
  const indices = stretchOfShare([...plan.states.keys()], share);
  const truth = truthOf(plan, indices);
  progress?.("truth", indices.length, indices.length);
  const own = ofShare(places, share);
  const wholes = new Map<string, WholeState>();
  const strays = own.map((place, k) => {
    const part = strayOf(plan, place, wholes);
    progress?.("stray", k + 1, own.length);
    return part;
  });
  return {
    share,
    ...truth,
    strays: strays.flatMap((part) => part.strays),
    strayStateCount: strays.reduce((sum, { stateCount }) => sum + stateCount, 0),
    straySkippedCount: strays.reduce((sum, { skippedCount }) => sum + skippedCount, 0),
    solve: { ...plan.solver.tally },
  };
}

export function proveSecond(
  { plan }: ProofWork,
  { tallies, states: met }: FirstTold,
  share: Share,
  progress?: Progress,
): SecondPart {
  const before = { ...plan.solver.tally };
  const wires = provedWires(plan, tallies, ofShare([...plan.input.conductors.keys()], share));
  // The last share begins: the first has the evidence to put together afterwards.
  const isOwn = (k: number): boolean => k % share.count === share.count - 1 - share.index;
  const corners = toleranceCorners(plan, met, isOwn);
  progress?.("shorts", 1, 2);
  const states = statesToScreen(tallies);
  const screened = screenedShorts(
    plan,
    plan.solver.compiled,
    ofShare(states, share),
    states.length,
  );
  progress?.("shorts", 2, 2);
  const after = plan.solver.tally;
  return {
    share,
    wires,
    screened,
    corners,
    solve: {
      solvedCount: after.solvedCount - before.solvedCount,
      twiceSettledCount: after.twiceSettledCount - before.twiceSettledCount,
      largestKclResidualA: after.largestKclResidualA,
    },
  };
}

/** One state for each way nodes are fed best, with those nodes, in order of the nodes. */
export function statesToScreen({ nodeState }: CurrentTallies): readonly StateToScreen[] {
  const once = new Map<string, { readonly state: QuickState; readonly nodes: Set<number> }>();
  nodeState.forEach((state, node) => {
    if (state === null) return;
    const key = JSON.stringify(state);
    const known = once.get(key) ?? { state, nodes: new Set() };
    once.set(key, known);
    known.nodes.add(node);
  });
  return [...once.values()];
}

/** Parts of the first stage as if one thread had done it all. */
export function mergedFirst(
  plan: ProofPlan,
  parts: readonly FirstPart[],
): Omit<FirstPart, "share"> {
  const { elements, nodes } = plan.solver.compiled.jobNetwork;
  const ordered = [...parts].sort((a, b) => a.share.index - b.share.index);
  const sum = (of: (part: FirstPart) => number): number =>
    ordered.reduce((total, part) => total + of(part), 0);
  const placeOf = new Map(openPlaces(plan.solver.compiled).map(({ name }, k) => [name, k]));
  return {
    states: ordered.flatMap(({ states }) => states).sort((a, b) => a.stateIndex - b.stateIndex),
    tallies: ordered
      .map(({ tallies }) => tallies)
      .reduce(mergedTallies, newCurrentTallies(elements.length, nodes.names.length)),
    strays: ordered
      .flatMap(({ strays }) => strays)
      .sort((a, b) => placeOf.get(a.open!)! - placeOf.get(b.open!)! || a.load - b.load),
    strayStateCount: sum((part) => part.strayStateCount),
    straySkippedCount: sum((part) => part.straySkippedCount),
    solve: {
      solvedCount: sum(({ solve }) => solve.solvedCount),
      twiceSettledCount: sum(({ solve }) => solve.twiceSettledCount),
      largestKclResidualA: Math.max(0, ...ordered.map(({ solve }) => solve.largestKclResidualA)),
    },
  };
}

export type MergedFirst = ReturnType<typeof mergedFirst>;
