import { nearestWord, type Refusal, refusal, valueInWords } from "../../messages/index.ts";
import { checkJob } from "../check/checkJob.ts";
import { listRefusals } from "../check/listRefusals.ts";
import type { Job } from "../job.ts";
import { jsonPointer } from "../read/jsonPointer.ts";
import { canonicalJob } from "../write/canonicalJob.ts";
import { EDITED_LISTS, type EditedList, type Operation, type SetOperation } from "./operation.ts";
import { readOperation } from "./readOperation.ts";
import { type Before, setAt } from "./setAt.ts";

export type OperationApplied =
  | {
      readonly ok: true;
      readonly job: Job;
      /** Takes the new job back to the old one, byte for byte in canonical text. */
      readonly inverse: Operation;
      /** Ids of the items touched, sorted; `job` for the document itself. */
      readonly changed: readonly string[];
    }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

type Draft = Readonly<Record<string, unknown>>;
type Item = { readonly id: string };
type Step =
  | {
      readonly ok: true;
      readonly draft: Draft;
      readonly inverse: Operation;
      readonly changed: readonly string[];
    }
  | { readonly ok: false; readonly refusal: Refusal };

/**
 * A job with one operation done to it. Never throws: an operation of bad form, one that names what is not there, and one that would
 * leave a job that could not be read again are refused, with pointers into the operation or into the job it would have made.
 */
export function applyOperation(job: Job, operation: Operation): OperationApplied {
  const read = readOperation(operation);
  if (!read.ok) return read;
  const step = applied(job, read.operation, "");
  if (!step.ok) return { ok: false, refusals: [step.refusal] };
  const checked = checkJob(step.draft, job);
  if (!checked.ok) return { ok: false, refusals: listRefusals(checked.problems, () => null) };
  const changed = [...new Set(step.changed)].sort();
  return { ok: true, job: canonicalJob(checked.job), inverse: step.inverse, changed };
}

function applied(draft: Draft, operation: Operation, pointer: string): Step {
  switch (operation.op) {
    case "add":
      return added(draft, operation.list, operation.item, pointer);
    case "remove":
      return removed(draft, operation.list, operation.id, pointer);
    case "set":
      return fieldSet(draft, operation, pointer);
    case "batch": {
      let now = draft;
      const inverses: Operation[] = [];
      const changed: string[] = [];
      for (const [i, inner] of operation.operations.entries()) {
        const step = applied(now, inner, `${pointer}/operations/${i}`);
        if (!step.ok) return step;
        now = step.draft;
        inverses.push(step.inverse);
        for (const id of step.changed) changed.push(id);
      }
      const inverse: Operation = { ...operation, operations: inverses.reverse() };
      return { ok: true, draft: now, inverse, changed };
    }
  }
}

const itemsOf = (draft: Draft, list: EditedList): readonly Item[] => draft[list] as readonly Item[];

function added(draft: Draft, list: EditedList, item: unknown, pointer: string): Step {
  const id: unknown = typeof item === "object" && item !== null ? Reflect.get(item, "id") : null;
  const place = { pointer: `${pointer}/item`, line: null, found: valueInWords(id) };
  if (typeof id !== "string") {
    const fault = "the item to add has no id";
    return { ok: false, refusal: refusal("edit-unreadable", place, { fault }) };
  }
  const items = itemsOf(draft, list);
  if (items.some((other) => other.id === id)) {
    return { ok: false, refusal: refusal("edit-id-taken", place, { list, id }) };
  }
  const inverse: Operation = { op: "remove", list, id };
  return { ok: true, draft: { ...draft, [list]: [...items, item] }, inverse, changed: [id] };
}

function removed(draft: Draft, list: EditedList, id: string, pointer: string): Step {
  const items = itemsOf(draft, list);
  const item = items.find((other) => other.id === id);
  if (item === undefined) return noSuchItem(items, list, id, pointer);
  const inverse: Operation = { op: "add", list, item };
  const rest = items.filter((other) => other !== item);
  return { ok: true, draft: { ...draft, [list]: rest }, inverse, changed: [id] };
}

function fieldSet(draft: Draft, operation: SetOperation, pointer: string): Step {
  const { list, id, path } = operation;
  const after: Before =
    operation.value === undefined
      ? { isAbsent: true }
      : { isAbsent: false, value: operation.value };
  const place = { pointer: `${pointer}/path`, line: null, found: jsonPointer(path) };
  const noPlace = (): Step => ({
    ok: false,
    refusal: refusal("edit-no-such-place", place, { path: jsonPointer(path) }),
  });
  const { value: _, ...rest } = operation;
  const inverse = (before: Before): Operation =>
    before.isAbsent ? rest : { ...rest, value: before.value };

  if (list === "job" || id === undefined) {
    if (EDITED_LISTS.some((edited) => edited === path[0])) return noPlace();
    const set = setAt(draft, path, after);
    if (!set.ok) return noPlace();
    return { ok: true, draft: set.value as Draft, inverse: inverse(set.before), changed: ["job"] };
  }
  const items = itemsOf(draft, list);
  const item = items.find((other) => other.id === id);
  if (item === undefined) return noSuchItem(items, list, id, pointer);
  if (path[0] === "id") return { ok: false, refusal: refusal("edit-of-id", place, {}) };
  const set = setAt(item, path, after);
  if (!set.ok) return noPlace();
  const changedItems = items.map((other) => (other === item ? (set.value as Item) : other));
  const now = { ...draft, [list]: changedItems };
  return { ok: true, draft: now, inverse: inverse(set.before), changed: [id] };
}

function noSuchItem(items: readonly Item[], list: EditedList, id: string, pointer: string): Step {
  const known = items.map((item) => item.id);
  const nearest = nearestWord(id, known);
  const suggestion = nearest === null ? "Name an item of the list." : `Did you mean "${nearest}"?`;
  const place = { pointer: `${pointer}/id`, line: null, found: id };
  return { ok: false, refusal: refusal("edit-no-such-item", place, { list, id, suggestion }) };
}
