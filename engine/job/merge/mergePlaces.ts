import { EDITED_LISTS, type EditedList } from "../edit/operation.ts";
import type { Job } from "../job.ts";
import type { Side } from "./mergeConflict.ts";
import { ITEM_SHAPES, JOB_SHAPES, WHOLE } from "./mergeShape.ts";
import {
  type InnerConflict,
  mergeMember,
  mergeSides,
  NOTHING,
  present,
  type Three,
} from "./mergeSides.ts";

/** One item of a list, or one field of the job itself: the smallest thing that can be left out of a merge. */
export interface MergedPlace extends Three {
  readonly list: EditedList | "job";
  /** Id of the item; of the job itself, name of the field. */
  readonly id: string;
  readonly merged: Side;
  readonly conflicts: readonly InnerConflict[];
}

/** Every place of three versions of a job, merged by itself. */
export function mergePlaces(base: Job, mine: Job, theirs: Job): readonly MergedPlace[] {
  const three = [base, mine, theirs] as const;
  const lists = EDITED_LISTS.flatMap((list) => placesOfList(three, list));
  return [...placesOfJob(three), ...lists];
}

function placesOfJob(three: readonly [Job, Job, Job]): readonly MergedPlace[] {
  const isList = (key: string): boolean => EDITED_LISTS.some((list) => list === key);
  const keys = new Set(three.flatMap((job) => Object.keys(job)).filter((key) => !isList(key)));
  return [...keys].map((id): MergedPlace => {
    const [base, mine, theirs] = three.map((job): Side => {
      const value: unknown = Reflect.get(job, id);
      return value === undefined ? NOTHING : present(value);
    }) as [Side, Side, Side];
    const sides = { base, mine, theirs };
    const { side, conflicts } = mergeSides(sides, JOB_SHAPES[id] ?? WHOLE, [id]);
    return { list: "job", id, ...sides, merged: side, conflicts };
  });
}

function placesOfList(three: readonly [Job, Job, Job], list: EditedList): readonly MergedPlace[] {
  const maps = three.map((job) => new Map(job[list].map((item) => [item.id, item as unknown])));
  const ids = new Set(three.flatMap((job) => job[list].map((item) => item.id)));
  return [...ids].sort().map((id): MergedPlace => {
    const [base, mine, theirs] = maps.map((items) =>
      items.has(id) ? present(items.get(id)) : NOTHING,
    ) as [Side, Side, Side];
    const sides = { base, mine, theirs };
    const { side, conflicts } = mergeMember(sides, ITEM_SHAPES[list], []);
    return { list, id, ...sides, merged: side, conflicts };
  });
}
