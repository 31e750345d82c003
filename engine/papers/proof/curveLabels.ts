import {
  type AreaMm,
  area,
  CAP_MM,
  type ColourToken,
  type Mark,
  measureTextMm,
  type PointMm,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";

/** A word that is to stand on a curve. */
export interface CurveLabel {
  readonly text: string;
  /** Points it may stand at, the best first. */
  readonly at: readonly PointMm[];
  readonly colour: ColourToken;
}

const PAD_MM = 0.8;

/** Labels on their curves, each at the first of its places that nothing has taken; left out where all are taken. */
export function curveLabels(
  labels: readonly CurveLabel[],
  inner: AreaMm,
  before: readonly AreaMm[],
): readonly Mark[] {
  const taken = [...before];
  return labels.flatMap(({ text, at, colour }): Mark[] => {
    const widthMm = measureTextMm(text, CAP_MM.fine, 700);
    for (const { xMm, yMm } of at) {
      const leftMm = Math.min(
        Math.max(xMm - widthMm / 2, inner.xMm + PAD_MM),
        inner.xMm + inner.widthMm - widthMm - PAD_MM,
      );
      const baseMm = yMm + CAP_MM.fine / 2;
      const box = area(
        leftMm - PAD_MM,
        baseMm - CAP_MM.fine - PAD_MM,
        widthMm + 2 * PAD_MM,
        CAP_MM.fine + 2 * PAD_MM,
      );
      if (!isWithin(box, inner) || taken.some((other) => overlaps(box, other))) continue;
      taken.push(box);
      const style = { ...TEXT_STYLE.fine, weight: 700 as const, colour };
      return [{ ...textMark(text, leftMm, baseMm, style), onGround: true }];
    }
    return [];
  });
}

const overlaps = (a: AreaMm, b: AreaMm): boolean =>
  a.xMm < b.xMm + b.widthMm &&
  b.xMm < a.xMm + a.widthMm &&
  a.yMm < b.yMm + b.heightMm &&
  b.yMm < a.yMm + a.heightMm;

const isWithin = (box: AreaMm, inner: AreaMm): boolean =>
  box.xMm >= inner.xMm &&
  box.yMm >= inner.yMm &&
  box.xMm + box.widthMm <= inner.xMm + inner.widthMm &&
  box.yMm + box.heightMm <= inner.yMm + inner.heightMm;

/** Places along a curve to try: from a share of its way outwards. */
export function placesAlong(curve: readonly PointMm[], firstRatio: number): readonly PointMm[] {
  const count = 24;
  const last = curve.length - 1;
  if (last < 0) return [];
  const shares = Array.from({ length: count + 1 }, (_, k) => k / count).sort(
    (a, b) => Math.abs(a - firstRatio) - Math.abs(b - firstRatio) || a - b,
  );
  const lengths = curve.map((here, k) =>
    k === 0 ? 0 : Math.hypot(here.xMm - curve[k - 1]!.xMm, here.yMm - curve[k - 1]!.yMm),
  );
  const total = lengths.reduce((sum, mm) => sum + mm, 0);
  return shares.map((share) => {
    let leftMm = share * total;
    let k = 1;
    while (k < last && leftMm > lengths[k]!) leftMm -= lengths[k++]!;
    const [a, b] = [curve[Math.max(0, k - 1)]!, curve[Math.min(k, last)]!];
    const part = lengths[k] ? Math.min(1, leftMm / lengths[k]!) : 0;
    return { xMm: a.xMm + part * (b.xMm - a.xMm), yMm: a.yMm + part * (b.yMm - a.yMm) };
  });
}
