import { type Job, presentParts } from "../job/index.ts";
import type { EngineMode } from "./operateResult.ts";
import { RUNNING_RPM, restPositions } from "./readState.ts";
import type { QuickState } from "./stateOverrides.ts";

/**
 * Keeps the answers to states with nothing broken, by what the network sees of them: where every switch stands, the flash, and how
 * fast the engine runs. Modes other than running are one to the network but for the switches that follow them.
 */
export function solvedOnce<Solution>(
  job: Job,
  solve: (state: QuickState) => Solution,
): (state: QuickState) => Solution {
  const switches = presentParts(job).flatMap(({ kind, id }) => (kind === "switch" ? [id] : []));
  const rest = {
    stopped: restPositions(job, "stopped"),
    cranking: restPositions(job, "cranking"),
    running: restPositions(job, "running"),
  } satisfies Record<EngineMode, unknown>;
  const known = new Map<string, Solution>();
  return (state) => {
    if (isBroken(state)) return solve(state);
    const { positions, flash = "off", engine } = state;
    const atRest = rest[engine?.mode ?? "stopped"];
    const speedRpm = engine?.mode === "running" ? (engine.speedRpm ?? RUNNING_RPM) : 0;
    let key = `${flash} ${speedRpm}`;
    for (const id of switches) key += ` ${positions?.[id] ?? atRest[id]!}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const solution = solve(state);
    known.set(key, solution);
    return solution;
  };
}

/** Broken, shorted, or brought about by what was before. */
const isBroken = ({ open, short, extraOhm, held, excited }: QuickState): boolean =>
  [open, short, held].some((list) => list !== undefined && list.length > 0) ||
  Object.keys(extraOhm ?? {}).length > 0 ||
  excited === true;
