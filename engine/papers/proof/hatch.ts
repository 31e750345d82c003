import { type Mark, type PointMm, point, type Stroke } from "../../drawing/index.ts";

/** Distance of hatch lines, and how finely they are followed, mm. */
const APART_MM = 1.6;
const STEP_MM = 0.25;

/**
 * Strokes at 45° in the region between two curves that run from left to right.
 *
 * @param upper  the edge that lies higher on the paper.
 */
export function hatch(
  upper: readonly PointMm[],
  lower: readonly PointMm[],
  stroke: Stroke,
): readonly Mark[] {
  const [first, last] = [upper[0], upper.at(-1)];
  if (first === undefined || last === undefined || lower.length === 0) return [];
  const [fromMm, toMm] = [first.xMm, last.xMm];
  const ys = [...upper, ...lower].map(({ yMm }) => yMm);
  const [topMm, footMm] = [Math.min(...ys), Math.max(...ys)];
  const isInside = (xMm: number, yMm: number): boolean =>
    yMm >= heightAt(upper, xMm) && yMm <= heightAt(lower, xMm);
  const marks: Mark[] = [];
  const firstSum = Math.ceil((fromMm + topMm) / APART_MM) * APART_MM;
  for (let sumMm = firstSum; sumMm <= toMm + footMm; sumMm += APART_MM) {
    let start: PointMm | null = null;
    let end: PointMm | null = null;
    for (let xMm = fromMm; xMm <= toMm + 1e-9; xMm += STEP_MM) {
      const here = point(xMm, sumMm - xMm);
      if (isInside(here.xMm, here.yMm)) {
        start ??= here;
        end = here;
        continue;
      }
      if (start !== null && end !== null)
        marks.push({ kind: "line", from: start, to: end, stroke });
      [start, end] = [null, null];
    }
    if (start !== null && end !== null) marks.push({ kind: "line", from: start, to: end, stroke });
  }
  return marks.filter((mark) => mark.kind === "line" && mark.from.xMm < mark.to.xMm);
}

function heightAt(curve: readonly PointMm[], xMm: number): number {
  const next = curve.findIndex((one) => one.xMm >= xMm);
  if (next <= 0) return curve[Math.max(0, next)]!.yMm;
  const [a, b] = [curve[next - 1]!, curve[next]!];
  if (b.xMm === a.xMm) return b.yMm;
  return a.yMm + ((xMm - a.xMm) / (b.xMm - a.xMm)) * (b.yMm - a.yMm);
}
