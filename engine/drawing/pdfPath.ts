import { arcSteps, mmText, polylineSteps } from "./pathText.ts";
import { type AreaMm, type PathStep, type PointMm, type PrimitiveMark, point } from "./scene.ts";

/** The line round a mark as PDF path operators. */
export function pdfPath(mark: Exclude<PrimitiveMark, { readonly kind: "text" }>): string {
  switch (mark.kind) {
    case "line":
      return `${at(mark.from)} m ${at(mark.to)} l`;
    case "polyline":
      return stepsText(polylineSteps(mark.points, mark.closed ?? false));
    case "path":
      return stepsText(mark.steps);
    case "circle":
      return `${stepsText(arcSteps(mark.centre, mark.radiusMm, 0, 360))} h`;
    case "rect":
      return mark.cornerMm
        ? stepsText(roundedSteps(mark.area, mark.cornerMm))
        : rectText(mark.area);
  }
}

const at = ({ xMm, yMm }: PointMm): string => `${mmText(xMm)} ${mmText(yMm)}`;

export const rectText = ({ xMm, yMm, widthMm, heightMm }: AreaMm): string =>
  `${mmText(xMm)} ${mmText(yMm)} ${mmText(widthMm)} ${mmText(heightMm)} re`;

function stepsText(steps: readonly PathStep[]): string {
  return steps
    .map((step) => {
      if (step.pen === "close") return "h";
      if (step.pen === "curve") {
        return `${at(step.control1)} ${at(step.control2)} ${at(step.to)} c`;
      }
      return `${at(step.to)} ${step.pen === "move" ? "m" : "l"}`;
    })
    .join(" ");
}

/** A box with its corners rounded, clockwise; a corner takes at most half a side. */
function roundedSteps({ xMm, yMm, widthMm, heightMm }: AreaMm, cornerMm: number): PathStep[] {
  const rMm = Math.min(cornerMm, widthMm / 2, heightMm / 2);
  const [leftMm, rightMm] = [xMm + rMm, xMm + widthMm - rMm];
  const [topMm, footMm] = [yMm + rMm, yMm + heightMm - rMm];
  const corners = [
    arcSteps(point(rightMm, topMm), rMm, -90, 0),
    arcSteps(point(rightMm, footMm), rMm, 0, 90),
    arcSteps(point(leftMm, footMm), rMm, 90, 180),
    arcSteps(point(leftMm, topMm), rMm, 180, 270),
  ];
  const joined = corners
    .flat()
    .map((step, i): PathStep => (step.pen === "move" && i > 0 ? { ...step, pen: "line" } : step));
  return [...joined, { pen: "close" }];
}
