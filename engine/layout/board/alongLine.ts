import type { Point } from "../../geometry/index.ts";

/** A place on a line with the direction the line has there, degrees clockwise from the right. */
export interface LinePlace {
  readonly at: Point;
  readonly alongDeg: number;
}

/** The place so far along a line; past its ends, the end. */
export function alongLine(points: readonly Point[], alongMm: number): LinePlace {
  let leftMm = Math.max(0, alongMm);
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!;
    const b = points[i]!;
    const lengthMm = Math.hypot(b.x - a.x, b.y - a.y);
    if (lengthMm >= leftMm || i === points.length - 1) {
      const share = lengthMm === 0 ? 0 : Math.min(1, leftMm / lengthMm);
      return {
        at: { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) },
        alongDeg: (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI,
      };
    }
    leftMm -= lengthMm;
  }
  return { at: points[0]!, alongDeg: 0 };
}

/** The part of a line between two places along it. */
export function partOfLine(
  points: readonly Point[],
  fromMm: number,
  toMm: number,
): readonly Point[] {
  const part: Point[] = [alongLine(points, fromMm).at];
  let passedMm = 0;
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1]!;
    const b = points[i]!;
    passedMm += Math.hypot(b.x - a.x, b.y - a.y);
    if (passedMm > fromMm + 1e-9 && passedMm < toMm - 1e-9) part.push(b);
  }
  part.push(alongLine(points, toMm).at);
  return part;
}
