import type { Operation } from "@copperwright/engine";

/** What the act is called in the undo list: short, with the thing and its new value. */
export function actOf(operation: Operation, words: string): string {
  if (operation.op !== "set") return words.length > 60 ? "mend what was found" : words;
  const { id = "job", path, value } = operation;
  const make = typeof value === "object" && value !== null && "make" in value ? value.make : value;
  return `${id} ${String(path.at(-1))} to ${String(make)}`;
}
