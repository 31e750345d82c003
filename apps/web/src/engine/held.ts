import type { CheckedJob, Job } from "@copperwright/engine";

/** What the worker keeps of the job on the bench. Answers read it; only the worker itself replaces it. */
export interface Held {
  readonly job: Job;
  /** The check of exactly this job; made when first asked for. */
  checked(): CheckedJob;
}
