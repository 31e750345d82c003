import type { Intent, Job } from "../job/index.ts";
import type { OperateState } from "./operateResult.ts";

type Way = Intent["when"][number];

/** Whether a load should work in a state: null where the job says nothing of it. */
export function expectedOf(job: Job, ref: string, state: OperateState): boolean | null {
  const intents = job.intents.filter((intent) => intent.load === ref);
  if (intents.length === 0) return null;
  return intents.some((intent) => intent.when.some((way) => holds(way, state)));
}

function holds({ positions, flash, engine }: Way, state: OperateState): boolean {
  const inPosition = Object.entries(positions).every(([part, allowed]) =>
    allowed.includes(state.positions[part] ?? ""),
  );
  return (
    inPosition &&
    (flash === undefined || flash === state.flash) &&
    (engine === undefined || engine.includes(state.engine.mode))
  );
}
