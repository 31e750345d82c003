import {
  area,
  LINE_MM,
  type Mark,
  point,
  type Stroke,
  type SymbolName,
} from "../../drawing/index.ts";
import type { PlacedItem } from "../../layout/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { bare, partOf } from "./crossLinks.ts";
import type { LetteredItem } from "./diagramItems.ts";
import { baseLines, DIAGRAM_CAP_MM, type LetteringLine } from "./diagramLettering.ts";
import {
  CAVITY_RATIO,
  EARTH_RATIO,
  EARTH_TEXT_MM,
  PIN_TEXT_MM,
  SYMBOL_RATIO,
  TERMINAL_TEXT_MM,
  TURNED_TEXT_MM,
  WIRE_TEXT_MM,
  WORDS_TEXT_MM,
} from "./diagramMeasures.ts";
import { feedShiftMm, pinNames, symbolTextMm } from "./partSizes.ts";

export const lead: Stroke = { widthMm: LINE_MM.symbol, colour: "ink" };

/** What an item's marks need beside the item. */
export interface ItemPlace {
  readonly xMm: number;
  readonly item: PlacedItem;
  /** Number of the nth column its lettering names. */
  readonly crossColumn: (nth: number) => number;
  /** Whether the live side of the machine is above: the socket stands there. */
  readonly isBody: (point: string) => boolean;
}

export const upright = (xMm: number, fromMm: number, toMm: number): Mark[] =>
  toMm - fromMm > 1e-6
    ? [{ kind: "line", from: point(xMm, fromMm), to: point(xMm, toMm), stroke: lead }]
    : [];

/** Marks of one item in its place. */
export function itemMarks(
  input: PaperInput,
  { step, lines, turned, symbol }: LetteredItem,
  place: ItemPlace,
): Mark[] {
  const { xMm, item } = place;
  const text = lines[item.boxIndex]!.map((line) => named(line, place));
  const middleMm = (item.topMm + item.bottomMm) / 2;
  switch (step.kind) {
    case "wire": {
      const { wire } = step.link;
      const body: Mark = {
        kind: "wire",
        points: [point(xMm, item.topMm), point(xMm, item.bottomMm)],
        areaMm2: input.design.conductors.get(wire!.id)?.areaMm2 ?? null,
        colours: wire!.colour ?? null,
      };
      return [body, ...wireText(text, turned[item.boxIndex]!, xMm, item)];
    }
    case "part":
      return [
        ...upright(xMm, item.topMm, middleMm - PIN_REACH_MM),
        ...upright(xMm, middleMm + PIN_REACH_MM, item.bottomMm),
        ...partMarks(step, symbol!, xMm, middleMm),
        ...besideText(text, xMm + symbolTextMm(symbol!), item.letteringTopsMm[0]!),
      ];
    case "cavity":
      return [
        {
          kind: "group",
          id: step.pinAbove,
          of: "pin",
          marks: [
            {
              kind: "symbol",
              symbol: "plugAndSocket",
              at: point(xMm, middleMm),
              turnDeg: step.pinAbove.endsWith("s") ? 0 : 180,
              sizeRatio: CAVITY_RATIO,
            },
            ...besideText(text, xMm + cavityTextMm, item.letteringTopsMm[0]!),
          ],
        },
      ];
    case "earth":
      return earthMarks(text, place.isBody(step.point), xMm, item.topMm);
    case "terminal":
      return terminalMarks(text, xMm, item.topMm);
    case "head":
      return [
        ...upright(xMm, item.topMm + 1.2, item.bottomMm),
        dot(xMm, item.topMm + 1.2),
        ...besideText(text, xMm + WORDS_TEXT_MM, item.topMm),
      ];
    case "words":
      return [
        ...upright(xMm, item.topMm, step.way === "from" ? item.bottomMm : item.topMm + 3),
        arrowDown(xMm, item.topMm + 4.5),
        ...besideText(text, xMm + WORDS_TEXT_MM, item.topMm),
      ];
  }
}

/** From the middle of a part's symbol to its pins. */
const PIN_REACH_MM = 7.5 * SYMBOL_RATIO;

const cavityTextMm = 2 * CAVITY_RATIO + 1;

/** A line that names a column with the column's number in it. */
const named = (line: LetteringLine, { crossColumn }: ItemPlace): LetteringLine =>
  line.cross === undefined
    ? line
    : { ...line, text: line.text.replace("88", String(crossColumn(line.cross))) };

export const textMark = (
  { text, capMm, weight }: LetteringLine,
  xMm: number,
  yMm: number,
  anchor: "start" | "middle" | "end" = "start",
): Mark => ({
  kind: "text",
  text,
  at: point(xMm, yMm),
  capHeightMm: capMm,
  weight,
  anchor,
  colour: "ink",
});

const besideText = (lines: readonly LetteringLine[], xMm: number, topMm: number): Mark[] => {
  const { basesMm } = baseLines(lines);
  return lines.map((line, i) => textMark(line, xMm, topMm + basesMm[i]!));
};

function wireText(
  lines: readonly LetteringLine[],
  isTurned: boolean,
  xMm: number,
  { letteringTopsMm, topMm, bottomMm }: PlacedItem,
): Mark[] {
  if (!isTurned) {
    return letteringTopsMm.flatMap((atMm) => besideText(lines, xMm + WIRE_TEXT_MM, atMm));
  }
  const { basesMm } = baseLines(lines);
  const pieceMm = (bottomMm - topMm) / letteringTopsMm.length;
  return letteringTopsMm.flatMap((_, k) =>
    lines.map((line, i): Mark => {
      const yMm = topMm + (k + 0.5) * pieceMm;
      const mark = textMark(line, xMm + TURNED_TEXT_MM + basesMm[i]!, yMm, "middle");
      return { ...mark, turnDeg: -90 } as Mark;
    }),
  );
}

function partMarks(
  step: LetteredItem["step"] & { readonly kind: "part" },
  symbol: SymbolName,
  xMm: number,
  middleMm: number,
): Mark[] {
  const isTurned =
    ["diode", "rectifier", "battery"].includes(partOf(step.link).kind) &&
    step.pinAbove !== step.link.pinA;
  const placement = { symbol, turnDeg: isTurned ? 180 : 0, sizeRatio: SYMBOL_RATIO } as const;
  const offsetMm = feedShiftMm(symbol);
  const names = pinNames(step).length > 0 ? [bare(step.pinAbove), bare(step.pinBelow)] : [];
  const capMm = DIAGRAM_CAP_MM.text;
  const basesMm = [middleMm - 4 * SYMBOL_RATIO - 0.6, middleMm + 4 * SYMBOL_RATIO + 0.6 + capMm];
  return [
    { kind: "symbol", at: point(xMm + offsetMm, middleMm), ...placement },
    ...names.map((name, i): Mark => {
      const lettering = { text: name, capMm, weight: 400 } as const;
      const marks = [textMark(lettering, xMm - PIN_TEXT_MM, basesMm[i]!, "end")];
      const id = i === 0 ? step.pinAbove : step.pinBelow;
      return { kind: "group", id, of: "pin", marks };
    }),
  ];
}

function earthMarks(
  lines: readonly LetteringLine[],
  isBody: boolean,
  xMm: number,
  topMm: number,
): Mark[] {
  return [
    {
      kind: "symbol",
      symbol: isBody ? "frame" : "earthWire",
      at: point(xMm, topMm + 3.6),
      sizeRatio: EARTH_RATIO,
    },
    ...underText(lines, xMm, topMm + EARTH_TEXT_MM),
  ];
}

const underText = (lines: readonly LetteringLine[], xMm: number, topMm: number): Mark[] => {
  const { basesMm } = baseLines(lines);
  return lines.map((line, i) => textMark(line, xMm, topMm + basesMm[i]!, "middle"));
};

/** A terminal: a small open square at the end of the line. */
const terminalMarks = (lines: readonly LetteringLine[], xMm: number, topMm: number): Mark[] => [
  ...upright(xMm, topMm, topMm + 1.2),
  { kind: "rect", area: area(xMm - 1.1, topMm + 1.2, 2.2, 2.2), stroke: lead, fill: "ground" },
  ...underText(lines, xMm, topMm + TERMINAL_TEXT_MM),
];

export const dot = (xMm: number, yMm: number): Mark => ({
  kind: "circle",
  centre: point(xMm, yMm),
  radiusMm: 1,
  fill: "ink",
});

const arrowDown = (xMm: number, yMm: number): Mark => ({
  kind: "polyline",
  closed: true,
  points: [point(xMm, yMm), point(xMm - 0.9, yMm - 2), point(xMm + 0.9, yMm - 2)],
  fill: "ink",
});
