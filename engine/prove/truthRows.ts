import type { ProofPlan } from "./proofPlan.ts";
import type { TruthRow } from "./proveResult.ts";
import type { Assignment } from "./stateSpace.ts";
import type { TruthState } from "./truthOf.ts";

interface Box {
  readonly when: Readonly<Record<string, readonly string[]>>;
  readonly lit: string;
  readonly state: TruthState;
}

/**
 * The truth of all groups as a table for a person: combinations of one group that light the same are taken together where they
 * differ in one switch only, again and again, so that a row says "in these positions of these switches".
 */
export function truthRows(plan: ProofPlan, states: readonly TruthState[]): readonly TruthRow[] {
  const groups = new Map<string, TruthState[]>();
  for (const state of states) {
    const isStill = state.engine === "stopped";
    const key = `${isStill ? "still" : state.engine} ${state.groupIndex}`;
    groups.set(key, [...(groups.get(key) ?? []), state]);
  }
  return [...groups.values()].flatMap((list) => boxesOf(list).map((box) => rowOf(plan, box)));
}

function boxesOf(states: readonly TruthState[]): readonly Box[] {
  let boxes: Box[] = states.map((state) => ({
    when: boxed(state.given),
    lit: `${state.lit.join(" ")}|${state.heldDiffers.join(" ")}`,
    state,
  }));
  const ids = Object.keys(states[0]?.given ?? {});
  for (const id of ids) boxes = mergedAlong(boxes, id);
  return boxes.filter(({ state }) => state.lit.length > 0 || state.heldDiffers.length > 0);
}

const boxed = (given: Assignment) =>
  Object.fromEntries(Object.entries(given).map(([id, position]) => [id, [position]]));

function mergedAlong(boxes: readonly Box[], id: string): Box[] {
  const merged = new Map<string, Box>();
  for (const box of boxes) {
    const others = Object.entries(box.when).filter(([one]) => one !== id);
    const key = `${box.lit} ${JSON.stringify(others)}`;
    const known = merged.get(key);
    if (known === undefined) merged.set(key, box);
    else {
      const positions = [...new Set([...known.when[id]!, ...box.when[id]!])];
      merged.set(key, { ...known, when: { ...known.when, [id]: positions } });
    }
  }
  return [...merged.values()];
}

function rowOf(
  { solver, space, still, turning, generated }: ProofPlan,
  { when, state }: Box,
): TruthRow {
  const isStill = state.engine === "stopped";
  const group = (isStill ? still : turning).groups.filter((one) => isStill || one.generates)[
    state.groupIndex
  ]!;
  const own = solver.loads.flatMap(({ element }, k) => (group.elements.has(element) ? [k] : []));
  const ref = (k: number): string => solver.loads[k]!.load.ref;
  const isGenerated = own.some((k) => generated.has(solver.loads[k]!.element));
  const all = space.engines.map(({ name }) => name);
  const stillOnly = all.filter((name) => name === "stopped" || name === "cranking");
  const sayAll = ([id, positions]: [string, readonly string[]]): boolean =>
    positions.length < (space.variables.find((one) => one.id === id)?.positions.length ?? 0);
  return {
    when: Object.fromEntries(Object.entries(when).filter(sayAll)),
    engine: isStill ? (isGenerated ? stillOnly : all) : [state.engine],
    lit: state.lit.map(ref).sort(),
    dead: own
      .filter((k) => !state.lit.includes(k))
      .map(ref)
      .sort(),
    differsWhenHeld: state.heldDiffers,
  };
}
