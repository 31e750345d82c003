import type { AreaMm, Mark, PathStep, PointMm, PrimitiveMark, Stroke } from "./scene.ts";

/** Nothing on paper is drawn thinner, however small it is set. */
const STROKE_MIN_MM = 0.25;

/** Marks set in another size of the same drawing, about the corner of the page: places, lettering and lines together. */
export function scaleMarks(marks: readonly Mark[], sizeRatio: number): Mark[] {
  return marks.map((mark): Mark => {
    switch (mark.kind) {
      case "group":
        return { ...mark, marks: scaleMarks(mark.marks, sizeRatio) };
      case "wire":
        return {
          ...mark,
          points: mark.points.map((at) => scaled(at, sizeRatio)),
          sizeRatio: (mark.sizeRatio ?? 1) * sizeRatio,
        };
      case "symbol":
        return {
          ...mark,
          at: scaled(mark.at, sizeRatio),
          sizeRatio: (mark.sizeRatio ?? 1) * sizeRatio,
        };
      default:
        return scaleMark(mark, sizeRatio);
    }
  });
}

export const scaled = ({ xMm, yMm }: PointMm, ratio: number): PointMm => ({
  xMm: xMm * ratio,
  yMm: yMm * ratio,
});

/** One plain mark in another size. */
export function scaleMark(mark: PrimitiveMark, ratio: number): PrimitiveMark {
  const inked = <Inked extends { readonly stroke?: Stroke | undefined }>(one: Inked): Inked =>
    one.stroke === undefined ? one : { ...one, stroke: scaledStroke(one.stroke, ratio) };
  switch (mark.kind) {
    case "line":
      return inked({ ...mark, from: scaled(mark.from, ratio), to: scaled(mark.to, ratio) });
    case "polyline":
      return inked({ ...mark, points: mark.points.map((at) => scaled(at, ratio)) });
    case "path":
      return inked({ ...mark, steps: mark.steps.map((step) => scaledStep(step, ratio)) });
    case "circle":
      return inked({
        ...mark,
        centre: scaled(mark.centre, ratio),
        radiusMm: mark.radiusMm * ratio,
      });
    case "rect":
      return inked({
        ...mark,
        area: scaledArea(mark.area, ratio),
        ...(mark.cornerMm === undefined ? {} : { cornerMm: mark.cornerMm * ratio }),
      });
    case "text":
      return { ...mark, at: scaled(mark.at, ratio), capHeightMm: mark.capHeightMm * ratio };
  }
}

const scaledStroke = (stroke: Stroke, ratio: number): Stroke => ({
  ...stroke,
  widthMm: Math.max(STROKE_MIN_MM, stroke.widthMm * ratio),
  ...(stroke.dashMm === undefined ? {} : { dashMm: stroke.dashMm.map((mm) => mm * ratio) }),
  ...(stroke.dashOffsetMm === undefined ? {} : { dashOffsetMm: stroke.dashOffsetMm * ratio }),
});

function scaledStep(step: PathStep, ratio: number): PathStep {
  if (step.pen === "close") return step;
  if (step.pen !== "curve") return { ...step, to: scaled(step.to, ratio) };
  return {
    pen: "curve",
    control1: scaled(step.control1, ratio),
    control2: scaled(step.control2, ratio),
    to: scaled(step.to, ratio),
  };
}

const scaledArea = (area: AreaMm, ratio: number): AreaMm => ({
  ...scaled(area, ratio),
  widthMm: area.widthMm * ratio,
  heightMm: area.heightMm * ratio,
});
