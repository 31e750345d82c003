import type { Job } from "../job.ts";
import { checkFields } from "./checkFields.ts";
import { duplicateIds } from "./duplicateIds.ts";
import { duplicateLoads } from "./duplicateLoads.ts";
import { emptyThings } from "./emptyThings.ts";
import { jobIndex } from "./jobIndex.ts";
import { layoutNames } from "./layoutNames.ts";
import { namedGenerators } from "./namedGenerators.ts";
import { namedLoads } from "./namedLoads.ts";
import { namedPlaces } from "./namedPlaces.ts";
import { partPins } from "./partPins.ts";
import { pinEnds } from "./pinEnds.ts";
import type { Problem } from "./problem.ts";
import { switchPositions } from "./switchPositions.ts";
import { tableRows } from "./tableRows.ts";

export const REFERENCE_CHECKS = [
  duplicateIds,
  pinEnds,
  namedPlaces,
  partPins,
  duplicateLoads,
  switchPositions,
  namedLoads,
  emptyThings,
  namedGenerators,
  layoutNames,
  tableRows,
] as const;

export type JobChecked =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * A parsed value as a job: first every field by itself, all of them; then, once every field can be trusted, how they refer to one another.
 *
 * @param before  the job the value was made of by an edit: fields of things it shares with it are trusted already.
 */
export function checkJob(value: unknown, before: Job | null = null): JobChecked {
  const checked = checkFields(value, before);
  if (!checked.ok) return checked;
  const index = jobIndex(checked.job);
  const problems = REFERENCE_CHECKS.flatMap((check) => check(index));
  return problems.length > 0 ? { ok: false, problems } : checked;
}
