import { LINE_MM } from "../lineWidth.ts";
import { arcSteps } from "../pathText.ts";
import type { PathStep, PointMm, PrimitiveMark, Stroke } from "../scene.ts";
import { area, point } from "../scene.ts";

/** A symbol about its centre: where wires meet it, and its marks. */
export interface SymbolShape {
  readonly pins: Readonly<Record<string, PointMm>>;
  readonly marks: readonly PrimitiveMark[];
}

const outline: Stroke = { widthMm: LINE_MM.symbol, colour: "ink", cap: "round" };
const detail: Stroke = { widthMm: LINE_MM.detail, colour: "ink" };

/** Pins stand three grid steps above and below the centre. */
export const PIN_MM = 7.5;

export const top = point(0, -PIN_MM);
export const bottom = point(0, PIN_MM);

type Pair = readonly [xMm: number, yMm: number];

/** An outline through points. */
export const open = (...pairs: readonly Pair[]): PrimitiveMark => ({
  kind: "polyline",
  points: pairs.map(([xMm, yMm]) => point(xMm, yMm)),
  stroke: outline,
});

/** A closed outline on the ground, hiding what lies under it. */
export const closed = (...pairs: readonly Pair[]): PrimitiveMark => ({
  kind: "polyline",
  points: pairs.map(([xMm, yMm]) => point(xMm, yMm)),
  closed: true,
  stroke: outline,
  fill: "ground",
});

export const solid = (...pairs: readonly Pair[]): PrimitiveMark => ({
  kind: "polyline",
  points: pairs.map(([xMm, yMm]) => point(xMm, yMm)),
  closed: true,
  fill: "ink",
});

/** A mechanical link: dashed. */
export const linkage = (from: Pair, to: Pair): PrimitiveMark => ({
  kind: "line",
  from: point(...from),
  to: point(...to),
  stroke: { ...detail, dashMm: [1, 0.7] },
});

export const bar = (xMm: number, yMm: number, halfMm: number): PrimitiveMark =>
  open([xMm - halfMm, yMm], [xMm + halfMm, yMm]);

/** A box about a centre. */
export const box = (
  halfWidthMm: number,
  halfHeightMm: number,
  centre: Pair = [0, 0],
  cornerMm?: number,
): PrimitiveMark => ({
  kind: "rect",
  area: area(centre[0] - halfWidthMm, centre[1] - halfHeightMm, 2 * halfWidthMm, 2 * halfHeightMm),
  cornerMm,
  stroke: outline,
  fill: "ground",
});

export const ring = (radiusMm: number, centre: Pair = [0, 0]): PrimitiveMark => ({
  kind: "circle",
  centre: point(...centre),
  radiusMm,
  stroke: outline,
  fill: "ground",
});

export const dot = (radiusMm: number, centre: Pair = [0, 0]): PrimitiveMark => ({
  kind: "circle",
  centre: point(...centre),
  radiusMm,
  fill: "ink",
});

/** A letter with its middle at a point. */
export const letter = (text: string, capHeightMm: number, centre: Pair): PrimitiveMark => ({
  kind: "text",
  text,
  at: point(centre[0], centre[1] + capHeightMm / 2),
  capHeightMm,
  weight: 700,
  anchor: "middle",
  colour: "ink",
});

export const arc = (
  centre: Pair,
  radiusMm: number,
  fromDeg: number,
  toDeg: number,
): PrimitiveMark => ({
  kind: "path",
  steps: arcSteps(point(...centre), radiusMm, fromDeg, toDeg),
  stroke: outline,
});

/** A winding of half circles down a line, bulging to one side: +1 right, -1 left. */
export function winding(xMm: number, fromMm: number, toMm: number, side: 1 | -1): PrimitiveMark {
  const turnCount = 4;
  const radiusMm = (toMm - fromMm) / turnCount / 2;
  const steps: PathStep[] = [];
  for (let i = 0; i < turnCount; i++) {
    const centre = point(xMm, fromMm + (2 * i + 1) * radiusMm);
    steps.push(...arcSteps(centre, radiusMm, -90, -90 + side * 180));
  }
  return { kind: "path", steps, stroke: outline };
}

/** One period of a wave about a centre: the sign of alternating current. */
export const wave = (centre: Pair, halfMm: number): PrimitiveMark => ({
  kind: "path",
  steps: [
    { pen: "move", to: point(centre[0] - halfMm, centre[1]) },
    {
      pen: "curve",
      control1: point(centre[0] - halfMm / 2, centre[1] - halfMm),
      control2: point(centre[0] + halfMm / 2, centre[1] + halfMm),
      to: point(centre[0] + halfMm, centre[1]),
    },
  ],
  stroke: detail,
});

export const fine = (...pairs: readonly Pair[]): PrimitiveMark => ({
  kind: "polyline",
  points: pairs.map(([xMm, yMm]) => point(xMm, yMm)),
  stroke: detail,
});

/** Leads from the pins above and below to a body that reaches `halfMm` from the centre. */
export const leads = (halfMm: number): PrimitiveMark[] => [
  open([0, -PIN_MM], [0, -halfMm]),
  open([0, halfMm], [0, PIN_MM]),
];

/** A shape with one pin above and one below. */
export const twoPin = (halfMm: number, ...marks: readonly PrimitiveMark[]): SymbolShape => ({
  pins: { top, bottom },
  marks: [...leads(halfMm), ...marks],
});
