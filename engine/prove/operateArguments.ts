import type { Job } from "../job/index.ts";
import { type QuickState, restPositions } from "../operate/index.ts";

/** What holds beside the state: the battery and the air, where they are not the usual ones. */
export interface ProofCase {
  readonly battery?: "full" | "weak" | number;
  readonly ambientC?: number;
}

/** The exact arguments of `operate` that bring a state about; switches at rest are left out. */
export function operateArguments(
  job: Job,
  state: QuickState,
  at: ProofCase = {},
): readonly string[] {
  const mode = state.engine?.mode ?? "stopped";
  const rest = restPositions(job, mode);
  const set = Object.entries(state.positions ?? {})
    .filter(([part, position]) => rest[part] !== position)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([part, position]) => `${part}=${position}`);
  const many = (option: string, words: readonly string[]): readonly string[] =>
    words.flatMap((word) => [option, word]);
  const speed = mode === "running" ? String(state.engine?.speedRpm) : mode;
  return [
    "operate",
    "JOB",
    ...many("--set", set),
    ...(mode === "stopped" ? [] : ["--engine", speed]),
    ...(state.flash === "on" ? ["--flash", "on"] : []),
    ...many("--held", state.held ?? []),
    ...many("--open", state.open ?? []),
    ...many(
      "--short",
      (state.short ?? []).map(({ a, b, ohm }) => `${a}=${b}:${ohm}`),
    ),
    ...(at.battery === undefined || at.battery === "full" ? [] : ["--battery", String(at.battery)]),
    ...(at.ambientC === undefined ? [] : ["--ambient", String(at.ambientC)]),
  ];
}
