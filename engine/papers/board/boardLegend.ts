import {
  area,
  type Block,
  CAP_MM,
  LINE_MM,
  type Mark,
  point,
  TEXT_STYLE,
  textMark,
  wrapText,
} from "../../drawing/index.ts";

/** A sign of the board and what it means. */
export interface LegendRow {
  readonly sign: readonly Mark[];
  readonly words: string;
}

const SIGN_MM = 20;
const MID_MM = 3;
const ink = (widthMm: number) => ({ widthMm, colour: "ink" }) as const;

const bar = (xMm: number, reachMm: number, widthMm: number): Mark => ({
  kind: "line",
  from: point(xMm, MID_MM - reachMm),
  to: point(xMm, MID_MM + reachMm),
  stroke: ink(widthMm),
});

const level = (
  fromMm: number,
  toMm: number,
  widthMm: number,
  colour: "ink" | "ground" | "pale",
): Mark => ({
  kind: "line",
  from: point(fromMm, MID_MM),
  to: point(toMm, MID_MM),
  stroke: { widthMm, colour },
});

export const LEGEND: readonly LegendRow[] = [
  {
    words: "peg; the heavy ones have a number, letters stand between",
    sign: [
      {
        kind: "circle",
        centre: point(9, MID_MM),
        radiusMm: 2.5,
        stroke: ink(LINE_MM.frame),
        fill: "ground",
      },
      { kind: "circle", centre: point(9, MID_MM), radiusMm: 0.5, fill: "ink" },
    ],
  },
  {
    words: "loom as thick as it lies; the middle line is what is measured",
    sign: [
      level(0, 18, 5, "ink"),
      level(0, 18, 4, "ground"),
      {
        kind: "line",
        from: point(0, MID_MM),
        to: point(18, MID_MM),
        stroke: { ...ink(LINE_MM.leader), dashMm: [6, 1.5, 0.8, 1.5] },
      },
    ],
  },
  {
    words: "covering starts or stops; under it the loom is tinted",
    sign: [
      level(0, 18, 5, "ink"),
      level(0, 9, 4, "ground"),
      level(9, 18, 4, "pale"),
      bar(9, 4, LINE_MM.frame),
    ],
  },
  {
    words: "clip on the machine",
    sign: [
      level(0, 18, 4, "ink"),
      level(0, 18, 3, "ground"),
      { kind: "rect", area: area(7.4, MID_MM - 3, 3.2, 6), stroke: ink(LINE_MM.detail) },
    ],
  },
  {
    words: "joint, its middle in the middle of the box",
    sign: [
      level(0, 18, 4, "ink"),
      level(0, 18, 3, "ground"),
      {
        kind: "rect",
        area: area(4, MID_MM - 2.5, 10, 5),
        stroke: ink(LINE_MM.symbol),
        fill: "ground",
      },
      textMark("J1", 9, MID_MM + CAP_MM.text / 2, TEXT_STYLE.strong, "middle"),
    ],
  },
  {
    words: "fold the machine does not have",
    sign: [-2.5, 2.5].map((off) => ({
      kind: "line",
      from: point(0, MID_MM + off),
      to: point(18, MID_MM + off),
      stroke: { widthMm: LINE_MM.symbol, colour: "copper", dashMm: [3, 2] },
    })),
  },
];

export function legendRow({ sign, words }: LegendRow, widthMm: number): Block {
  const lines = wrapText(words, widthMm - SIGN_MM - 3, CAP_MM.text, 400);
  return {
    heightMm: Math.max(6.4, 4.2 * lines.length + 1),
    marks: [
      ...sign,
      ...lines.map((line, i) => textMark(line, SIGN_MM + 3, 4.3 + 4.2 * i, TEXT_STYLE.text)),
    ],
  };
}
