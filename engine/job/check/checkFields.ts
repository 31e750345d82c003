import * as z from "zod";
import type { Job } from "../job.ts";
import { jobSchema } from "../jobSchema.ts";
import { LONGEST_LIST_COUNT } from "../read/jsonTree.ts";
import { fieldProblems } from "./fieldProblems.ts";
import { placeInWords } from "./placeInWords.ts";
import { type Problem, problem } from "./problem.ts";

/** Values one thing may hold, counting all below it. A fuse has twenty, a large control unit a few hundred. */
const MOST_IN_ITEM_COUNT = 10_000;

/** Once this many problems are known, looking for more would only cost time. */
const ENOUGH_PROBLEMS_COUNT = 1000;

export type FieldsChecked =
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly problems: readonly Problem[] };

type Fields = Readonly<Record<string, unknown>>;

/**
 * Every field of a document against the schema. Things are looked at one by one, so that a file of a million faults costs no more
 * than one of a thousand.
 *
 * @param checked  a job whose things were looked at before: those of them the document still holds are not looked at again.
 */
export function checkFields(value: unknown, checked: Job | null = null): FieldsChecked {
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    return parsed(value, value);
  }
  const document = value as Fields;
  const lists = Object.entries(jobSchema.shape).filter(
    ([key]) => Array.isArray(document[key]) && document[key].length <= LONGEST_LIST_COUNT,
  );
  const frame = { ...document, ...Object.fromEntries(lists.map(([key]) => [key, []])) };
  const problems: Problem[] = [];
  const items: Record<string, unknown> = {};
  for (const [key, schema] of lists) {
    if (!(schema instanceof z.ZodArray)) continue;
    const known = new Set<unknown>(listOf(checked, key));
    items[key] = checkedItems({ key, schema: schema.element, document, known }, problems);
  }
  const rest = valuesIn(frame) > LONGEST_LIST_COUNT ? tooLarge(document) : parsed(frame, value);
  if (!rest.ok) return { ok: false, problems: [...rest.problems, ...problems] };
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, job: { ...rest.job, ...items } };
}

function parsed(value: unknown, root: unknown): FieldsChecked {
  const read = jobSchema.safeParse(value);
  return read.success
    ? { ok: true, job: read.data }
    : { ok: false, problems: fieldProblems(jobSchema, root, read.error.issues) };
}

function listOf(job: Job | null, key: string): readonly unknown[] {
  const list: unknown = job === null ? [] : Reflect.get(job, key);
  return Array.isArray(list) ? list : [];
}

interface ListToCheck {
  readonly key: string;
  readonly schema: z.core.$ZodType;
  readonly document: Fields;
  /** Things that were looked at before. */
  readonly known: ReadonlySet<unknown>;
}

function checkedItems(list: ListToCheck, problems: Problem[]): readonly unknown[] {
  const { key, schema, document, known } = list;
  const items: readonly unknown[] = document[key] as readonly unknown[];
  const read: unknown[] = [];
  for (const [i, item] of items.entries()) {
    if (problems.length > ENOUGH_PROBLEMS_COUNT) break;
    if (known.has(item)) {
      read.push(item);
      continue;
    }
    if (valuesIn(item) > MOST_IN_ITEM_COUNT) {
      problems.push(tooMany(document, [key, i], MOST_IN_ITEM_COUNT));
      continue;
    }
    const checked = z.safeParse(schema, item);
    if (checked.success) {
      read.push(checked.data);
      continue;
    }
    const issues = checked.error.issues.map((issue) => ({
      ...issue,
      path: [key, i, ...issue.path],
    }));
    problems.push(...fieldProblems(jobSchema, document, issues).slice(0, ENOUGH_PROBLEMS_COUNT));
  }
  return read;
}

function tooLarge(document: Fields): FieldsChecked {
  return { ok: false, problems: [tooMany(document, [], LONGEST_LIST_COUNT)] };
}

function tooMany(root: Fields, path: readonly (string | number)[], limitCount: number): Problem {
  const words = () => ({ place: placeInWords(root, path), limitCount });
  return problem("item-too-large", path, `more than ${limitCount} values`, words);
}

/** How many values there are at and below one, counted no further than matters. */
function valuesIn(value: unknown): number {
  let valueCount = 0;
  const waiting: unknown[] = [value];
  while (waiting.length > 0 && valueCount <= LONGEST_LIST_COUNT) {
    const next = waiting.pop();
    valueCount++;
    if (typeof next !== "object" || next === null) continue;
    for (const member of Object.values(next)) waiting.push(member);
  }
  return valueCount;
}
