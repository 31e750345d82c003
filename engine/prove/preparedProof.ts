import type { Job } from "../job/index.ts";
import { buildJobNetwork, conditionsOf } from "../operate/index.ts";
import { type Protection, wireGuards } from "../protect/index.ts";
import type { Conductors, Routed } from "../route/index.ts";
import type { ProofInput } from "./proofInput.ts";

/**
 * A planned job (lengths and copper known) with who guards whom: plain data, so that it can be handed from thread to thread.
 *
 * @param plan.protection  as planned: guards go by what joins what and by lengths, not by copper. Absent: found here.
 */
export function preparedProof(plan: {
  readonly job: Job;
  readonly routed: Routed;
  readonly conductors: Conductors;
  readonly protection?: Protection;
}): ProofInput {
  const { job, routed, conductors } = plan;
  return { job, routed, conductors, protection: plan.protection ?? guardsOf(job, conductors) };
}

function guardsOf(job: Job, conductors: Conductors): Protection {
  const network = buildJobNetwork(job, conductors, { conditions: conditionsOf(job, {}) });
  return wireGuards(job, network, conductors);
}
