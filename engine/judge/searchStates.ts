import { type Job, presentParts } from "../job/index.ts";
import {
  type CompiledJob,
  coveringRows,
  type QuickSolution,
  restPositions,
} from "../operate/index.ts";
import { declaredStates } from "./declaredStates.ts";

type Mode = "stopped" | "cranking" | "running";

/** A state with every switch named, solved on the battery alone. */
export interface FullState {
  readonly positions: Readonly<Record<string, string>>;
  readonly engine: { readonly mode: "stopped" };
  readonly flash: "on" | "off";
  /** What the engine is taken to do, as far as switches and intents ask; no source runs. */
  readonly asIf: Mode;
}

export interface StateSearch {
  /** States solved, in order. */
  readonly states: readonly FullState[];
  /** True when every neighbour of every worst state was looked at. */
  readonly complete: boolean;
}

export interface SearchSteering {
  /** Called with every solved state and its place in `states`. */
  readonly watch: (state: FullState, solution: QuickSolution, stateIndex: number) => void;
  /** Places of the states that are worst for something so far, the most telling first. */
  readonly worstIndices: () => readonly number[];
  /** Bound of the search, in solves. */
  readonly solveCountMax: number;
}

/**
 * Looks for the states in which each element carries most: from rest, the named states, those of the intents and a covering of
 * all triples of switches, every state that is worst for something is varied by one switch at a time until nothing gets worse.
 */
export function searchStates(
  compiled: CompiledJob,
  { watch, worstIndices, solveCountMax }: SearchSteering,
): StateSearch {
  const { job } = compiled;
  const states: FullState[] = [];
  const seen = new Set<string>();
  let solvedCount = 0;
  const visit = (state: FullState): void => {
    const key = keyOf(state);
    if (seen.has(key) || isExcluded(job, state)) return;
    seen.add(key);
    solvedCount++;
    const solution = compiled.solve(state);
    if (!solution.converged) return;
    states.push(state);
    watch(state, solution, states.length - 1);
  };
  for (const start of startStates(job)) visit(start);
  const expanded = new Set<number>();
  for (;;) {
    // Rest comes first: there nothing need flow, and every single switch is one step away.
    const rest = states.length > 0 && !expanded.has(0) ? 0 : undefined;
    const index = rest ?? worstIndices().find((one) => !expanded.has(one));
    if (index === undefined) return { states, complete: true };
    if (solvedCount >= solveCountMax) return { states, complete: false };
    expanded.add(index);
    for (const next of neighboursOf(job, states[index]!)) visit(next);
  }
}

function startStates(job: Job): readonly FullState[] {
  const hasFlasher = presentParts(job).some((part) => part.kind === "flasher");
  const at = (positions: FullState["positions"], asIf: Mode, flash: "on" | "off"): FullState => ({
    positions,
    engine: { mode: "stopped" },
    flash,
    asIf,
  });
  const rest = (["stopped", "running"] as const).map((mode) =>
    at(restPositions(job, mode), mode, "off"),
  );
  const declared = declaredStates(job).map(({ state }) =>
    at(state.positions ?? {}, state.engine?.mode ?? "stopped", state.flash ?? "off"),
  );
  const starts = [...rest, ...declared, ...coveringStates(job)];
  return hasFlasher ? starts.flatMap((one) => [one, { ...one, flash: "on" as const }]) : starts;
}

/** With more switches than this the covering rows are dearer than what they find. */
const COVERED_COUNT_MAX = 30;

/** States in which any three switches meet in every combination of their positions: no feed through three is missed. */
function coveringStates(job: Job): readonly FullState[] {
  const switches = presentParts(job).flatMap((part) => (part.kind === "switch" ? [part] : []));
  if (switches.length === 0 || switches.length > COVERED_COUNT_MAX) return [];
  return coveringRows(switches.map(({ positions }) => positions.length)).map((row) => ({
    positions: Object.fromEntries(
      switches.map(({ id, positions }, k) => [id, positions[row[k]!]!.id]),
    ),
    engine: { mode: "stopped" },
    flash: "off",
    asIf: "stopped",
  }));
}

/** Every state one switch away. */
function neighboursOf(job: Job, state: FullState): readonly FullState[] {
  return presentParts(job).flatMap((part) => {
    if (part.kind !== "switch") return [];
    return part.positions
      .filter(({ id }) => id !== state.positions[part.id])
      .map(({ id }) => ({ ...state, positions: { ...state.positions, [part.id]: id } }));
  });
}

const keyOf = ({ positions, asIf, flash }: FullState): string =>
  `${asIf} ${flash} ${Object.keys(positions)
    .sort()
    .map((part) => `${part}=${positions[part]}`)
    .join(" ")}`;

function isExcluded(job: Job, { positions, asIf }: FullState): boolean {
  return job.exclusions.some(
    (rule) =>
      (rule.engine === undefined || rule.engine.includes(asIf)) &&
      Object.entries(rule.positions).every(([part, list]) => list.includes(positions[part] ?? "")),
  );
}
