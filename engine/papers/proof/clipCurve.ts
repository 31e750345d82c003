import type { AreaMm, PointMm } from "../../drawing/index.ts";
import { point } from "../../drawing/index.ts";

/** The part of a curve that goes one way across, cut at the top and the foot of an area; straight between its points. */
export function clipCurve(points: readonly PointMm[], inner: AreaMm): readonly PointMm[] {
  const [top, foot] = [inner.yMm, inner.yMm + inner.heightMm];
  const isIn = ({ yMm }: PointMm): boolean => yMm >= top - 1e-9 && yMm <= foot + 1e-9;
  const kept: PointMm[] = [];
  points.forEach((here, k) => {
    const before = points[k - 1];
    if (before !== undefined) {
      for (const yMm of before.yMm < here.yMm ? [top, foot] : [foot, top]) {
        const share = (yMm - before.yMm) / (here.yMm - before.yMm);
        if (share > 0 && share < 1)
          kept.push(point(before.xMm + share * (here.xMm - before.xMm), yMm));
      }
    }
    if (isIn(here)) kept.push(here);
  });
  return kept;
}
