import type { PathStep, PointMm } from "./scene.ts";

/** What follows the point for each count of thousandths: ".5" for 500. */
const TAILS = Array.from({ length: 1000 }, (_, i) =>
  i === 0 ? "" : `.${String(i).padStart(3, "0").replace(/0+$/, "")}`,
);
const WHOLE_MAX = 2 ** 31;

/**
 * A length for output: thousandths of a millimetre are finer than any printer. Written from whole numbers, which is several times as quick as a fraction,
 * and the same text.
 */
export function mmText(valueMm: number): string {
  const rounded = Math.round(valueMm * 1000);
  const size = Math.abs(rounded);
  if (!(size < WHOLE_MAX)) return String(rounded / 1000 + 0);
  const tail = size % 1000;
  return `${rounded < 0 ? "-" : ""}${(size - tail) / 1000}${TAILS[tail]}`;
}

const at = ({ xMm, yMm }: PointMm): string => `${mmText(xMm)} ${mmText(yMm)}`;

/** Path steps as path data, which SVG and PDF read alike. */
export function pathText(steps: readonly PathStep[]): string {
  return steps
    .map((step) => {
      if (step.pen === "close") return "Z";
      if (step.pen === "curve") {
        return `C${at(step.control1)} ${at(step.control2)} ${at(step.to)}`;
      }
      return `${step.pen === "move" ? "M" : "L"}${at(step.to)}`;
    })
    .join("");
}

/** A polyline as path steps. */
export function polylineSteps(points: readonly PointMm[], closed: boolean): PathStep[] {
  const drawn: PathStep[] = points.map((to, i) => ({ pen: i === 0 ? "move" : "line", to }));
  return closed ? [...drawn, { pen: "close" }] : drawn;
}

/**
 * Part of a circle as curves of at most a quarter each, from one angle to another, clockwise from 3 o'clock.
 * Control points at 4/3 tan(θ/4) of the radius: off the circle by less than 0.03 % of the radius.
 */
export function arcSteps(
  centre: PointMm,
  radiusMm: number,
  fromDeg: number,
  toDeg: number,
): PathStep[] {
  const count = Math.max(1, Math.ceil(Math.abs(toDeg - fromDeg) / 90));
  const stepRad = ((toDeg - fromDeg) * Math.PI) / 180 / count;
  const reach = (4 / 3) * Math.tan(stepRad / 4);
  const on = (angle: number, outward: number): PointMm => ({
    xMm: centre.xMm + radiusMm * (Math.cos(angle) - outward * Math.sin(angle)),
    yMm: centre.yMm + radiusMm * (Math.sin(angle) + outward * Math.cos(angle)),
  });
  const startRad = (fromDeg * Math.PI) / 180;
  const steps: PathStep[] = [{ pen: "move", to: on(startRad, 0) }];
  for (let i = 0; i < count; i++) {
    const from = startRad + i * stepRad;
    const to = from + stepRad;
    steps.push({
      pen: "curve",
      control1: on(from, reach),
      control2: on(to, -reach),
      to: on(to, 0),
    });
  }
  return steps;
}
