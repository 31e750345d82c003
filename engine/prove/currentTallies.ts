import type { CompiledJob, QuickState } from "../operate/index.ts";

/** Largest current of every element over the states met, with the state; a starter turning counts apart: it lasts seconds. */
export interface CurrentTallies {
  readonly lastingA: Float64Array;
  readonly lastingState: (MetState | null)[];
  readonly startingA: Float64Array;
  /** Largest |volts| of every node on the battery alone, with the state: where a short to it is fed best. */
  readonly nodeV: Float64Array;
  readonly nodeState: (QuickState | null)[];
}

export interface MetState {
  readonly state: QuickState;
  /** Volts the battery was held at; null: full, at rest. */
  readonly batteryV: number | null;
}

/** A starter that draws more than this is cranking, A. */
const CRANKING_A = 5;

export function newCurrentTallies(elementCount: number, nodeCount: number): CurrentTallies {
  return {
    nodeV: new Float64Array(nodeCount),
    nodeState: Array.from({ length: nodeCount }, () => null),
    lastingA: new Float64Array(elementCount),
    lastingState: Array.from({ length: elementCount }, () => null),
    startingA: new Float64Array(elementCount),
  };
}

/** Elements of starter motors. */
export function starterElements({ job, jobNetwork }: CompiledJob): readonly number[] {
  const starters = new Set(
    job.parts.flatMap((part) => (part.kind === "motor" && part.use === "starter" ? [part.id] : [])),
  );
  return jobNetwork.elements.flatMap(({ of, kind }, k) =>
    kind !== "wire" && of.includes(":") && starters.has(of.split(":")[0]!) ? [k] : [],
  );
}

/** A starter turns: what flows then lasts seconds. */
export const isStarting = (elementA: Float64Array, starters: readonly number[]): boolean =>
  starters.some((k) => Math.abs(elementA[k]!) > CRANKING_A);

export function tallyCurrents(
  tallies: CurrentTallies,
  elementA: Float64Array,
  met: MetState,
  starters: readonly number[],
): void {
  const turns = isStarting(elementA, starters);
  const best = turns ? tallies.startingA : tallies.lastingA;
  for (let k = 0; k < elementA.length; k++) {
    const currentA = Math.abs(elementA[k]!);
    if (!(currentA > best[k]!)) continue;
    best[k] = currentA;
    if (!turns) tallies.lastingState[k] = met;
  }
}

/** Volts are compared on a grid, so that rounding does not choose the state: the first that stands highest is kept, V. */
const GRID_V = 1e-6;

export function tallyNodes(tallies: CurrentTallies, nodeV: Float64Array, state: QuickState): void {
  for (let node = 0; node < nodeV.length; node++) {
    const v = Math.round(Math.abs(nodeV[node]!) / GRID_V) * GRID_V;
    if (!(v > tallies.nodeV[node]!)) continue;
    tallies.nodeV[node] = v;
    tallies.nodeState[node] = state;
  }
}

/** The larger of two runs, the first where they are equal: so parts merge the same whatever their number. */
export function mergedTallies(one: CurrentTallies, other: CurrentTallies): CurrentTallies {
  const isMore = (k: number): boolean => other.lastingA[k]! > one.lastingA[k]!;
  const isHigher = (node: number): boolean => other.nodeV[node]! > one.nodeV[node]!;
  return {
    nodeV: one.nodeV.map((v, node) => (isHigher(node) ? other.nodeV[node]! : v)),
    nodeState: one.nodeState.map((state, node) =>
      isHigher(node) ? other.nodeState[node]! : state,
    ),
    lastingA: one.lastingA.map((a, k) => Math.max(a, other.lastingA[k]!)),
    lastingState: one.lastingState.map((met, k) => (isMore(k) ? other.lastingState[k]! : met)),
    startingA: one.startingA.map((a, k) => Math.max(a, other.startingA[k]!)),
  };
}
