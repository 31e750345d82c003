import type { Job } from "../job/index.ts";
import type { Refusal } from "../messages/index.ts";
import type { Conductors } from "../route/index.ts";
import { afterFuses } from "./afterFuses.ts";
import { pinsToTakeApart } from "./buildJobNetwork.ts";
import { type CompiledJob, compileJob } from "./compileJob.ts";
import type { OperateRequest, OperateSolution, OperateState } from "./operateResult.ts";
import { conditionsOf, readState } from "./readState.ts";
import { solveState } from "./solveState.ts";

export type Operated =
  | { readonly ok: true; readonly solution: OperateSolution }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/**
 * What happens with the switches so: every volt and ampere, what lights, which relay pulls, which fuse opens and when, and
 * what is left when it has.
 *
 * Opening a pin PART.PIN parts the pin from the inside of the part; wires on the pin stay together. Opening a joint's way, a
 * connector's cavity (either half) or a body's point opens that way, cavity or point.
 */
export function operateJob(job: Job, conductors: Conductors, request: OperateRequest): Operated {
  const prepared = prepare(job, conductors, request);
  if (!prepared.ok) return prepared;
  const { compiled, state } = prepared;
  const solved = solveState(compiled, state);
  return { ok: true, solution: { ...solved, ...afterFuses(compiled, solved) } };
}

/** A request read, and the job laid out for it. */
export function prepare(
  job: Job,
  conductors: Conductors,
  request: OperateRequest,
):
  | { readonly ok: true; readonly compiled: CompiledJob; readonly state: OperateState }
  | { readonly ok: false; readonly refusals: readonly Refusal[] } {
  const read = readState(job, request);
  if (!read.ok) return read;
  const { state } = read;
  const takenApart = pinsToTakeApart(job, [...state.open, ...Object.keys(state.extraOhm)]);
  const conditions = conditionsOf(job, request);
  return { ok: true, compiled: compileJob(job, conductors, { conditions, takenApart }), state };
}
