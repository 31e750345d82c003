import type { Mark, PointMm } from "../../drawing/index.ts";

/** One drawn piece of a wire. A wire may be drawn in several. */
export interface WirePlace {
  readonly id: string;
  readonly points: readonly PointMm[];
}

/** Every piece of wire on a drawing with the id of its wire, in drawing order. */
export function wirePlaces(marks: readonly Mark[], within: string | null = null): WirePlace[] {
  return marks.flatMap((mark): WirePlace[] => {
    if (mark.kind === "group") {
      return wirePlaces(mark.marks, mark.of === "wire" ? (mark.id ?? within) : within);
    }
    const id = mark.kind === "wire" ? (mark.id ?? within) : null;
    return mark.kind === "wire" && id !== null ? [{ id, points: mark.points }] : [];
  });
}
