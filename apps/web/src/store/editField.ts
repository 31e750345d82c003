import type { EditedList } from "@copperwright/engine";
import { edit } from "./editing.ts";

/**
 * Sets one field of a thing of the job. Nothing, or an empty text, takes the field away.
 *
 * @param what  the act in words, for undo
 * @param path  from the thing to its field
 */
export function editField(
  what: string,
  { list, id }: { readonly list: EditedList; readonly id: string },
  path: readonly (string | number)[],
  value: unknown,
): void {
  const isGone = value === undefined || value === "";
  void edit(what, { op: "set", list, id, path: [...path], ...(isGone ? {} : { value }) });
}
