import type { Job } from "../../job/index.ts";
import { type SupplyAnswer, type SupplyRequest, supplyAnswer } from "../../supply/index.ts";
import { planJob } from "../planJob.ts";

/** Supply questions of a job as it stands in its file: laid out and sized first. */
export function supplyOfJob(job: Job, request: SupplyRequest = {}): SupplyAnswer {
  const plan = planJob(job);
  return supplyAnswer(plan.job, plan.conductors, request);
}
