import fc from "fast-check";
import { expect, test } from "vitest";
import {
  pointAlong,
  pointSegmentDistance,
  polylineCrossings,
  polylineDistance,
  polylineLength,
  rectanglesOverlap,
  type Segment,
  segmentCrossing,
  segmentDistance,
} from "./index.ts";

const segment = (ax: number, ay: number, bx: number, by: number): Segment => ({
  a: { x: ax, y: ay },
  b: { x: bx, y: by },
});
const whole = fc.integer({ min: -5, max: 5 });
const anySegment = fc.tuple(whole, whole, whole, whole).map((t) => segment(...t));

test("crossing, touching, missing and lying along", () => {
  expect(segmentCrossing(segment(0, 0, 2, 2), segment(0, 2, 2, 0))).toEqual({ x: 1, y: 1 });
  expect(segmentCrossing(segment(0, 0, 2, 0), segment(1, 0, 1, 5))).toEqual({ x: 1, y: 0 });
  expect(segmentCrossing(segment(0, 0, 2, 0), segment(3, -1, 3, 1))).toBeNull();
  expect(segmentCrossing(segment(0, 0, 2, 0), segment(1, 0, 3, 0))).toBeNull();
  expect(segmentDistance(segment(0, 0, 2, 0), segment(1, 0, 3, 0))).toBe(0);
});

test("distances worked in the head", () => {
  expect(pointSegmentDistance({ x: 0, y: 3 }, segment(-1, 0, 1, 0))).toBe(3);
  expect(pointSegmentDistance({ x: 4, y: 4 }, segment(-1, 0, 1, 0))).toBe(5);
  expect(pointSegmentDistance({ x: 3, y: 4 }, segment(0, 0, 0, 0))).toBe(5);
  expect(segmentDistance(segment(0, 0, 1, 0), segment(0, 2, 1, 2))).toBe(2);
});

test("the distance of two segments is no more than that of any two of their points, and the same both ways", () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(anySegment, anySegment, share, share, (p, q, s, t) => {
      const on = ({ a, b }: Segment, u: number) => ({
        x: a.x + u * (b.x - a.x),
        y: a.y + u * (b.y - a.y),
      });
      const [i, j] = [on(p, s), on(q, t)];
      const distance = segmentDistance(p, q);
      expect(distance).toBeLessThanOrEqual(Math.hypot(i.x - j.x, i.y - j.y) + 1e-9);
      expect(Math.abs(distance - segmentDistance(q, p))).toBeLessThan(1e-12);
      if (segmentCrossing(p, q)) expect(distance).toBe(0);
    }),
  );
});

test("along a polyline", () => {
  const line = [
    { x: 0, y: 0 },
    { x: 3, y: 0 },
    { x: 3, y: 4 },
  ];
  expect(polylineLength(line)).toBe(7);
  expect(pointAlong(line, 5)).toEqual({ x: 3, y: 2 });
  expect(pointAlong(line, 0)).toEqual({ x: 0, y: 0 });
  expect(pointAlong(line, 7.1)).toBeNull();
  const other = [
    { x: 2, y: 2 },
    { x: 5, y: 2 },
  ];
  expect(polylineCrossings(line, other)).toEqual([{ x: 3, y: 2 }]);
  expect(polylineDistance(line, other)).toBe(0);
  expect(
    polylineDistance(line, [
      { x: 0, y: 6 },
      { x: 3, y: 6 },
    ]),
  ).toBe(2);
});

test("rectangles that touch do not overlap, unless a gap is asked for", () => {
  const unit = { x: 0, y: 0, width: 1, height: 1 };
  expect(rectanglesOverlap(unit, { ...unit, x: 1 })).toBe(false);
  expect(rectanglesOverlap(unit, { ...unit, x: 0.9, y: 0.9 })).toBe(true);
  expect(rectanglesOverlap(unit, { ...unit, x: 1.2 }, 0.3)).toBe(true);
  expect(rectanglesOverlap(unit, { ...unit, x: 1.2 }, 0.1)).toBe(false);
});
