import { type Point, pointSegmentDistance } from "../../geometry/index.ts";
import type { LimbFacts } from "./boardPose.ts";
import type { LimbShape } from "./limbShape.ts";
import type { Box } from "./lineBox.ts";

function nearestMm(at: Point, points: readonly Point[]): number {
  let leastMm = Number.POSITIVE_INFINITY;
  for (let i = 1; i < points.length; i++) {
    const line = { a: points[i - 1]!, b: points[i]! };
    leastMm = Math.min(leastMm, pointSegmentDistance(at, line));
  }
  return leastMm;
}

/** Whether a disc reaches into a box. */
const isNear = (
  { x, y, r }: { readonly x: number; readonly y: number; readonly r: number },
  { leftMm, rightMm, topMm, bottomMm }: Box,
): boolean => x > leftMm - r && x < rightMm + r && y > topMm - r && y < bottomMm + r;

/** Room for what is written beyond each end: discs that should touch neither a limb nor each other. */
export function labelCost(
  facts: readonly LimbFacts[],
  shapes: readonly LimbShape[],
  boxes: readonly Box[],
): number {
  const discs = facts.flatMap(({ isEnd, labelMm }, i) => {
    if (!isEnd) return [];
    const { points } = shapes[i]!;
    const end = points.at(-1)!;
    const before = points.at(-2)!;
    const stepMm = Math.hypot(end.x - before.x, end.y - before.y);
    const share = labelMm / stepMm;
    return [
      {
        i,
        x: end.x + (end.x - before.x) * share,
        y: end.y + (end.y - before.y) * share,
        r: labelMm,
      },
    ];
  });
  let cost = 0;
  discs.forEach((disc, k) => {
    shapes.forEach(({ points }, j) => {
      if (j === disc.i || !isNear(disc, boxes[j]!)) return;
      const freeMm = nearestMm(disc, points) - disc.r;
      if (freeMm < 0) cost += 2 - freeMm;
    });
    for (const other of discs.slice(k + 1)) {
      const freeMm = Math.hypot(other.x - disc.x, other.y - disc.y) - disc.r - other.r;
      if (freeMm < 0) cost += 2 - freeMm;
    }
  });
  return cost;
}
