import { type Exclusion, type Job, type PartOf, presentParts } from "../job/index.ts";
import { coveringRows } from "./coveringRows.ts";
import type { EngineMode } from "./operateResult.ts";
import { RUNNING_RPM, restPositions } from "./readState.ts";

/** A state with every switch named. */
export interface FullState {
  readonly positions: Readonly<Record<string, string>>;
  readonly engine: { readonly mode: EngineMode; readonly speedRpm: number };
  readonly flash: "on" | "off";
}

const MODES: readonly EngineMode[] = ["stopped", "cranking", "running"];

/** Fastest speed any generator's output is stated at: where its leads carry most. */
export function fastestRpm(job: Job): number {
  const speeds = job.parts.flatMap((part) =>
    part.kind === "generator"
      ? part.windings.flatMap(({ points }) => (points ?? []).map(({ speedRpm }) => speedRpm))
      : [],
  );
  return Math.max(RUNNING_RPM, ...speeds);
}

export const switchesOf = (job: Job): readonly PartOf<"switch">[] =>
  presentParts(job)
    .filter((part) => part.kind === "switch")
    .sort((a, b) => (a.id < b.id ? -1 : 1));

/**
 * States a search for extremes starts from: rest in each engine mode, every named state, the first positions of every way an
 * intent holds, and rows in which any three of switches, engine mode and flash meet in every combination. Excluded ones are
 * left out; the same state comes once.
 */
export function startingStates(job: Job): readonly FullState[] {
  const switches = switchesOf(job);
  const speedRpm = fastestRpm(job);
  const at = (
    positions: Readonly<Record<string, string>>,
    mode: EngineMode,
    flash: "on" | "off" = "on",
  ): FullState => ({
    positions: { ...restPositions(job, mode), ...positions },
    engine: { mode, speedRpm: mode === "running" ? speedRpm : 0 },
    flash,
  });
  const rest = MODES.map((mode) => at({}, mode));
  const named = job.states.map(({ positions, engine, flash }) =>
    at(positions, engine?.mode ?? "stopped", flash),
  );
  const intended = job.intents.flatMap(({ when }) =>
    when.flatMap(({ positions, engine, flash }) => {
      const first = Object.entries(positions).map(([part, ids]) => [part, ids[0]!]);
      return (engine ?? MODES).map((mode) => at(Object.fromEntries(first), mode, flash));
    }),
  );
  const levelCounts = [...switches.map(({ positions }) => positions.length), MODES.length, 2];
  const covering = coveringRows(levelCounts).map((row) => {
    const positions = switches.map((part, k) => [part.id, part.positions[row[k]!]!.id]);
    const mode = MODES[row[switches.length]!]!;
    return at(Object.fromEntries(positions), mode, row.at(-1) === 0 ? "on" : "off");
  });
  const once = new Map(
    [...rest, ...named, ...intended, ...covering]
      .filter((state) => !isExcluded(job.exclusions, state))
      .map((state) => [stateKey(state), state]),
  );
  return [...once.values()];
}

/** A state with one switch, the flash or the engine mode changed. */
export function neighbourStates(job: Job, state: FullState): readonly FullState[] {
  const speedRpm = fastestRpm(job);
  const moved = switchesOf(job).flatMap((part) =>
    part.positions
      .filter(({ id }) => id !== state.positions[part.id])
      .map(({ id }) => ({ ...state, positions: { ...state.positions, [part.id]: id } })),
  );
  const engines = MODES.filter((mode) => mode !== state.engine.mode).map((mode) => ({
    ...state,
    engine: { mode, speedRpm: mode === "running" ? speedRpm : 0 },
  }));
  const flash = state.flash === "on" ? ("off" as const) : ("on" as const);
  return [...moved, ...engines, { ...state, flash }].filter(
    (next) => !isExcluded(job.exclusions, next),
  );
}

export function stateKey({ positions, engine, flash }: FullState): string {
  const parts = Object.keys(positions).sort();
  return [engine.mode, flash, ...parts.map((part) => `${part}=${positions[part]}`)].join(" ");
}

function isExcluded(
  exclusions: readonly Exclusion[],
  { positions, engine }: Pick<FullState, "positions" | "engine">,
): boolean {
  return exclusions.some(
    (exclusion) =>
      (exclusion.engine === undefined || exclusion.engine.includes(engine.mode)) &&
      Object.entries(exclusion.positions).every(([part, ids]) =>
        ids.includes(positions[part] ?? ""),
      ),
  );
}
