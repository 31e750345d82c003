import type { Job } from "../job/index.ts";
import type { Conductors } from "../route/index.ts";
import type { CompiledJob } from "./compileJob.ts";
import { networkContext } from "./networkContext.ts";

/**
 * A compiled job told of a job whose network is the same: same joins, same parts at work, same resistances and conditions. Only what
 * is read beside the network (names, notes, colours) is the new job's. Shares the workspace of the one it was made from.
 */
export function onSameNetwork(
  compiled: CompiledJob,
  job: Job,
  conductors: Conductors,
): CompiledJob {
  const { conditions, jobNetwork } = compiled;
  const { takenApart } = jobNetwork.context;
  const context = networkContext(job, conductors, conditions, takenApart);
  return { ...compiled, job, conductors, jobNetwork: { ...jobNetwork, context } };
}
