import { type Job, presentParts } from "../job/index.ts";
import { carriedOver } from "./carriedOver.ts";
import type { CompiledJob, QuickSolution } from "./compileJob.ts";
import type { EngineMode } from "./operateResult.ts";
import { RUNNING_RPM, restPositions } from "./readState.ts";
import type { QuickState } from "./stateOverrides.ts";

/**
 * A compiled job that solves a state once: its numbers are shared, not copied, and the workspace does not hold it when it is asked for
 * again. Where resistances alone changed since `before`, its solutions stand or are started from: see carriedOver.
 *
 * @param before  of the same switches, states and joins.
 */
export function remembering(compiled: CompiledJob, before: CompiledJob | null = null): CompiledJob {
  const carried = carriedOver(compiled.jobNetwork.network);
  const keyOf = keyed(compiled.job);
  const kept = new Map<string, QuickSolution>();
  // Its solutions alone: were `before` itself held, every check of a long evening would hang on the last one.
  const earlier = before?.kept;
  const again = (state: QuickState, was: QuickSolution): QuickSolution | null => {
    const isRunning = state.engine?.mode === "running";
    if (isRunning || !was.converged || was.supplies.roundCount !== 1) return null;
    const how = carried(was);
    if (how === "stands") return was;
    return how === "rests" ? compiled.solveFrom(state, was) : null;
  };
  const solve = (state: QuickState): QuickSolution => {
    const key = keyOf(state);
    if (key === null) return compiled.solve(state);
    const known = kept.get(key);
    if (known !== undefined) return known;
    const was = earlier?.get(key);
    const solution = (was === undefined ? null : again(state, was)) ?? compiled.solve(state);
    kept.set(key, solution);
    return solution;
  };
  return { ...compiled, solve, kept };
}

/**
 * What the network sees of a state: where every switch stands, the flash, how fast the engine runs, what is open. Modes other than
 * running are one to it but for the switches that follow them. Null for states nobody asks for twice.
 */
function keyed(job: Job): (state: QuickState) => string | null {
  const switches = presentParts(job).flatMap(({ kind, id }) => (kind === "switch" ? [id] : []));
  const rest = {
    stopped: restPositions(job, "stopped"),
    cranking: restPositions(job, "cranking"),
    running: restPositions(job, "running"),
  } satisfies Record<EngineMode, unknown>;
  return (state) => {
    if (isOdd(state)) return null;
    const { positions, flash = "off", engine, open = [] } = state;
    const atRest = rest[engine?.mode ?? "stopped"];
    const speedRpm = engine?.mode === "running" ? (engine.speedRpm ?? RUNNING_RPM) : 0;
    let key = `${flash} ${speedRpm}`;
    for (const id of switches) key += ` ${positions?.[id] ?? atRest[id]!}`;
    for (const id of open) key += ` /${id}`;
    return key;
  };
}

/** Shorted, worse by a resistance, held, or brought about by what was before. */
const isOdd = ({ short, extraOhm, held, excited }: QuickState): boolean =>
  (short !== undefined && short.length > 0) ||
  (held !== undefined && held.length > 0) ||
  extraOhm !== undefined ||
  excited === true;
