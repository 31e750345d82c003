import { textAreaMm } from "./measureTextMm.ts";
import type { AreaMm, Mark, PointMm } from "./scene.ts";

/** Marks that show something inside an area; groups are kept with what is left of them. What reaches out of it is not cut. */
export function marksWithin(marks: readonly Mark[], area: AreaMm): Mark[] {
  return marks.flatMap((mark): Mark[] => {
    if (mark.kind === "group") {
      const inside = marksWithin(mark.marks, area);
      return inside.length === 0 ? [] : [{ ...mark, marks: inside }];
    }
    return touches(mark, area) ? [mark] : [];
  });
}

/** Whether any mark shows something inside an area. */
export const isAnyWithin = (marks: readonly Mark[], area: AreaMm): boolean =>
  marks.some((mark) =>
    mark.kind === "group" ? isAnyWithin(mark.marks, area) : touches(mark, area),
  );

function touches(mark: Exclude<Mark, { kind: "group" }>, area: AreaMm): boolean {
  switch (mark.kind) {
    case "line":
      return lineTouches([mark.from, mark.to], area, mark.stroke.widthMm);
    case "polyline": {
      const ring = mark.closed ? [...mark.points, mark.points[0]!] : mark.points;
      return lineTouches(ring, area, mark.stroke?.widthMm ?? 0);
    }
    case "wire":
      return lineTouches(mark.points, area, 3);
    case "path": {
      const corners = mark.steps.flatMap((step) => {
        if (step.pen === "close") return [];
        return step.pen === "curve" ? [step.control1, step.control2, step.to] : [step.to];
      });
      return overlaps(boxOf(corners), area);
    }
    case "rect":
      return overlaps(mark.area, area);
    case "circle": {
      const { centre, radiusMm } = mark;
      const corner = { xMm: centre.xMm - radiusMm, yMm: centre.yMm - radiusMm };
      return overlaps({ ...corner, widthMm: 2 * radiusMm, heightMm: 2 * radiusMm }, area);
    }
    case "text":
      return overlaps(textAreaMm(mark), area);
    case "symbol": {
      const corner = { xMm: mark.at.xMm - 10, yMm: mark.at.yMm - 10 };
      return overlaps({ ...corner, widthMm: 20, heightMm: 20 }, area);
    }
  }
}

function lineTouches(points: readonly PointMm[], area: AreaMm, widthMm: number): boolean {
  const grown: AreaMm = {
    xMm: area.xMm - widthMm / 2,
    yMm: area.yMm - widthMm / 2,
    widthMm: area.widthMm + widthMm,
    heightMm: area.heightMm + widthMm,
  };
  return points.some((b, i) => segmentTouches(points[Math.max(0, i - 1)]!, b, grown));
}

/** Whether any of a straight line lies in the area: what is left of it after each of the four sides has cut. */
function segmentTouches(a: PointMm, b: PointMm, area: AreaMm): boolean {
  let from = 0;
  let to = 1;
  const cut = (at: number, by: number, least: number, most: number): boolean => {
    if (by === 0) return at >= least && at <= most;
    const [enter, leave] = [(least - at) / by, (most - at) / by].sort((p, q) => p - q);
    from = Math.max(from, enter!);
    to = Math.min(to, leave!);
    return from <= to;
  };
  const { xMm, yMm, widthMm, heightMm } = area;
  return (
    cut(a.xMm, b.xMm - a.xMm, xMm, xMm + widthMm) && cut(a.yMm, b.yMm - a.yMm, yMm, yMm + heightMm)
  );
}

function boxOf(points: readonly PointMm[]): AreaMm {
  const xs = points.map(({ xMm }) => xMm);
  const ys = points.map(({ yMm }) => yMm);
  const xMm = Math.min(...xs);
  const yMm = Math.min(...ys);
  return { xMm, yMm, widthMm: Math.max(...xs) - xMm, heightMm: Math.max(...ys) - yMm };
}

const overlaps = (a: AreaMm, b: AreaMm): boolean =>
  a.xMm < b.xMm + b.widthMm &&
  b.xMm < a.xMm + a.widthMm &&
  a.yMm < b.yMm + b.heightMm &&
  b.yMm < a.yMm + a.heightMm;
