import { compileJob, conditionsOf } from "../operate/index.ts";
import type { ProofInput } from "./proofInput.ts";
import type { PlottedJob, WorstMet } from "./timeCurrentOf.ts";

/** Everything the plots of a job need, as plain data: it can be handed from thread to thread. */
export interface PlotInput {
  readonly proof: ProofInput;
  readonly worst: WorstMet;
}

/** @param checked  the job's largest currents as the check met them, of which no more than the plots need is taken */
export function plotInput(proof: ProofInput, { design }: PlottedJob): PlotInput {
  const { conductors, fuses } = design.worst;
  return { proof, worst: { conductors: bare(conductors), fuses: bare(fuses) } };
}

const bare = (met: WorstMet["fuses"]): WorstMet["fuses"] =>
  new Map([...met].map(([id, { currentA, state }]) => [id, { currentA, state }]));

/** The job as `timeCurrentsOf` reads it, its network made anew. */
export function plottedJob({ proof, worst }: PlotInput): PlottedJob {
  const { job, routed, conductors, protection } = proof;
  const compiled = compileJob(job, conductors, { conditions: conditionsOf(job, {}) });
  return { design: { job, routed, conductors, compiled, protection, worst } };
}
