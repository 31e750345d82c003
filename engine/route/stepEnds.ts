import type { Job, Run } from "../job/index.ts";
import type { PathStep } from "./routed.ts";

/** Stations a piece of way begins and ends at; null where that is a place along the run. */
export interface StepEnds {
  readonly start: string | null;
  readonly end: string | null;
}

/** Tells for every piece of way the stations it lies between. */
export function stepEnds(job: Job): (step: PathStep) => StepEnds {
  const runs = new Map(job.runs.map((run) => [run.id, run]));
  return ({ run: id, enterMm, leaveMm }) => {
    const run = runs.get(id)!;
    return { start: stationAt(run, enterMm), end: stationAt(run, leaveMm) };
  };
}

/** A run nobody measured has no mm at its far end. */
function stationAt({ from, to, lengthMm }: Run, mm: number | null): string | null {
  if (mm === 0) return from;
  return mm === null || mm === lengthMm?.value ? to : null;
}
