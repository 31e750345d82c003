import {
  expectedOf,
  type OperateState,
  type QuickSolution,
  type QuickState,
} from "../operate/index.ts";
import {
  type CurrentTallies,
  newCurrentTallies,
  starterElements,
  tallyCurrents,
  tallyNodes,
} from "./currentTallies.ts";
import type { GroupState } from "./groupStates.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { ProofSolver } from "./proofSolver.ts";
import { type Assignment, combinationsOf, type EngineName, FLASH } from "./stateSpace.ts";

/** What one combination of a group does. Loads by index in the solver's list. */
export interface TruthState {
  readonly stateIndex: number;
  readonly groupIndex: number;
  readonly engine: EngineName;
  readonly given: Assignment;
  readonly lit: readonly number[];
  /** Lit with all else drawing least, dark with all else drawing most, or the other way round. */
  readonly unsure: readonly number[];
  readonly heldDiffers: readonly string[];
  readonly buzzing: readonly string[];
  readonly converged: boolean;
  /** Load lit where the job says it must be dark, or the other way round, with a full state that shows it. */
  readonly wrong: readonly WrongLoad[];
  readonly pulled: readonly boolean[];
}

export interface WrongLoad {
  readonly load: number;
  readonly lit: boolean;
  readonly shareRatio: number;
  readonly state: QuickState;
}

export interface TruthPart {
  readonly states: readonly TruthState[];
  readonly tallies: CurrentTallies;
}

/** Solves the group states given by their places in the plan. */
export function truthOf(plan: ProofPlan, stateIndices: readonly number[]): TruthPart {
  const { elements, nodes } = plan.solver.compiled.jobNetwork;
  const tallies = newCurrentTallies(elements.length, nodes.names.length);
  const starters = starterElements(plan.solver.compiled);
  const states = stateIndices.map((stateIndex) => {
    const state = plan.states[stateIndex]!;
    const seen = solvedWays(plan, state);
    for (const { quick, elementA, nodeV, batteryV } of seen.ways) {
      tallyCurrents(tallies, elementA, { state: quick, batteryV }, starters);
      if (batteryV === null && state.engine.mode !== "running") tallyNodes(tallies, nodeV, quick);
    }
    return truthState(plan, state, stateIndex, seen);
  });
  return { states, tallies };
}

interface Way {
  readonly quick: QuickState;
  readonly batteryV: number | null;
  readonly elementA: Float64Array;
  readonly nodeV: Float64Array;
  readonly shares: Float64Array;
  readonly pulled: readonly boolean[];
  readonly buzzing: readonly string[];
  readonly converged: boolean;
}

interface Seen {
  readonly ways: readonly Way[];
  readonly heldDiffers: readonly string[];
}

/** Least and most drawn by all else; with the battery at the regulator's volts where the engine could be running. */
function solvedWays(plan: ProofPlan, state: GroupState): Seen {
  const { solver, charged } = plan;
  const both = solver.solveBoth(state.light);
  const { fromReleased, fromPulled } = both;
  const light: Way = {
    quick: state.light,
    batteryV: null,
    elementA: fromReleased.solution.branchA,
    nodeV: fromReleased.solution.nodeV,
    shares: solver.shares(state.light, {
      nodeV: fromReleased.solution.nodeV,
      elementA: fromReleased.solution.branchA,
    }),
    pulled: fromReleased.pulled,
    buzzing: fromReleased.buzzing,
    converged: fromReleased.converged && both.supplies.settled,
  };
  const heldDiffers = solver.compiled.jobNetwork.relays
    .filter((_, k) => both.differ && fromPulled.pulled[k] !== fromReleased.pulled[k])
    .map(({ id }) => id);
  const ways = [light, wayOf(solver, state.heavy, null)];
  if (charged !== null && state.engine.mode !== "running") {
    ways.push(wayOf(charged.solver, state.light, charged.batteryV));
    ways.push(wayOf(charged.solver, state.heavy, charged.batteryV));
  }
  return { ways, heldDiffers };
}

function wayOf(solver: ProofSolver, quick: QuickState, batteryV: number | null): Way {
  const solution: QuickSolution = solver.solve(quick);
  return {
    quick,
    batteryV,
    elementA: solution.elementA,
    nodeV: solution.nodeV,
    shares: solver.shares(quick, solution),
    pulled: solution.pulled,
    buzzing: solution.buzzing,
    converged: solution.converged || solution.buzzing.length > 0,
  };
}

function truthState(
  plan: ProofPlan,
  state: GroupState,
  stateIndex: number,
  { ways, heldDiffers }: Seen,
): TruthState {
  const { solver } = plan;
  const own = solver.loads.flatMap(({ element }, k) =>
    state.group.elements.has(element) ? [k] : [],
  );
  const isLit = (way: Way, k: number): boolean => way.shares[k]! >= solver.litRatio;
  const lit = own.filter((k) => isLit(ways[0]!, k));
  return {
    stateIndex,
    groupIndex: state.groupIndex,
    engine: state.engine.name,
    given: state.given,
    lit,
    unsure: own.filter((k) => ways.some((way) => isLit(way, k) !== isLit(ways[0]!, k))),
    heldDiffers,
    buzzing: [...new Set(ways.flatMap(({ buzzing }) => buzzing))].sort(),
    converged: ways.every(({ converged }) => converged),
    wrong: own.flatMap((k) => wrongOf(plan, state, k, ways[0]!) ?? []),
    pulled: ways[0]!.pulled.map((_, k) => ways.some(({ pulled }) => pulled[k])),
  };
}

/** The first full state of this combination in which a load does what its intents say it must not. */
function wrongOf(
  plan: ProofPlan,
  { given, engine }: GroupState,
  load: number,
  way: Way,
): WrongLoad | null {
  const { space, solver } = plan;
  const {
    load: { ref },
  } = solver.loads[load]!;
  const { job } = plan.input;
  const intents = job.intents.filter((intent) => intent.load === ref);
  if (intents.length === 0) return null;
  const named = new Set(
    intents.flatMap(({ when }) => when.flatMap(({ positions }) => Object.keys(positions))),
  );
  if (intents.some(({ when }) => when.some(({ flash }) => flash !== undefined))) named.add(FLASH);
  const others = [...named].filter(
    (id) => given[id] === undefined && space.variables.some((one) => one.id === id),
  );
  const lit = way.shares[load]! >= solver.litRatio;
  const isGenerated = plan.generated.has(solver.loads[load]!.element);
  const engines = space.engines.filter(({ mode, name }) =>
    engine.mode === "running" ? name === engine.name : mode !== "running" || !isGenerated,
  );
  for (const combination of combinationsOf(space.variables, others)) {
    for (const one of engines) {
      const full = space.completed({ ...given, ...combination }, one);
      if (full === null) continue;
      const state = space.quick(full, one);
      const expected = expectedOf(job, ref, state as OperateState);
      if (expected === null || expected === lit) continue;
      return { load, lit, shareRatio: way.shares[load]!, state };
    }
  }
  return null;
}
