import type { EditedList } from "../edit/operation.ts";
import type { Before } from "../edit/setAt.ts";

/** What one side has at a place: a value, or nothing. */
export type Side = Before;

/**
 * A place two people changed in ways that cannot both stand. Nothing is lost: what each of them had is in the conflict, and one of the
 * two is in use until somebody settles it.
 *
 * - `both-changed`: the same field, set differently; `both-added`: the same id given to two different things.
 * - `removed-and-edited`: one took it away, the other changed it; the changed one is kept.
 * - `not-together`: each change by itself is right, but the job with both could not be read; mine was left out.
 */
export interface MergeConflict {
  readonly kind: "both-changed" | "both-added" | "removed-and-edited" | "not-together";
  readonly list: EditedList | "job";
  /** The item's id; absent for the job itself. */
  readonly id?: string;
  /** From the item inwards. Members of inner lists are named by id, not by index. Empty: the item as a whole. */
  readonly path: readonly string[];
  readonly mine: Side;
  readonly theirs: Side;
  readonly inUse: "mine" | "theirs";
}
