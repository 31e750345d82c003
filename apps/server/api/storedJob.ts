import { JOB_VERSION, type Job, readJob, writeJob } from "@copperwright/engine";
import type { JobText, Storage } from "../storage/index.ts";
import { type Refused, refused } from "./refuse.ts";

export type JobOfText = { readonly ok: true; readonly job: Job } | Refused;

/** A stored text as a job. A text of a newer version is there to be looked at, and refused for any change. */
export function jobOfText(text: string, jobVersion: number): JobOfText {
  if (jobVersion > JOB_VERSION) return refused("job-newer", {});
  const read = readJob(text);
  return read.ok ? read : refused("job-unreadable", {}, read.refusals);
}

/** A revision of a job as a job. */
export async function storedJob(
  storage: Storage,
  key: string,
  revision?: number,
): Promise<{ readonly ok: true; readonly job: Job; readonly savedBy: string } | Refused> {
  const row = await storage.revision(key, revision);
  if (row === null) {
    return revision === undefined
      ? refused("no-such-job", {})
      : refused("no-such-revision", { revision });
  }
  const read = jobOfText(row.text, row.job_version);
  return read.ok ? { ok: true, job: read.job, savedBy: row.saved_by } : read;
}

/** What the storage keeps of a job. */
export function jobText(job: Job): JobText {
  const { maker, model } = job.machine;
  return {
    text: writeJob(job),
    jobVersion: JOB_VERSION,
    name: job.name,
    machine: `${maker} ${model}`.trim(),
  };
}
