import type { AreaMm, Mark, PathStep, PointMm, PrimitiveMark } from "./scene.ts";

type Place = (at: PointMm) => PointMm;

/** A plain mark moved point by point. The move must keep lengths and turn by quarters only; text stays level, set about its middle. */
export function transformMark(mark: PrimitiveMark, place: Place): PrimitiveMark {
  switch (mark.kind) {
    case "line":
      return { ...mark, from: place(mark.from), to: place(mark.to) };
    case "polyline":
      return { ...mark, points: mark.points.map(place) };
    case "path":
      return { ...mark, steps: mark.steps.map((step) => transformStep(step, place)) };
    case "circle":
      return { ...mark, centre: place(mark.centre) };
    case "rect":
      return { ...mark, area: transformArea(mark.area, place) };
    case "text": {
      const halfMm = mark.capHeightMm / 2;
      const middle = place({ xMm: mark.at.xMm, yMm: mark.at.yMm - halfMm });
      return { ...mark, at: { xMm: middle.xMm, yMm: middle.yMm + halfMm } };
    }
  }
}

function transformStep(step: PathStep, place: Place): PathStep {
  if (step.pen === "close") return step;
  if (step.pen !== "curve") return { ...step, to: place(step.to) };
  return {
    pen: "curve",
    control1: place(step.control1),
    control2: place(step.control2),
    to: place(step.to),
  };
}

function transformArea(area: AreaMm, place: Place): AreaMm {
  const a = place(area);
  const b = place({ xMm: area.xMm + area.widthMm, yMm: area.yMm + area.heightMm });
  return {
    xMm: Math.min(a.xMm, b.xMm),
    yMm: Math.min(a.yMm, b.yMm),
    widthMm: Math.abs(b.xMm - a.xMm),
    heightMm: Math.abs(b.yMm - a.yMm),
  };
}

/** Marks shifted as they are. */
export function moveMarks(marks: readonly Mark[], byXMm: number, byYMm: number): Mark[] {
  const place: Place = ({ xMm, yMm }) => ({ xMm: xMm + byXMm, yMm: yMm + byYMm });
  return marks.map((mark) => {
    if (mark.kind === "group") return { ...mark, marks: moveMarks(mark.marks, byXMm, byYMm) };
    if (mark.kind === "wire") return { ...mark, points: mark.points.map(place) };
    if (mark.kind === "symbol") return { ...mark, at: place(mark.at) };
    return transformMark(mark, place);
  });
}
