import { type PointMm, point } from "../../drawing/index.ts";
import type { Point } from "../../geometry/index.ts";

export const toPoint = ({ x, y }: Point): PointMm => point(x, y);

/** A place so far along a direction and so far to the right of it. */
export const turned = (at: Point, alongDeg: number, alongMm: number, asideMm: number): PointMm => {
  const turn = (alongDeg * Math.PI) / 180;
  return point(
    at.x + alongMm * Math.cos(turn) - asideMm * Math.sin(turn),
    at.y + alongMm * Math.sin(turn) + asideMm * Math.cos(turn),
  );
};

/** An angle at which a line of text along a direction is read without turning the head over, degrees. */
export function readableDeg(alongDeg: number): number {
  const turn = ((alongDeg % 180) + 180) % 180;
  return turn > 90 + 1e-6 ? turn - 180 : turn;
}
