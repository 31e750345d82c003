import type { JsonPath } from "./jsonPointer.ts";

/** Line of each member of one container, and of the container itself. */
export interface ContainerLines {
  readonly line: number;
  readonly items: Map<string | number, number>;
}

export type LinesOf = WeakMap<object, ContainerLines>;

/**
 * Line of the value at a path; where it is not there (a missing field), of the container that should hold it.
 * Null when the value never stood in a text.
 */
export function lineAt(root: unknown, lines: LinesOf, path: JsonPath): number | null {
  let value: unknown = root;
  let line: number | null = null;
  for (const step of path) {
    if (typeof value !== "object" || value === null) return line;
    const container = lines.get(value);
    if (container === undefined) return null;
    line = container.items.get(step) ?? container.line;
    value = Object.hasOwn(value, step) ? (value as Record<string | number, unknown>)[step] : null;
  }
  if (line === null && typeof value === "object" && value !== null) {
    return lines.get(value)?.line ?? null;
  }
  return line;
}
