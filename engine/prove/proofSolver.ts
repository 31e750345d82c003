import { type Load, loadsOf, presentParts } from "../job/index.ts";
import {
  type BothSolutions,
  type CompiledJob,
  type Conditions,
  compileJob,
  conditionsOf,
  operateJob,
  type QuickSolution,
  type QuickState,
} from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import { type ContactGraph, contactGraph } from "./contactGraph.ts";
import type { ProofInput } from "./proofInput.ts";

/** A load with its place in the network. */
export interface PlacedLoad {
  readonly load: Load;
  readonly element: number;
  /** Power it counts as its own, W: rated, or nominal volts squared over its resistance. */
  readonly ratedW: number;
  /** On an alternating net: solved by `operate`, not here. */
  readonly alternating: boolean;
}

/** Counts what was solved; every part of the proof writes into one of these. */
export interface SolveTally {
  solvedCount: number;
  twiceSettledCount: number;
  largestKclResidualA: number;
}

export interface ProofSolver {
  readonly compiled: CompiledJob;
  readonly graph: ContactGraph;
  readonly loads: readonly PlacedLoad[];
  /** Share of rated power from which a load counts as working. */
  readonly litRatio: number;
  readonly tally: SolveTally;
  /** Positions of the relays on the battery alone, by full state as JSON: asked for again and again while groups are made. */
  readonly pulledKnown: Map<string, readonly boolean[]>;
  readonly solve: (state: QuickState) => QuickSolution;
  /** As `solve`, good until the next glance. */
  readonly glance: (state: QuickState) => QuickSolution;
  readonly solveBoth: (state: QuickState) => BothSolutions;
  /** Power over rated power of every load, alternating ones as solved apart. */
  readonly shares: (
    state: QuickState,
    solution: Pick<QuickSolution, "nodeV" | "elementA">,
  ) => Float64Array;
}

export const newTally = (): SolveTally => ({
  solvedCount: 0,
  twiceSettledCount: 0,
  largestKclResidualA: 0,
});

/** A job laid out for the proof at given conditions. */
export function proofSolver(
  { job, conductors }: ProofInput,
  options: {
    readonly conditions?: Conditions;
    readonly takenApart?: readonly string[];
    readonly tally?: SolveTally;
    /** The same machine at other conditions: its order of nodes serves again. */
    readonly like?: ProofSolver;
  } = {},
): ProofSolver {
  const conditions = options.conditions ?? conditionsOf(job, {});
  const takenApart = options.takenApart ?? [];
  const like = options.like?.compiled.compiledNetwork ?? null;
  const compiled = compileJob(job, conductors, {
    conditions,
    takenApart,
    like,
    isTrailed: false,
  });
  const tally = options.tally ?? newTally();
  const loads = placedLoads(compiled);
  const count = (residualA: number): void => {
    tally.solvedCount++;
    tally.largestKclResidualA = Math.max(tally.largestKclResidualA, residualA);
  };
  return {
    compiled,
    graph: contactGraph(compiled),
    loads,
    litRatio: figure("lampLaws", "lit-share", "value").value,
    tally,
    pulledKnown: new Map(),
    solve: (state) => {
      const solution = compiled.solve(state);
      count(solution.kclResidualA);
      return solution;
    },
    glance: (state) => {
      const solution = compiled.glance(state);
      count(solution.kclResidualA);
      return solution;
    },
    solveBoth: (state) => {
      const both = compiled.solveBoth(state);
      tally.twiceSettledCount++;
      count(both.fromReleased.kclResidualA);
      return both;
    },
    shares: (state, solution) => sharesOf(compiled, loads, state, solution),
  };
}

function placedLoads({ job, jobNetwork, nets }: CompiledJob): readonly PlacedLoad[] {
  const present = new Set(presentParts(job).map(({ id }) => id));
  const indexOf = new Map(
    jobNetwork.elements.flatMap(({ of, kind }, k) =>
      kind === "contact" ? [] : [[of, k] as const],
    ),
  );
  const isOnNet = (pin: string): boolean => nets.nets.some((net) => net.nodes.has(pin));
  return loadsOf(job)
    .filter(({ part }) => present.has(part.id))
    .map((load) => ({
      load,
      element: indexOf.get(load.ref)!,
      ratedW: load.ratedW ?? job.supply.nominalV ** 2 / load.resistanceOhm!,
      alternating: load.pins.some(isOnNet),
    }));
}

function sharesOf(
  { job, conductors, jobNetwork }: CompiledJob,
  loads: readonly PlacedLoad[],
  state: QuickState,
  { nodeV, elementA }: Pick<QuickSolution, "nodeV" | "elementA">,
): Float64Array {
  const shares = new Float64Array(loads.length);
  for (let k = 0; k < loads.length; k++) {
    const { element, ratedW } = loads[k]!;
    const [a, b] = jobNetwork.elements[element]!.nodes;
    shares[k] = ((nodeV[a]! - nodeV[b]!) * elementA[element]!) / ratedW;
  }
  if (state.engine?.mode !== "running" || !loads.some(({ alternating }) => alternating))
    return shares;
  const operated = operateJob(job, conductors, requestOf(state));
  if (!operated.ok) return shares;
  const powerW = new Map([
    ...operated.solution.lamps.map((row) => [`${row.part}:${row.filament}`, row.powerW] as const),
    ...operated.solution.loads.map((row) => [`${row.part}:${row.element}`, row.powerW] as const),
  ]);
  loads.forEach(({ load, alternating, ratedW }, k) => {
    if (alternating) shares[k] = (powerW.get(load.ref as never) ?? 0) / ratedW;
  });
  return shares;
}

/** A quick state as a request of `operate`. */
export function requestOf({ positions, engine, flash, held, open, short, extraOhm }: QuickState) {
  return {
    set: positions ?? {},
    ...(engine && { engine }),
    ...(flash && { flash }),
    ...(held && { held }),
    ...(open && { open }),
    ...(short && { short }),
    ...(extraOhm && { extraOhm }),
  };
}
