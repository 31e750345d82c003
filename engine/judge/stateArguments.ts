import type { Job } from "../job/index.ts";
import { type QuickState, RUNNING_RPM, restPositions } from "../operate/index.ts";

/** The arguments of `operate` that bring this state about; switches at rest are left out. */
export function stateArguments(job: Job, state: QuickState): readonly string[] {
  const mode = state.engine?.mode ?? "stopped";
  const rest = restPositions(job, mode);
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

/** The whole command, with JOB where the file stands. */
export const operateCommand = (
  job: Job,
  state: QuickState,
  batteryV: number | null = null,
): readonly string[] => [
  "operate",
  "JOB",
  ...stateArguments(job, state),
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
