import type { PathStep, PointMm } from "./scene.ts";

/** A length for output: thousandths of a millimetre are finer than any printer. */
export const mmText = (valueMm: number): string => String(Math.round(valueMm * 1000) / 1000 + 0);

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
