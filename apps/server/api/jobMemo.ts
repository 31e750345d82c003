import type { Job } from "@copperwright/engine";
import { sha256Of } from "../storage/index.ts";

/** Jobs kept as read, so that one who saves every few seconds does not have the same text read again each time. */
const KEPT_COUNT = 6;
/** Longer texts are read each time instead of being kept in memory. */
const LONGEST_KEPT = 500_000;

const kept = new Map<string, Job>();

/** The job of a text by the text's hash: the same text is always the same job. */
export function knownJob(sha256: string): Job | null {
  const job = kept.get(sha256);
  if (job === undefined) return null;
  keep(sha256, job);
  return job;
}

export function rememberJob(text: string, job: Job): void {
  if (text.length <= LONGEST_KEPT) keep(sha256Of(text), job);
}

function keep(sha256: string, job: Job): void {
  kept.delete(sha256);
  kept.set(sha256, job);
  const [oldest] = kept.keys();
  if (kept.size > KEPT_COUNT && oldest !== undefined) kept.delete(oldest);
}
