import type { QuickState } from "../operate/index.ts";
import type { ProofSolver } from "./proofSolver.ts";
import { rowsMeeting } from "./rowsMeeting.ts";
import {
  type Assignment,
  combinationsOf,
  type EngineState,
  type StateSpace,
} from "./stateSpace.ts";
import { type Group, type GroupTree, groupsOfTrees, switchGroups } from "./switchGroups.ts";

/** A machine parted into groups, for one way the engine stands. */
export interface Grouping {
  readonly running: boolean;
  readonly trees: readonly GroupTree[];
  readonly groups: readonly Group[];
}

/** One combination of a group as two real states: all else drawing least, and all else drawing most. */
export interface GroupState {
  readonly group: Group;
  readonly groupIndex: number;
  /** Context and combination. */
  readonly given: Assignment;
  readonly engine: EngineState;
  readonly light: QuickState;
  readonly heavy: QuickState;
}

/**
 * Relays are settled on the battery alone, engine running or not: a charging machine only stands higher, and what that
 * changes shows when the states themselves are solved.
 */
const STILL: EngineState = { name: "stopped", mode: "stopped", speedRpm: 0 };

/** The groups of the machine, engine still or running. */
export function groupingOf(
  solver: ProofSolver,
  space: StateSpace,
  options: {
    readonly running: boolean;
    readonly opened?: ReadonlySet<number>;
    readonly near?: readonly number[];
    readonly splitFirst?: readonly string[];
    readonly mostSplits?: number;
  },
): Grouping {
  const { running, opened = new Set<number>(), near, splitFirst, mostSplits } = options;
  const engine = space.engines.find(({ mode }) => (mode === "running") === running)!;
  const { pulledKnown } = solver;
  const pulled = (positions: Assignment): readonly boolean[] => {
    const possible = space.completed(positions, engine);
    const full = possible ?? positions;
    const key = possible === null ? JSON.stringify(positions) : Object.values(possible).join("|");
    const answer = pulledKnown.get(key) ?? solver.glance(space.quick(full, STILL)).pulled;
    pulledKnown.set(key, answer);
    return answer;
  };
  const { graph } = solver;
  const trees = switchGroups({
    graph,
    space,
    opened,
    running,
    pulled,
    isPossible: (positions) => space.completed(positions, engine) !== null,
    ...(near && { near }),
    ...(splitFirst && { splitFirst }),
    ...(mostSplits !== undefined && { mostSplits }),
  });
  return { running, trees, groups: groupsOfTrees(trees) };
}

/**
 * The state that draws most from the battery, climbing from rest by one switch at a time: what the rest of the machine is set
 * to when a group is looked at with all else drawing most. A starter is left out, because it lasts seconds.
 */
export function heaviestRest(
  solver: ProofSolver,
  space: StateSpace,
  engine: EngineState,
): Assignment {
  const { elements } = solver.compiled.jobNetwork;
  const battery = elements.findIndex(({ kind }) => kind === "emf");
  if (battery < 0) return {};
  const drawnA = (full: Assignment): number =>
    Math.abs(solver.glance(space.quick(full, engine)).elementA[battery]!);
  const starts = startingSwitches(solver);
  let best = space.completed({}, engine) ?? {};
  let bestA = drawnA(best);
  for (let sweep = 0; sweep < 2; sweep++) {
    for (const { id, positions } of space.variables) {
      if (starts.has(id)) continue;
      for (const position of positions) {
        if (best[id] === position) continue;
        const next = space.completed({ ...best, [id]: position }, engine);
        const nextA = next === null ? 0 : drawnA(next);
        if (next !== null && nextA > bestA) [best, bestA] = [next, nextA];
      }
    }
  }
  return best;
}

/** Momentary switches by hand: nobody holds them for long. */
function startingSwitches({ compiled: { job } }: ProofSolver): ReadonlySet<string> {
  return new Set(
    job.parts.flatMap((part) =>
      part.kind === "switch" && part.momentary && part.driven === "hand" ? [part.id] : [],
    ),
  );
}

/** Every combination of every group that the job's exclusions leave, as real states. */
export function groupStates(
  space: StateSpace,
  grouping: Grouping,
  engine: EngineState,
  heaviest: Assignment,
): readonly GroupState[] {
  return groupCombinations(space, grouping).flatMap((combination): GroupState[] => {
    const light = space.completed(combination.given, engine);
    const heavy = space.completed(combination.given, engine, heaviest);
    if (light === null || heavy === null) return [];
    return [
      {
        ...combination,
        engine,
        light: space.quick(light, engine),
        heavy: space.quick(heavy, engine),
      },
    ];
  });
}

/**
 * Every combination of every group, whether or not the job's exclusions leave it.
 *
 * @param mostCount  of a group with more combinations only rows in which any four of its variables meet in every way.
 */
export function groupCombinations(
  space: StateSpace,
  { groups }: Grouping,
  mostCount = Number.POSITIVE_INFINITY,
): readonly Pick<GroupState, "group" | "groupIndex" | "given">[] {
  return groups.flatMap((group, groupIndex) =>
    combinationsWithin(space, group.variables, mostCount).map((combination) => ({
      group,
      groupIndex,
      given: { ...group.context, ...combination },
    })),
  );
}

/** So many variables meet in every way in the rows taken of a large group. */
const STRENGTH = 4;
/** Rows in which any four meet grow with the fourth power of their number: of more than this, each position alone, and each among all others on. */
const MOST_COVERED = 16;

function oneByOne(
  ids: readonly string[],
  positions: readonly (readonly string[])[],
): readonly Assignment[] {
  const all = (pick: (list: readonly string[]) => string): Assignment =>
    Object.fromEntries(ids.map((id, i) => [id, pick(positions[i]!)]));
  const [firsts, lasts] = [all((list) => list[0]!), all((list) => list.at(-1)!)];
  const single = ids.flatMap((id, i) =>
    positions[i]!.flatMap((position) => [
      { ...firsts, [id]: position },
      { ...lasts, [id]: position },
    ]),
  );
  return [firsts, lasts, ...single];
}

function combinationsWithin(
  space: StateSpace,
  ids: readonly string[],
  mostCount: number,
): readonly Assignment[] {
  const positions = ids.map((id) => space.variables.find((one) => one.id === id)!.positions);
  const count = positions.reduce((product, list) => product * list.length, 1);
  if (count <= mostCount) return combinationsOf(space.variables, ids);
  if (ids.length > MOST_COVERED) return oneByOne(ids, positions);
  const levelCounts = positions.map((list) => list.length);
  const key = levelCounts.join();
  const rows = space.rowsKnown.get(key) ?? rowsMeeting(levelCounts, STRENGTH);
  space.rowsKnown.set(key, rows);
  return rows.map((row) => Object.fromEntries(ids.map((id, i) => [id, positions[i]![row[i]!]!])));
}

/** The group and combination that decide an element in a full state, by walking the splits. */
export function groupOfElement(
  trees: readonly GroupTree[],
  element: number,
  full: Assignment,
): Group | null {
  for (const tree of trees) {
    if (tree.kind === "group") {
      if (tree.group.elements.has(element)) return tree.group;
      continue;
    }
    const found = groupOfElement(tree.under.get(full[tree.variable]!) ?? [], element, full);
    if (found !== null) return found;
  }
  return null;
}
