import type { Point } from "../../geometry/index.ts";

/** What a line covers. */
export interface Box {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly topMm: number;
  readonly bottomMm: number;
}

export function boxOf(points: readonly Point[]): Box {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  return { leftMm: left, rightMm: right, topMm: top, bottomMm: bottom };
}

export const unionOf = (boxes: readonly Box[]): Box => ({
  leftMm: Math.min(...boxes.map(({ leftMm }) => leftMm)),
  rightMm: Math.max(...boxes.map(({ rightMm }) => rightMm)),
  topMm: Math.min(...boxes.map(({ topMm }) => topMm)),
  bottomMm: Math.max(...boxes.map(({ bottomMm }) => bottomMm)),
});

/** How far apart two boxes are along the axis that parts them more; below nil where they overlap. */
export const boxGapMm = (a: Box, b: Box): number =>
  Math.max(a.leftMm - b.rightMm, b.leftMm - a.rightMm, a.topMm - b.bottomMm, b.topMm - a.bottomMm);
