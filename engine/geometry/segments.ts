export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Segment {
  readonly a: Point;
  readonly b: Point;
}

/** Nearest distance of a point to a segment; a segment may be a single point. */
export function pointSegmentDistance(p: Point, { a, b }: Segment): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((p.x - a.x) * dx + (p.y - a.y) * dy) / square;
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
}

/** Twice the area of the triangle p q r, above 0 where r lies to the left of p → q. */
const turn = (p: Point, q: Point, r: Point): number =>
  (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);

/**
 * The one point where two segments cross or touch.
 *
 * @returns null where they do not meet, and where they lie along each other (then they share no single point; ask
 *          `segmentDistance`, which is 0).
 */
export function segmentCrossing(first: Segment, second: Segment): Point | null {
  const c = turn(first.a, first.b, second.a);
  const d = turn(first.a, first.b, second.b);
  if (c === d) return null;
  const t = c / (c - d);
  const e = turn(second.a, second.b, first.a);
  const f = turn(second.a, second.b, first.b);
  const u = e / (e - f);
  if (!(t >= 0 && t <= 1 && u >= 0 && u <= 1)) return null;
  return {
    x: second.a.x + t * (second.b.x - second.a.x),
    y: second.a.y + t * (second.b.y - second.a.y),
  };
}

/** Nearest distance of two segments; 0 where they meet. */
export function segmentDistance(first: Segment, second: Segment): number {
  if (segmentCrossing(first, second) !== null) return 0;
  return Math.min(
    pointSegmentDistance(first.a, second),
    pointSegmentDistance(first.b, second),
    pointSegmentDistance(second.a, first),
    pointSegmentDistance(second.b, first),
  );
}
