import type { Job } from "../job.ts";

/**
 * Lists whose order carries meaning and stays as it is: pins in the part's own order, positions as the switch is turned.
 * Lists of bare ids (ways, cavities, via) and of pairs (joins) keep theirs too; every other list of things with ids is sorted by id.
 */
const KEPT_ORDER: ReadonlySet<string> = new Set(["pins", "positions"]);

/**
 * The job with everything that has no order of its own in one fixed order, so that two files that differ only in the order
 * of their lists are the same job: same results, same text, same fingerprint.
 */
export function canonicalJob(job: Job): Job {
  return ordered(job, "") as Job;
}

function ordered(value: unknown, key: string): unknown {
  if (Array.isArray(value)) {
    const items: unknown[] = value.map((item) => ordered(item, ""));
    return KEPT_ORDER.has(key) || !items.every(hasId) ? items : [...items].sort(byId);
  }
  if (typeof value !== "object" || value === null) return value;
  const fields = Object.entries(value).filter(([, field]) => field !== undefined);
  return Object.fromEntries(fields.map(([name, field]) => [name, ordered(field, name)]));
}

const hasId = (item: unknown): item is { readonly id: string } =>
  typeof item === "object" && item !== null && "id" in item;

/** Ids are ASCII, so comparing UTF-16 units is comparing code points. */
const byId = (a: { readonly id: string }, b: { readonly id: string }): number =>
  a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
