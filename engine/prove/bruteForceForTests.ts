import type { QuickState } from "../operate/index.ts";
import { groupOfElement } from "./groupStates.ts";
import type { ProofPlan } from "./proofPlan.ts";
import { type Assignment, combinationsOf, type EngineState } from "./stateSpace.ts";
import type { TruthState } from "./truthOf.ts";

export interface Comparison {
  readonly comparedCount: number;
  /** Load, what the groups said and what the full solve said, with the state. */
  readonly disagreements: readonly {
    readonly load: string;
    readonly said: boolean | null;
    readonly shareRatio: number;
    readonly state: QuickState;
  }[];
}

/** Every full state of one engine mode, without a thought: what the groups are checked against. */
export function everyState(plan: ProofPlan, engine: EngineState): readonly Assignment[] {
  const { space } = plan;
  return combinationsOf(
    space.variables,
    space.variables.map(({ id }) => id),
  ).filter((full) => space.completed(full, engine) !== null);
}

/** Solves each state as it stands and asks the groups what they said of each load in it. */
export function comparedWithGroups(
  plan: ProofPlan,
  truth: readonly TruthState[],
  engine: EngineState,
  states: readonly Assignment[],
): Comparison {
  const { solver, space, still, turning, generated } = plan;
  const said = new Map(
    truth.map((state) => [keyOf(state.engine, state.given), [] as TruthState[]]),
  );
  for (const state of truth) said.get(keyOf(state.engine, state.given))!.push(state);
  const disagreements: Comparison["disagreements"][number][] = [];
  const isRunning = engine.mode === "running";
  const generating = turning.groups.filter(({ generates }) => generates);
  const answer = (load: number, full: Assignment): boolean | null => {
    const { element } = solver.loads[load]!;
    const fromRunning = isRunning && generated.has(element);
    const grouping = fromRunning ? turning : still;
    const group = groupOfElement(grouping.trees, element, full);
    if (group === null) return null;
    const given = { ...group.context };
    for (const id of group.variables) given[id] = full[id]!;
    const index = (fromRunning ? generating : still.groups).indexOf(group);
    const name = fromRunning ? engine.name : "stopped";
    const state = said.get(keyOf(name, given))?.find(({ groupIndex }) => groupIndex === index);
    return state === undefined ? null : state.lit.includes(load);
  };
  for (const full of states) {
    const state = space.quick(full, engine);
    const solution = solver.compiled.solve(state);
    const shares = solver.shares(state, solution);
    solver.loads.forEach(({ load, alternating }, k) => {
      if (alternating) return;
      const lit = shares[k]! >= solver.litRatio;
      const groups = answer(k, full);
      if (groups === lit) return;
      disagreements.push({ load: load.ref, said: groups, shareRatio: shares[k]!, state });
    });
  }
  return { comparedCount: states.length * solver.loads.length, disagreements };
}

const keyOf = (engine: string, given: Assignment): string =>
  `${engine} ${Object.entries(given)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, position]) => `${id}=${position}`)
    .join(" ")}`;
