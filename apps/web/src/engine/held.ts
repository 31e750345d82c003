import type { CheckedJob, Job } from "@copperwright/engine";
import type { SceneSource } from "@copperwright/engine/scenes";

/** What the worker keeps of the job on the bench. Answers read it; only the worker itself replaces it. */
export interface Held {
  readonly job: Job;
  /** The check of exactly this job; made when first asked for. */
  checked(): CheckedJob;
  /** What drawings and lists of exactly this job share: each bundle packed and each state solved once for all of them. */
  scenes(): SceneSource;
}
