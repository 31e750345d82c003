import type { Job } from "../job/index.ts";
import { type EngineMode, type QuickState, RUNNING_RPM, restPositions } from "../operate/index.ts";

type Rest = Readonly<Record<string, string>>;

/** The arguments of `operate` that bring this state about; switches at rest are left out. */
export function stateArguments(
  job: Job,
  state: QuickState,
  restOf: (mode: EngineMode) => Rest = (mode) => restPositions(job, mode),
): readonly string[] {
  const mode = state.engine?.mode ?? "stopped";
  const rest = restOf(mode);
  const set = Object.entries(state.positions ?? {})
    .filter(([part, position]) => rest[part] !== position)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([part, position]) => ["--set", `${part}=${position}`]);
  const speed = String(state.engine?.speedRpm ?? RUNNING_RPM);
  const engine = mode === "stopped" ? [] : ["--engine", mode === "running" ? speed : mode];
  const flash = state.flash === "on" ? ["--flash", "on"] : [];
  const held = (state.held ?? []).flatMap((relay) => ["--held", relay]);
  const open = (state.open ?? []).flatMap((place) => ["--open", place]);
  const short = (state.short ?? []).flatMap(({ a, b, ohm }) => ["--short", `${a}=${b}:${ohm}`]);
  return [...set, ...engine, ...flash, ...held, ...open, ...short];
}

/** As `operateCommand`, for many states of one job: what is at rest is looked up once, and a state met again not written again. */
export function commandWriter(
  job: Job,
): (state: QuickState, batteryV?: number | null) => readonly string[] {
  const rests = new Map<EngineMode, Rest>();
  const restOf = (mode: EngineMode): Rest => {
    const rest = rests.get(mode) ?? restPositions(job, mode);
    rests.set(mode, rest);
    return rest;
  };
  const written = new Map<QuickState, readonly string[]>();
  return (state, batteryV = null) => {
    const stands = written.get(state) ?? stateArguments(job, state, restOf);
    written.set(state, stands);
    return command(stands, batteryV);
  };
}

/** The whole command, with JOB where the file stands. */
export const operateCommand = (
  job: Job,
  state: QuickState,
  batteryV: number | null = null,
): readonly string[] => command(stateArguments(job, state), batteryV);

const command = (stands: readonly string[], batteryV: number | null): readonly string[] => [
  "operate",
  "JOB",
  ...stands,
  ...(batteryV === null ? [] : ["--battery", String(batteryV)]),
];

/** A state for a finding: what is not at rest. */
export function stateOf(job: Job, state: QuickState): Readonly<Record<string, string>> {
  const mode = state.engine?.mode ?? "stopped";
  const rest = restPositions(job, mode);
  const positions = Object.entries(state.positions ?? {}).filter(
    ([part, position]) => rest[part] !== position,
  );
  return {
    ...Object.fromEntries(positions.sort(([a], [b]) => (a < b ? -1 : 1))),
    ...(mode === "stopped" ? {} : { engine: mode }),
    ...(state.flash === "on" ? { flash: "on" } : {}),
  };
}

/** The state in a few words: `KEY on ON, LSW on H, engine running`; everything at rest where nothing is moved. */
export function stateInWords(job: Job, state: QuickState): string {
  const entries = Object.entries(stateOf(job, state)).map(([part, position]) =>
    part === "engine" ? `engine ${position}` : `${part}=${position}`,
  );
  return entries.length === 0 ? "everything at rest" : entries.join(", ");
}
