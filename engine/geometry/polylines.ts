import { type Point, type Segment, segmentCrossing, segmentDistance } from "./segments.ts";

/** The straight pieces of a polyline of at least two points. */
export function polylineSegments(points: readonly Point[]): readonly Segment[] {
  return points.slice(1).map((b, i) => ({ a: points[i]!, b }));
}

export function polylineLength(points: readonly Point[]): number {
  return polylineSegments(points).reduce(
    (sum, { a, b }) => sum + Math.hypot(b.x - a.x, b.y - a.y),
    0,
  );
}

/** Nearest distance of two polylines of at least two points each. */
export function polylineDistance(first: readonly Point[], second: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const p of polylineSegments(first)) {
    for (const q of polylineSegments(second)) least = Math.min(least, segmentDistance(p, q));
  }
  return least;
}

/** Where the pieces of two polylines cross or touch, in order along the first. A shared corner appears once a pair. */
export function polylineCrossings(
  first: readonly Point[],
  second: readonly Point[],
): readonly Point[] {
  return polylineSegments(first).flatMap((p) =>
    polylineSegments(second).flatMap((q) => segmentCrossing(p, q) ?? []),
  );
}

/**
 * The point a way along a polyline.
 *
 * @param along  distance from the first point, 0 to the length.
 * @returns null where `along` is off the line.
 */
export function pointAlong(points: readonly Point[], along: number): Point | null {
  if (!(along >= 0)) return null;
  let left = along;
  for (const { a, b } of polylineSegments(points)) {
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (left <= length) {
      const share = length === 0 ? 0 : left / length;
      return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
    }
    left -= length;
  }
  return null;
}
