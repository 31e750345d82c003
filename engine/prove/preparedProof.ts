import type { Job } from "../job/index.ts";
import { compileJob, conditionsOf } from "../operate/index.ts";
import { wireGuards } from "../protect/index.ts";
import type { Conductors, Routed } from "../route/index.ts";
import type { ProofInput } from "./proofInput.ts";

/** A planned job (lengths and copper known) with who guards whom: plain data, so that it can be handed from thread to thread. */
export function preparedProof(plan: {
  readonly job: Job;
  readonly routed: Routed;
  readonly conductors: Conductors;
}): ProofInput {
  const { job, routed, conductors } = plan;
  const { jobNetwork } = compileJob(job, conductors, { conditions: conditionsOf(job, {}) });
  return { job, routed, conductors, protection: wireGuards(job, jobNetwork, conductors) };
}
