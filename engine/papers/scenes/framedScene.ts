import { type Mark, marksBox, moveMarks, type Page, type PointMm } from "../../drawing/index.ts";

/** A drawing by itself: no frame, no title, as large as what is on it. The same as a page of paper, so that every writer of pages takes it. */
export type Scene = Page;

export const SCENE_MARGIN_MM = 6;

/** Marks moved so that they begin a margin from the corner, and by how much that was. */
export function framedScene(
  title: string,
  marks: readonly Mark[],
): { readonly scene: Scene; readonly shiftMm: PointMm } {
  const box = marksBox(marks) ?? { xMm: 0, yMm: 0, widthMm: 0, heightMm: 0 };
  const shiftMm = { xMm: SCENE_MARGIN_MM - box.xMm, yMm: SCENE_MARGIN_MM - box.yMm };
  const scene: Scene = {
    widthMm: box.widthMm + 2 * SCENE_MARGIN_MM,
    heightMm: box.heightMm + 2 * SCENE_MARGIN_MM,
    title,
    bookmark: [],
    marks: moveMarks(marks, shiftMm.xMm, shiftMm.yMm),
  };
  return { scene, shiftMm };
}
