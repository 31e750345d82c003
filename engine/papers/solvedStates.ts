import type { Job } from "../job/index.ts";
import { type OperateRequest, type OperateSolution, operateJob } from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";

export type NamedState = Job["states"][number];

/** A named state of the job, solved; null where it does not settle. */
export interface SolvedState {
  readonly state: NamedState;
  readonly request: OperateRequest;
  readonly solution: OperateSolution | null;
}

/** Every named state, solved once for all papers. */
export function solvedStates(job: Job, conductors: Conductors): readonly SolvedState[] {
  return job.states.map((state) => {
    const request = requestOf(state);
    return { state, request, solution: solutionOf(job, conductors, request) };
  });
}

/** What a request comes to; null where it is refused or does not settle. */
export function solutionOf(
  job: Job,
  conductors: Conductors,
  request: OperateRequest,
): OperateSolution | null {
  const operated = operateJob(job, conductors, request);
  return operated.ok && operated.solution.converged ? operated.solution : null;
}

/** A state of the job as a request. */
export function requestOf({
  positions,
  engine,
  flash,
}: Pick<NamedState, "positions" | "engine" | "flash">): OperateRequest {
  return {
    set: positions,
    ...(engine === undefined
      ? {}
      : {
          engine: {
            mode: engine.mode,
            ...(engine.speedRpm === undefined ? {} : { speedRpm: engine.speedRpm }),
          },
        }),
    ...(flash === undefined ? {} : { flash }),
  };
}
