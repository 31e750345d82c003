import type { Operation } from "../edit/operation.ts";
import type { Job } from "../job.ts";
import type { MergeConflict, Side } from "./mergeConflict.ts";
import { NOTHING, present } from "./mergeSides.ts";

type Holder = Readonly<Record<string, unknown>>;
type Item = { readonly id: string };

/**
 * The operation that puts one side of a conflict in use, on a job that may have gone on since. Whether the job can then still be read is
 * for `applyOperation` to say.
 *
 * @returns null where what the conflict was about is no longer in the job
 */
export function settleOperation(
  job: Job,
  conflict: MergeConflict,
  take: "mine" | "theirs",
): Operation | null {
  const { list, id, path } = conflict;
  const side = conflict[take];
  const name = `Settle ${id ?? path.join(" ")}`;
  const [field, ...rest] = path;
  if (list === "job" || id === undefined) {
    const set = fieldSide(job, field!, rest, side);
    if (set === null) return null;
    return { op: "set", list: "job", path: [field!], ...valueField(set) };
  }
  const item = job[list].find((other) => other.id === id);
  if (field === undefined) {
    const operations: Operation[] = item === undefined ? [] : [{ op: "remove", list, id }];
    if (!side.isAbsent) operations.push({ op: "add", list, item: side.value });
    return { op: "batch", name, operations };
  }
  const set = item === undefined ? null : fieldSide(item, field, rest, side);
  if (set === null) return null;
  return { op: "set", list, id, path: [field], ...valueField(set) };
}

const valueField = (side: Side) => (side.isAbsent ? {} : { value: side.value });

function fieldSide(
  holder: object,
  field: string,
  rest: readonly string[],
  side: Side,
): Side | null {
  if (rest.length === 0) return side;
  const value: unknown = Reflect.get(holder, field);
  // A list or map the other side took away as a whole comes back with what is put into it.
  const from = value === undefined && !side.isAbsent ? emptyFor(side) : value;
  const replaced = replacedAt(from, rest, side);
  return replaced === undefined ? null : present(replaced);
}

/** Lists hold things that carry their id; everything else that can be taken away whole is a map. */
function emptyFor(side: Side): unknown {
  const isThing =
    !side.isAbsent && typeof side.value === "object" && side.value !== null && "id" in side.value;
  return isThing ? [] : {};
}

/** A copy with one place replaced or taken away; members of lists go by id. Undefined where the way leads nowhere. */
function replacedAt(holder: unknown, path: readonly string[], side: Side): unknown {
  const [step, ...rest] = path;
  if (step === undefined || typeof holder !== "object" || holder === null) return undefined;
  const inner = (old: Side): Side | null => {
    if (rest.length === 0) return side;
    if (old.isAbsent) return null;
    const replaced = replacedAt(old.value, rest, side);
    return replaced === undefined ? null : present(replaced);
  };
  if (Array.isArray(holder)) {
    const items = holder as readonly Item[];
    const index = items.findIndex((item) => item.id === step);
    const now = inner(index < 0 ? NOTHING : present(items[index]));
    if (now === null) return undefined;
    if (index < 0) return now.isAbsent ? items : [...items, now.value];
    return items.flatMap((item, i) => (i !== index ? [item] : now.isAbsent ? [] : [now.value]));
  }
  const { [step]: old, ...others } = holder as Holder;
  const now = inner(old === undefined ? NOTHING : present(old));
  if (now === null) return undefined;
  return now.isAbsent ? others : { ...others, [step]: now.value };
}
