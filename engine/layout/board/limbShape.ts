import type { Point } from "../../geometry/index.ts";
import type { BoardFold } from "./boardLayout.ts";

/** Bends of a limb: at which share of its straight length, and by how much, degrees clockwise. */
export type Bends = readonly { readonly atRatio: number; readonly turnDeg: number }[];

const bend = (atRatio: number, turnDeg: number) => ({ atRatio, turnDeg });

/** Ways to lay a limb: straight, a quarter turn, a hairpin, and snakes. */
export const BENDS: readonly Bends[] = [
  [],
  ...[0.5, 0.3, 0.7].flatMap((share) => [[bend(share, 90)], [bend(share, -90)]]),
  ...[0.5, 0.3, 0.7].flatMap((share) => [[bend(share, 180)], [bend(share, -180)]]),
  ...[1, -1].map((way) => [bend(1 / 3, 180 * way), bend(2 / 3, -180 * way)]),
  ...[1, -1].map((way) => [0, 1, 2].map((i) => bend((i + 1) / 4, (i % 2 ? -180 : 180) * way))),
  ...[1, -1].map((way) => [0, 1, 2, 3].map((i) => bend((i + 1) / 5, (i % 2 ? -180 : 180) * way))),
];

/** A straight part is at least this long on each side of a fold, mm. */
export const STRAIGHT_LEAST_MM = 30;

export interface LimbShape {
  readonly points: readonly Point[];
  readonly folds: readonly BoardFold[];
  /** Where it points at its far end, radians. */
  readonly endRad: number;
}

/**
 * The centre line of a limb from a start: its length along the line is exactly the length asked, folds included. A fold is
 * a row of chords whose middles lie on the radius, so that it is nowhere tighter.
 *
 * @param chordDeg  largest turn between chords, degrees.
 * @returns null where it is too short for such bends.
 */
export function limbShape(asked: {
  readonly start: Point;
  readonly headingRad: number;
  readonly lengthMm: number;
  readonly bends: Bends;
  readonly radiusMm: number;
  readonly chordDeg: number;
}): LimbShape | null {
  const { lengthMm, bends, radiusMm, chordDeg } = asked;
  const folds = bends.map(({ turnDeg }) => {
    const count = Math.max(1, Math.ceil(Math.abs(turnDeg) / chordDeg - 1e-9));
    const stepRad = (turnDeg * Math.PI) / 180 / count;
    return { count, stepRad, chordMm: 2 * radiusMm * Math.tan(Math.abs(stepRad) / 2) };
  });
  const straightMm = lengthMm - folds.reduce((sum, { count, chordMm }) => sum + count * chordMm, 0);
  const marks = [0, ...bends.map(({ atRatio }) => atRatio), 1];
  const legsMm = marks.slice(1).map((share, i) => (share - marks[i]!) * straightMm);
  if (bends.length > 0 && legsMm.some((legMm) => legMm < STRAIGHT_LEAST_MM)) return null;
  const points: Point[] = [asked.start];
  const bent: BoardFold[] = [];
  let headingRad = asked.headingRad;
  let usedMm = 0;
  const go = (stepMm: number): void => {
    const { x, y } = points.at(-1)!;
    points.push({ x: x + stepMm * Math.cos(headingRad), y: y + stepMm * Math.sin(headingRad) });
    usedMm += stepMm;
  };
  legsMm.forEach((legMm, i) => {
    go(legMm);
    const fold = folds[i];
    if (fold === undefined) return;
    const fromMm = usedMm;
    for (let k = 0; k < fold.count; k++) {
      headingRad += k === 0 ? fold.stepRad / 2 : fold.stepRad;
      go(fold.chordMm);
    }
    headingRad += fold.stepRad / 2;
    bent.push({ fromMm, toMm: usedMm, radiusMm, turnDeg: bends[i]!.turnDeg });
  });
  return { points, folds: bent, endRad: headingRad };
}
