import type { MergeConflict, Side } from "./mergeConflict.ts";
import { mergeOrder } from "./mergeOrder.ts";
import { type Shape, WHOLE } from "./mergeShape.ts";
import { sameValue } from "./sameValue.ts";

/** A conflict inside one item, before anybody has said which item. */
export type InnerConflict = Pick<MergeConflict, "kind" | "path" | "mine" | "theirs" | "inUse">;

export interface Three {
  readonly base: Side;
  readonly mine: Side;
  readonly theirs: Side;
}

export interface MergedSide {
  readonly side: Side;
  readonly conflicts: readonly InnerConflict[];
}

type Fields = Readonly<Record<string, unknown>>;
type Item = { readonly id: string };

export const NOTHING: Side = { isAbsent: true };
export const present = (value: unknown): Side => ({ isAbsent: false, value });
const valueAt = (side: Side): unknown => (side.isAbsent ? undefined : side.value);

export function sameSide(a: Side, b: Side): boolean {
  return a.isAbsent === b.isAbsent && sameValue(valueAt(a), valueAt(b));
}

/** One place, three ways: where one side alone changed it, that side's; where both did, as deep as the shape allows. */
export function mergeSides(three: Three, shape: Shape, path: readonly string[]): MergedSide {
  const { base, mine, theirs } = three;
  if (sameSide(mine, theirs) || sameSide(mine, base)) return { side: theirs, conflicts: [] };
  if (sameSide(theirs, base)) return { side: mine, conflicts: [] };
  switch (shape.as) {
    case "whole":
      return disputed(three, path);
    case "fields":
      return isMixable(three, shape.oneKind ?? false)
        ? mergedFields(three, (key) => shape.fields[key] ?? WHOLE, path)
        : disputed(three, path);
    case "each":
      return emptied(
        three,
        mergedFields(three, () => shape.of, path),
      );
    case "items":
      return emptied(three, mergedItems(three, shape, path));
    case "ids":
      return mergedIds(three, path);
  }
}

function disputed(
  { mine, theirs }: Three,
  path: readonly string[],
  kind: MergeConflict["kind"] = "both-changed",
): MergedSide {
  return { side: theirs, conflicts: [{ kind, path, mine, theirs, inUse: "theirs" }] };
}

/** An item of a list: what one took away and the other changed is kept, whoever did which; two things under one new id are never mixed. */
export function mergeMember(three: Three, shape: Shape, path: readonly string[]): MergedSide {
  const { base, mine, theirs } = three;
  const isEditedAndRemoved =
    !base.isAbsent &&
    mine.isAbsent !== theirs.isAbsent &&
    !sameSide(mine.isAbsent ? theirs : mine, base);
  const isTwice = base.isAbsent && !mine.isAbsent && !theirs.isAbsent && !sameSide(mine, theirs);
  if (isTwice) return disputed(three, path, "both-added");
  if (!isEditedAndRemoved) return mergeSides(three, shape, path);
  const inUse = mine.isAbsent ? "theirs" : "mine";
  return {
    side: three[inUse],
    conflicts: [{ kind: "removed-and-edited", path, mine, theirs, inUse }],
  };
}

/** Fields can be mixed while all three are there and, where it matters, are the same kind of thing. */
function isMixable({ base, mine, theirs }: Three, isOneKind: boolean): boolean {
  if (base.isAbsent || mine.isAbsent || theirs.isAbsent) return false;
  const kinds = new Set([base, mine, theirs].map((side) => (side.value as Fields).kind));
  return !isOneKind || kinds.size === 1;
}

function mergedFields(
  three: Three,
  shapeOf: (key: string) => Shape,
  path: readonly string[],
): MergedSide {
  const fieldsOf = (side: Side): Fields => (side.isAbsent ? {} : (side.value as Fields));
  const [base, mine, theirs] = [three.base, three.mine, three.theirs].map(fieldsOf);
  const keys = new Set([base!, theirs!, mine!].flatMap((fields) => Object.keys(fields)));
  const at = (fields: Fields, key: string): Side =>
    fields[key] === undefined ? NOTHING : present(fields[key]);
  const merged: [string, unknown][] = [];
  const conflicts: InnerConflict[] = [];
  for (const key of keys) {
    const inner = { base: at(base!, key), mine: at(mine!, key), theirs: at(theirs!, key) };
    const done = mergeSides(inner, shapeOf(key), [...path, key]);
    if (!done.side.isAbsent) merged.push([key, done.side.value]);
    for (const conflict of done.conflicts) conflicts.push(conflict);
  }
  return { side: present(Object.fromEntries(merged)), conflicts };
}

function mergedItems(
  three: Three,
  shape: Extract<Shape, { as: "items" }>,
  path: readonly string[],
): MergedSide {
  const itemsOf = (side: Side) => (side.isAbsent ? [] : (side.value as readonly Item[]));
  const lists = [three.base, three.mine, three.theirs].map(itemsOf);
  const [base, mine, theirs] = lists.map((list) => new Map(list.map((item) => [item.id, item])));
  const at = (items: ReadonlyMap<string, Item>, id: string): Side =>
    items.has(id) ? present(items.get(id)) : NOTHING;
  const merged = new Map<string, unknown>();
  const conflicts: InnerConflict[] = [];
  for (const id of new Set(lists.flatMap((list) => list.map((item) => item.id)))) {
    const inner = { base: at(base!, id), mine: at(mine!, id), theirs: at(theirs!, id) };
    const done = mergeMember(inner, shape.of, [...path, id]);
    if (!done.side.isAbsent) merged.set(id, done.side.value);
    for (const conflict of done.conflicts) conflicts.push(conflict);
  }
  if (!shape.keepsOrder) {
    const sorted = [...merged.keys()].sort().map((id) => merged.get(id));
    return { side: present(sorted), conflicts };
  }
  const idLists = lists.map((list) => list.map((item) => item.id));
  const ordered = inMergedOrder(idLists, new Set(merged.keys()), (id) => merged.get(id), path);
  return { side: ordered.side, conflicts: [...conflicts, ...ordered.conflicts] };
}

function mergedIds(three: Three, path: readonly string[]): MergedSide {
  const lists = [three.base, three.mine, three.theirs].map((side) =>
    side.isAbsent ? [] : (side.value as readonly string[]),
  );
  const [base, mine, theirs] = lists.map((ids) => new Set(ids));
  const isKept = (id: string): boolean =>
    base!.has(id) ? mine!.has(id) && theirs!.has(id) : mine!.has(id) || theirs!.has(id);
  const kept = new Set(lists.flat().filter(isKept));
  return inMergedOrder(lists, kept, (id) => id, path);
}

function inMergedOrder(
  lists: readonly (readonly string[])[],
  kept: ReadonlySet<string>,
  memberOf: (id: string) => unknown,
  path: readonly string[],
): MergedSide {
  const { ids, minesIds } = mergeOrder(lists[0]!, lists[1]!, lists[2]!, kept);
  const side = present(ids.map(memberOf));
  if (minesIds === null) return { side, conflicts: [] };
  const mine = present(minesIds.map(memberOf));
  return {
    side,
    conflicts: [{ kind: "both-changed", path, mine, theirs: side, inUse: "theirs" }],
  };
}

/** A list or map that somebody took away and in which nothing is left is away. */
function emptied({ mine, theirs }: Three, merged: MergedSide): MergedSide {
  if (merged.side.isAbsent || !(mine.isAbsent || theirs.isAbsent)) return merged;
  const isEmpty = Object.keys(merged.side.value as object).length === 0;
  return isEmpty ? { ...merged, side: NOTHING } : merged;
}
