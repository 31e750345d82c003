import { textAreaMm } from "./measureTextMm.ts";
import { type AreaMm, area, type Mark, type PointMm } from "./scene.ts";

/** A symbol reaches so far from its centre at its own size. */
const SYMBOL_REACH_MM = 10;
/** Half the thickest wire with its casing. */
const WIRE_REACH_MM = 1.5;

/** The least box that holds every mark, lettering included; lines by their middle. Null where there is none. */
export function marksBox(marks: readonly Mark[]): AreaMm | null {
  const corners = marks.flatMap(cornersOf);
  if (corners.length === 0) return null;
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { xMm, yMm } of corners) {
    left = Math.min(left, xMm);
    top = Math.min(top, yMm);
    right = Math.max(right, xMm);
    bottom = Math.max(bottom, yMm);
  }
  return area(left, top, right - left, bottom - top);
}

function cornersOf(mark: Mark): readonly PointMm[] {
  switch (mark.kind) {
    case "group": {
      const box = marksBox(mark.marks);
      return box === null ? [] : ends(box);
    }
    case "line":
      return [mark.from, mark.to];
    case "polyline":
      return mark.points;
    case "wire":
      return mark.points.flatMap((at) => around(at, WIRE_REACH_MM));
    case "path":
      return mark.steps.flatMap((step) => {
        if (step.pen === "close") return [];
        return step.pen === "curve" ? [step.control1, step.control2, step.to] : [step.to];
      });
    case "rect":
      return ends(mark.area);
    case "circle":
      return around(mark.centre, mark.radiusMm);
    case "text":
      return ends(textAreaMm(mark));
    case "symbol":
      return around(mark.at, SYMBOL_REACH_MM * (mark.sizeRatio ?? 1));
  }
}

const ends = ({ xMm, yMm, widthMm, heightMm }: AreaMm): readonly PointMm[] => [
  { xMm, yMm },
  { xMm: xMm + widthMm, yMm: yMm + heightMm },
];

const around = ({ xMm, yMm }: PointMm, reachMm: number): readonly PointMm[] =>
  ends(area(xMm - reachMm, yMm - reachMm, 2 * reachMm, 2 * reachMm));
