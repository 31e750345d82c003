import type { Palette } from "./palette.ts";
import type { GroupMark, Mark, PrimitiveMark, WireMark } from "./scene.ts";
import { symbolMarks } from "./symbolMarks.ts";
import { wireMarks } from "./wireMarks.ts";

/** A wire or a symbol as a group of plain marks; groups and plain marks as they are. */
export function expandMark(mark: Mark, palette: Palette): PrimitiveMark | GroupMark {
  switch (mark.kind) {
    case "wire":
      return { kind: "group", ...wireSubject(mark), marks: wireMarks(mark, palette) };
    case "symbol":
      return { kind: "group", id: mark.id, name: mark.symbol, marks: symbolMarks(mark) };
    default:
      return mark;
  }
}

/** Whose marks those of a wire are. */
export const wireSubject = ({ id }: WireMark): Pick<GroupMark, "id" | "of"> =>
  id === undefined ? {} : { id, of: "wire" };

/** Every plain mark in drawing order, groups opened. */
export function plainMarks(marks: readonly Mark[], palette: Palette): PrimitiveMark[] {
  return marks.flatMap((mark) => {
    const expanded = expandMark(mark, palette);
    return expanded.kind === "group" ? plainMarks(expanded.marks, palette) : [expanded];
  });
}
