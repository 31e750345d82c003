import type { SurveyView } from "./surveyAnswers.ts";

export interface PlaceMm {
  readonly xMm: number;
  readonly yMm: number;
}

/** Where a point of the screen lies on the drawing an element is part of, mm of the drawing. */
export function sceneMm(
  element: SVGGraphicsElement,
  { clientX, clientY }: { readonly clientX: number; readonly clientY: number },
): PlaceMm {
  const matrix = element.ownerSVGElement?.getScreenCTM();
  if (!matrix) return { xMm: 0, yMm: 0 };
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse());
  return { xMm: x, yMm: y };
}

type Scaled = Pick<SurveyView, "leftMm" | "topMm" | "scaleRatio" | "originMm">;

/** A place of the drawing as the job keeps it, to the millimetre. */
export function jobMm(view: Scaled, { xMm, yMm }: PlaceMm): PlaceMm {
  return {
    xMm: Math.round((xMm - view.leftMm) / view.scaleRatio + view.originMm.xMm),
    yMm: Math.round((yMm - view.topMm) / view.scaleRatio + view.originMm.yMm),
  };
}
