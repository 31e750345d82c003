import { checkJob, type JobChecked } from "../check/checkJob.ts";
import type { Problem } from "../check/problem.ts";
import { EDITED_LISTS } from "../edit/operation.ts";
import type { Job } from "../job.ts";
import { canonicalJob } from "../write/canonicalJob.ts";
import type { MergeConflict } from "./mergeConflict.ts";
import { type MergedPlace, mergePlaces } from "./mergePlaces.ts";
import { sameSide } from "./mergeSides.ts";

export interface JobsMerged {
  readonly job: Job;
  /** In the order of the document: fields of the job first, then list by list, items by id. */
  readonly conflicts: readonly MergeConflict[];
}

/**
 * Two people's versions of a job made one, from the version both began with. What only one of them changed is taken; what both changed
 * differently is a conflict that holds both, theirs staying in use; what one took away and the other changed is kept. The outcome can
 * always be read: where the changes of both together could not, mine are left out item by item, each as a conflict, until they can.
 *
 * @param theirs  a job that can be read; with none of mine in it the merge is this job
 */
export function mergeJobs(base: Job, mine: Job, theirs: Job): JobsMerged {
  const places = mergePlaces(base, mine, theirs);
  const { job, left } = readable(places);
  const conflicts = places.flatMap((place): readonly MergeConflict[] => {
    const at = place.list === "job" ? { list: place.list } : { list: place.list, id: place.id };
    if (!left.has(place)) return place.conflicts.map((conflict) => ({ ...at, ...conflict }));
    const path = place.list === "job" ? [place.id] : [];
    const sides = { mine: place.mine, theirs: place.theirs };
    return [{ ...at, kind: "not-together", path, ...sides, inUse: "theirs" }];
  });
  return { job, conflicts };
}

interface Readable {
  readonly job: Job;
  /** Places where mine was left out. */
  readonly left: ReadonlySet<MergedPlace>;
}

/** Leaves out what the problems point at, then what they speak of; where they point at nothing of mine, by trying. */
function readable(places: readonly MergedPlace[]): Readable {
  const left = new Set<MergedPlace>();
  for (;;) {
    const { checked, draft } = checkedWithout(places, left);
    if (checked.ok) return { job: canonicalJob(checked.job), left };
    const mine = places.filter((place) => isMine(place) && !left.has(place));
    if (mine.length === 0) throw new Error("theirs is no job that can be read");
    const blamed = blamedPlaces(checked.problems, draft, mine);
    if (blamed.length === 0) return readableByTrying(places, left, mine);
    for (const place of blamed) left.add(place);
  }
}

/** Something of mine is in it: leaving it out would change the outcome. */
const isMine = ({ merged, theirs }: MergedPlace): boolean => !sameSide(merged, theirs);

type Draft = Readonly<Record<string, unknown>>;

function checkedWithout(
  places: readonly MergedPlace[],
  left: ReadonlySet<MergedPlace>,
): { readonly checked: JobChecked; readonly draft: Draft } {
  const draft: Record<string, unknown> = {};
  const lists = new Map(EDITED_LISTS.map((list) => [list as string, [] as unknown[]]));
  for (const place of places) {
    const side = left.has(place) ? place.theirs : place.merged;
    if (side.isAbsent) continue;
    if (place.list === "job") draft[place.id] = side.value;
    else lists.get(place.list)!.push(side.value);
  }
  for (const [list, items] of lists) draft[list] = items;
  return { checked: checkJob(draft), draft };
}

/** Places of mine that the problems stand in; where there are none, those whose id the problems name. */
function blamedPlaces(
  problems: readonly Problem[],
  draft: Draft,
  mine: readonly MergedPlace[],
): readonly MergedPlace[] {
  const standing = new Set<string>();
  const named = new Set<string>();
  for (const { path } of problems) {
    const [list, index] = path;
    const items = draft[String(list)];
    const item: unknown = Array.isArray(items) ? items[Number(index)] : undefined;
    const isItem = typeof item === "object" && item !== null && "id" in item;
    standing.add(isItem ? `${String(list)}/${String(item.id)}` : `job/${String(list)}`);
    for (const word of wordsAt(draft, path)) named.add(word);
  }
  const there = mine.filter(({ list, id }) => standing.has(`${list}/${id}`));
  return there.length > 0 ? there : mine.filter(({ list, id }) => list !== "job" && named.has(id));
}

/** Ids on the way to a place and in what stands there: PART.PIN and PART:A-B name their part. */
function wordsAt(draft: Draft, path: readonly (string | number)[]): readonly string[] {
  let value: unknown = draft;
  for (const step of path) {
    value = typeof value === "object" && value !== null ? Reflect.get(value, step) : undefined;
  }
  const steps = path.filter((step) => typeof step === "string");
  return typeof value === "string" ? [...steps, value, ...value.split(/[.:]/)] : steps;
}

/** Takes in as much of mine as can be read together, halving what cannot, until a round takes in nothing more. */
function readableByTrying(
  places: readonly MergedPlace[],
  leftAlready: ReadonlySet<MergedPlace>,
  mine: readonly MergedPlace[],
): Readable {
  const left = new Set([...leftAlready, ...mine]);
  const start = checkedWithout(places, left).checked;
  if (!start.ok) throw new Error("theirs is no job that can be read");
  let { job } = start;
  const takeIn = (some: readonly MergedPlace[]): void => {
    const without = new Set([...left].filter((place) => !some.includes(place)));
    const { checked } = checkedWithout(places, without);
    if (checked.ok) {
      for (const place of some) left.delete(place);
      job = checked.job;
    } else if (some.length > 1) {
      const middle = Math.ceil(some.length / 2);
      takeIn(some.slice(0, middle));
      takeIn(some.slice(middle));
    }
  };
  for (let count = left.size + 1; left.size < count && left.size > 0; ) {
    count = left.size;
    takeIn(mine.filter((place) => left.has(place)));
  }
  return { job: canonicalJob(job), left };
}
