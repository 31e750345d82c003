import type { Job } from "../job.ts";
import { EDITED_LISTS } from "./operation.ts";

/**
 * Gives ids that nothing in the job has, one after another: the prefix with the lowest free number. Ids it has given are taken.
 * Ids of all lists count alike, so that no two things of a job ever read the same.
 */
export function idMaker(job: Job): (prefix: string) => string {
  const taken = new Set(EDITED_LISTS.flatMap((list) => job[list].map(({ id }) => id)));
  return (prefix) => {
    const stem = prefix.replace(/[^A-Za-z0-9_+-]/g, "").slice(0, LONGEST_STEM_COUNT) || "X";
    let n = 1;
    while (taken.has(`${stem}${n}`)) n++;
    taken.add(`${stem}${n}`);
    return `${stem}${n}`;
  };
}

/** Leaves room for a number within the 32 letters of an id. */
const LONGEST_STEM_COUNT = 24;
