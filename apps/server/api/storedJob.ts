import { JOB_VERSION, type Job, readJob, writeJob } from "@copperwright/engine";
import type { JobText, RevisionsTable, Storage } from "../storage/index.ts";
import { knownJob, rememberJob } from "./jobMemo.ts";
import { type Refused, refused } from "./refuse.ts";

export type JobOfText = { readonly ok: true; readonly job: Job } | Refused;

/** A stored text as a job. A text of a newer version is there to be looked at, and refused for any change. */
export function jobOfRow(row: RevisionsTable): JobOfText {
  if (row.job_version > JOB_VERSION) return refused("job-newer", {});
  const known = knownJob(row.sha256);
  if (known !== null) return { ok: true, job: known };
  const read = readJob(row.text);
  if (!read.ok) return refused("job-unreadable", {}, read.refusals);
  rememberJob(row.text, read.job);
  return { ok: true, job: read.job };
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
  const read = jobOfRow(row);
  return read.ok ? { ok: true, job: read.job, savedBy: row.saved_by } : read;
}

/** What the storage keeps of a job. */
export function jobText(job: Job): JobText {
  const { maker, model } = job.machine;
  return {
    text: writeJob(job),
    jobVersion: JOB_VERSION,
    name: shown(job.name),
    machine: shown(`${maker} ${model}`.trim()),
  };
}

/** A name for the list: a sign no database keeps as text (the job's own text has it escaped) is shown as missing. */
const shown = (name: string): string => name.replaceAll(String.fromCharCode(0), "\ufffd");
