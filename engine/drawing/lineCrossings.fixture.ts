import { segmentsOf } from "./drawingFaults.fixture.ts";
import { plainMarks } from "./expandMark.ts";
import { palettes } from "./palette.ts";
import type { Mark, PointMm } from "./scene.ts";

/** Nearer than this two lines only touch. */
const TOUCH_MM = 0.3;

type Level = { readonly yMm: number; readonly fromMm: number; readonly toMm: number };
type Upright = { readonly xMm: number; readonly fromMm: number; readonly toMm: number };

/** Places where a level line runs across an upright one, each counted once however many strokes a wire is made of. */
export function lineCrossings(marks: readonly Mark[]): string[] {
  const levels: Level[] = [];
  const uprights: Upright[] = [];
  for (const mark of plainMarks(marks, palettes.print)) {
    if (mark.kind !== "line" && mark.kind !== "polyline") continue;
    for (const [a, b] of segmentsOf(mark)) sortSegment(a, b, levels, uprights);
  }
  const found = levels.flatMap(({ yMm, fromMm, toMm }) =>
    uprights
      .filter(
        (up) =>
          up.xMm > fromMm + TOUCH_MM &&
          up.xMm < toMm - TOUCH_MM &&
          yMm > up.fromMm + TOUCH_MM &&
          yMm < up.toMm - TOUCH_MM,
      )
      .map(({ xMm }) => `${xMm.toFixed(1)} ${yMm.toFixed(1)}`),
  );
  return [...new Set(found)];
}

/** Lines long enough to be conductors; strokes inside a symbol are shorter. */
function sortSegment(a: PointMm, b: PointMm, levels: Level[], uprights: Upright[]): void {
  const [dx, dy] = [Math.abs(a.xMm - b.xMm), Math.abs(a.yMm - b.yMm)];
  if (dy < 1e-6 && dx > 6) {
    levels.push({ yMm: a.yMm, fromMm: Math.min(a.xMm, b.xMm), toMm: Math.max(a.xMm, b.xMm) });
  } else if (dx < 1e-6 && dy > 1e-6) {
    uprights.push({ xMm: a.xMm, fromMm: Math.min(a.yMm, b.yMm), toMm: Math.max(a.yMm, b.yMm) });
  }
}
