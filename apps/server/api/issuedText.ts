import { writeJob } from "@copperwright/engine";
import type { RevisionsTable } from "../storage/index.ts";
import { jobOfRow } from "./storedJob.ts";

/** Longest run of revisions a job's own file can name. */
const MOST_REVISIONS = 1_000_000;

/**
 * The file a job leaves the bench as: it bears the number and the day of the revision it is, so that papers made from it by the command are those
 * made on the bench. A text this program cannot read leaves as it is.
 */
export function issuedText(row: RevisionsTable): string {
  const read = jobOfRow(row);
  if (!read.ok || row.revision > MOST_REVISIONS) return row.text;
  return writeJob({ ...read.job, revision: row.revision, date: issueDate(row.saved_at) });
}

/** Day of a save; of the whole world's day, so that bench, phone and file name the same one. */
const issueDate = (savedAt: string): string => savedAt.slice(0, 10);
