import { type Job, presentParts } from "../job/index.ts";
import { type QuickState, RUNNING_RPM, restPositions } from "../operate/index.ts";

/** The flasher's rhythm stands among the switches under this name; no part can have it. */
export const FLASH = "@flash";

/** Position of every variable named so far. */
export type Assignment = Readonly<Record<string, string>>;

export interface Variable {
  readonly id: string;
  readonly positions: readonly string[];
  /** Null for the flasher's rhythm. */
  readonly driven: "hand" | "machine" | "engine" | null;
}

export type EngineName = "stopped" | "cranking" | "idle" | "fast";

export interface EngineState {
  readonly name: EngineName;
  readonly mode: "stopped" | "cranking" | "running";
  readonly speedRpm: number;
}

/** Everything that can be set on a machine: switches, flasher, engine. */
export interface StateSpace {
  readonly job: Job;
  readonly variables: readonly Variable[];
  readonly engines: readonly EngineState[];
  /** Switch positions alone, and with flasher and engine. */
  readonly positionCount: number;
  readonly productCount: number;
  /** States each exclusion of the job takes out of the product. */
  readonly excluded: readonly { readonly rule: string; readonly count: number }[];
  /**
   * A full state with these positions, the others as in `rest` or at rest, moved only where an exclusion would be hit.
   * Null where the positions given are themselves excluded.
   */
  readonly completed: (
    given: Assignment,
    engine: EngineState,
    rest?: Assignment,
  ) => Assignment | null;
  readonly quick: (full: Assignment, engine: EngineState) => QuickState;
  /** Rows of levels already found for groups too large to be solved whole, by the counts of their positions. */
  readonly rowsKnown: Map<string, readonly (readonly number[])[]>;
}

/** The state space of a job: the full product of its switches, the flasher's two phases and the engine. */
export function stateSpace(job: Job): StateSpace {
  const switches = presentParts(job)
    .filter((part) => part.kind === "switch")
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  const flashes = presentParts(job).some((part) => part.kind === "flasher");
  const variables: Variable[] = [
    ...switches.map((part) => ({
      id: part.id,
      positions: part.positions.map((position) => position.id),
      driven: part.driven,
    })),
    ...(flashes ? [{ id: FLASH, positions: ["off", "on"], driven: null }] : []),
  ];
  const engines = enginesOf(job);
  const modes = ["stopped", "cranking", "running"] as const;
  const atRest = new Map(
    modes.map((mode) => [mode, { ...restPositions(job, mode), [FLASH]: "off" }] as const),
  );
  const positionsOf = new Map(variables.map(({ id, positions }) => [id, positions]));
  const rules = job.exclusions.map(({ engine, positions }) => ({
    engine,
    positions: Object.entries(positions),
  }));
  const positionCount = switches.reduce((product, part) => product * part.positions.length, 1);
  const flashCount = flashes ? 2 : 1;
  return {
    job,
    variables,
    engines,
    positionCount,
    productCount: positionCount * flashCount * engines.length,
    excluded: job.exclusions.map((rule) => ({
      rule: rule.id,
      count: engines
        .filter(({ mode }) => rule.engine === undefined || rule.engine.includes(mode))
        .reduce((sum) => sum + countOf(variables, rule.positions), 0),
    })),
    rowsKnown: new Map(),
    completed: (given, engine, rest) =>
      completed({ rules, positionsOf }, given, engine, { atRest: atRest.get(engine.mode)!, rest }),
    quick: (full, { mode, speedRpm }) => ({
      positions: withoutFlash(full),
      engine: { mode, speedRpm },
      flash: full[FLASH] === "on" ? "on" : "off",
    }),
  };
}

function withoutFlash(full: Assignment): Assignment {
  const positions: Record<string, string> = {};
  for (const id in full) if (id !== FLASH) positions[id] = full[id]!;
  return positions;
}

/** Stopped and cranking always; idle and fast where something generates: the lowest and highest speed an output is stated at. */
function enginesOf(job: Job): readonly EngineState[] {
  const speeds = presentParts(job).flatMap((part) =>
    part.kind === "generator"
      ? part.windings.flatMap(({ points }) => (points ?? []).map(({ speedRpm }) => speedRpm))
      : [],
  );
  const still: EngineState[] = [
    { name: "stopped", mode: "stopped", speedRpm: 0 },
    { name: "cranking", mode: "cranking", speedRpm: 0 },
  ];
  const lowRpm = speeds.length === 0 ? RUNNING_RPM : Math.min(...speeds);
  return [
    ...still,
    { name: "idle", mode: "running", speedRpm: lowRpm },
    { name: "fast", mode: "running", speedRpm: Math.max(RUNNING_RPM, ...speeds) },
  ];
}

type Rules = Job["exclusions"][number]["positions"];

function countOf(variables: readonly Variable[], rule: Rules): number {
  return variables.reduce((product, { id, positions }) => {
    const listed = rule[id];
    return product * (listed === undefined ? positions.length : listed.length);
  }, 1);
}

/** An exclusion with its positions as a list. */
interface Rule {
  readonly engine: Job["exclusions"][number]["engine"];
  readonly positions: readonly (readonly [id: string, excluded: readonly string[]])[];
}

/** What the variables left open stand at: as in `rest`, else at rest. */
interface Resting {
  readonly atRest: Assignment;
  readonly rest: Assignment | undefined;
}

function completed(
  space: {
    readonly rules: readonly Rule[];
    readonly positionsOf: ReadonlyMap<string, readonly string[]>;
  },
  given: Assignment,
  { mode }: EngineState,
  { atRest, rest }: Resting,
): Assignment | null {
  const { rules, positionsOf } = space;
  const full: Record<string, string> = {};
  for (const id of positionsOf.keys()) full[id] = given[id] ?? rest?.[id] ?? atRest[id]!;
  // One pass a rule and once more: moving one switch out of a rule may bring another rule about.
  for (let pass = 0; pass <= rules.length; pass++) {
    const hit = rules.find(
      ({ engine, positions }) =>
        (engine === undefined || engine.includes(mode)) &&
        positions.every(([id, list]) => list.includes(full[id] ?? "")),
    );
    if (hit === undefined) return full;
    const move = hit.positions
      .filter(([id]) => given[id] === undefined)
      .flatMap(([id, list]) => {
        const other = positionsOf.get(id)?.find((position) => !list.includes(position));
        return other === undefined ? [] : [[id, other] as const];
      })[0];
    if (move === undefined) return null;
    full[move[0]] = move[1];
  }
  return null;
}

/** Every combination of the variables named, in order. */
export function combinationsOf(
  variables: readonly Variable[],
  ids: readonly string[],
): readonly Assignment[] {
  const positionsOf = new Map(variables.map(({ id, positions }) => [id, positions]));
  let all: Assignment[] = [{}];
  for (const id of ids) {
    const positions = positionsOf.get(id)!;
    all = all.flatMap((sofar) => positions.map((position) => ({ ...sofar, [id]: position })));
  }
  return all;
}
