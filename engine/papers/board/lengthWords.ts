import {
  CAP_MM,
  LINE_MM,
  type Mark,
  measureTextMm,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { Segment } from "../../geometry/index.ts";
import { alongLine, type BoardLayout } from "../../layout/index.ts";
import { printNumber } from "../../units/index.ts";
import { diameterAt } from "./loomBody.ts";
import { readableDeg, turned } from "./turned.ts";

export interface LengthWord {
  readonly marks: readonly Mark[];
  /** What it takes, as a line 2.4 mm to each side. */
  readonly line: Segment;
}

/** The length between neighbouring numbered pegs, written along the loom where nothing else is. */
export function lengthWords(layout: BoardLayout): readonly LengthWord[] {
  return layout.limbs.flatMap((limb) => {
    const startMm = layout.nodes.find(({ id }) => id === limb.from)!.fromDatumMm;
    const passed = layout.nodes
      .filter(({ kind }) => kind === "passed")
      .filter(({ at, fromDatumMm }) => {
        const place = alongLine(limb.points, fromDatumMm - startMm).at;
        return fromDatumMm > startMm && Math.hypot(place.x - at.x, place.y - at.y) < 1e-6;
      })
      .map(({ fromDatumMm }) => fromDatumMm - startMm);
    const stops = [0, ...passed, limb.lengthMm].sort((a, b) => a - b);
    return stops.slice(1).flatMap((toMm, i) => lengthWord(layout, limb, stops[i]!, toMm));
  });
}

function lengthWord(
  { joints, clips, pegs }: BoardLayout,
  limb: BoardLayout["limbs"][number],
  fromMm: number,
  toMm: number,
): readonly LengthWord[] {
  const text = printNumber(toMm - fromMm, 0);
  const halfMm = measureTextMm(text, CAP_MM.part, 700) / 2 + 4;
  if (toMm - fromMm < 2 * halfMm + 16) return [];
  const shares = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74];
  const places = shares.map((share) => fromMm + share * (toMm - fromMm));
  const free = places.find((mm) => {
    const { at } = alongLine(limb.points, mm);
    const isBent = limb.folds.some((fold) => mm > fold.fromMm - halfMm && mm < fold.toMm + halfMm);
    return (
      !isBent &&
      ![...joints, ...clips, ...pegs].some(
        (mark) => Math.hypot(mark.at.x - at.x, mark.at.y - at.y) < halfMm + 5,
      )
    );
  });
  const mm = free ?? places[0]!;
  const { at, alongDeg } = alongLine(limb.points, mm);
  const readDeg = readableDeg(alongDeg);
  const offMm = diameterAt(limb, mm) / 2 + 2.2;
  const base = turned(at, readDeg, 0, -offMm);
  const middle = offMm + CAP_MM.part / 2;
  const arrow = (sideFactor: number): Mark => ({
    kind: "polyline",
    points: [
      turned(at, readDeg, sideFactor * (halfMm - 2.5), -middle - 1),
      turned(at, readDeg, sideFactor * (halfMm + 0.5), -middle),
      turned(at, readDeg, sideFactor * (halfMm - 2.5), -middle + 1),
    ],
    stroke: { widthMm: LINE_MM.detail, colour: "ink" },
  });
  const label = textMark(text, base.xMm, base.yMm, TEXT_STYLE.part, "middle");
  const [a, b] = [-halfMm, halfMm].map((along) => turned(at, readDeg, along, -middle));
  return [
    {
      marks: [{ ...label, turnDeg: readDeg } as Mark, arrow(-1), arrow(1)],
      line: { a: { x: a!.xMm, y: a!.yMm }, b: { x: b!.xMm, y: b!.yMm } },
    },
  ];
}
