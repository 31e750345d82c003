import { sameValue } from "./sameValue.ts";

export interface MergedOrder {
  readonly ids: readonly string[];
  /** The order as mine has it, when the two orders cannot both stand; null where they agree. */
  readonly minesIds: readonly string[] | null;
}

/**
 * The order of a merged list. Where one side alone changed the order, it is that side's. Where both did, what stood before keeps its order
 * and what was added follows, sorted, so that it does not matter who merges with whom; two different orders of what stood before are a conflict.
 *
 * @param kept  ids that are in the merged list
 */
export function mergeOrder(
  base: readonly string[],
  mine: readonly string[],
  theirs: readonly string[],
  kept: ReadonlySet<string>,
): MergedOrder {
  const isKept = (id: string): boolean => kept.has(id);
  const isWhole = (ids: readonly string[]): boolean => ids.filter(isKept).length === kept.size;
  if (isWhole(theirs) && (sameValue(mine, base) || sameValue(mine, theirs))) {
    return { ids: theirs.filter(isKept), minesIds: null };
  }
  if (isWhole(mine) && sameValue(theirs, base)) return { ids: mine.filter(isKept), minesIds: null };

  const known = new Set(base);
  const stood = (ids: readonly string[]) => ids.filter((id) => isKept(id) && known.has(id));
  const added = [...kept].filter((id) => !known.has(id)).sort(byLengthThenText);
  const whole = (ids: readonly string[]): readonly string[] => {
    const missing = stood(base).filter((id) => !ids.includes(id));
    return [...stood(ids), ...missing, ...added];
  };
  const [was, ours, others] = [whole(base), whole(mine), whole(theirs)];
  const isSettled = sameValue(ours, was) || sameValue(ours, others);
  if (isSettled) return { ids: others, minesIds: null };
  return sameValue(others, was) ? { ids: ours, minesIds: null } : { ids: others, minesIds: ours };
}

/** 2 before 10. */
function byLengthThenText(a: string, b: string): number {
  return a.length - b.length || (a < b ? -1 : a > b ? 1 : 0);
}
