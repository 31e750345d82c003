import { contactTable } from "../contactTable.ts";
import { CAP_MM, LINE_MM } from "../lineWidth.ts";
import { measureTextMm } from "../measureTextMm.ts";
import { type Mark, point, type Stroke } from "../scene.ts";
import { symbolPins } from "../symbolMarks.ts";
import { TEXT_STYLE, textMark } from "../textBlock.ts";
import { moveMarks } from "../transformMark.ts";
import type { ConnectorStep, PartStep, WireStep } from "./circuitSheetInput.ts";
import { endPins, pinShiftMm } from "./pinShiftMm.ts";
import {
  EXPECTED_GAP_MM,
  EXPECTED_HEIGHT_MM,
  SIDE_GAP_MM,
  type SideLine,
  sideHeightMm,
  sideLines,
  TABLE_GAP_MM,
  TAIL_GAP_MM,
} from "./stepSize.ts";
import type { Placed } from "./stretchedLevels.ts";

const SYMBOL_HALF_MM = 7.5;
/** A long wire says what it is again after this length. */
const REPEAT_MM = 60;
const lead: Stroke = { widthMm: LINE_MM.symbol, colour: "ink" };

export const leadMark = (xMm: number, fromMm: number, toMm: number): Mark[] =>
  toMm - fromMm > 1e-6
    ? [{ kind: "line", from: point(xMm, fromMm), to: point(xMm, toMm), stroke: lead }]
    : [];

function sideMarks(lines: readonly SideLine[], xMm: number, topMm: number): Mark[] {
  let yMm = topMm;
  return lines.flatMap(({ text, capHeightMm, weight, downMm, tail }) => {
    yMm += downMm;
    const own = textMark(text, xMm, yMm, { capHeightMm, weight, colour: "ink" });
    if (tail === undefined) return [own];
    const tailMm = xMm + measureTextMm(text, capHeightMm, weight) + TAIL_GAP_MM;
    return [own, textMark(tail, tailMm, yMm, TEXT_STYLE.text)];
  });
}

/** A piece of wire in its colours, thin line at both ends, its number, colour and size beside it. */
export function wireStepMarks(step: WireStep, xMm: number, place: Placed): Mark[] {
  const lines = sideLines(step);
  const textMm = sideHeightMm(lines);
  const expectedMm = step.expected === undefined ? 0 : EXPECTED_HEIGHT_MM;
  const lengthMm = place.bottomMm - place.topMm - expectedMm;
  const roomCount = Math.max(1, Math.floor(lengthMm / (textMm + 2)));
  const labelCount = Math.min(roomCount, 1 + Math.floor(lengthMm / REPEAT_MM));
  const labels = Array.from({ length: labelCount }, (_, i) => {
    const middleMm = place.topMm + ((i + 0.5) * lengthMm) / labelCount;
    return sideMarks(lines, xMm + SIDE_GAP_MM, middleMm - textMm / 2);
  });
  const wire: Mark = {
    kind: "wire",
    points: [point(xMm, place.topMm + 1), point(xMm, place.bottomMm - 1)],
    areaMm2: step.areaMm2,
    colours: step.colours,
  };
  const marks: Mark[] = [...leadMark(xMm, place.topMm, place.bottomMm), wire, ...labels.flat()];
  if (step.expected !== undefined) {
    marks.push(...testPoint(step.expected, xMm, place.bottomMm - 3.5));
  }
  return [
    { kind: "group", id: step.id, of: "wire", name: `wire ${step.number}, ${step.word}`, marks },
  ];
}

/** An open ring on the wire, and the volts to be read there at its right. */
function testPoint(expected: string, xMm: number, yMm: number): Mark[] {
  return [
    {
      kind: "line",
      from: point(xMm + 1.4, yMm),
      to: point(xMm + EXPECTED_GAP_MM - 0.8, yMm),
      stroke: { widthMm: LINE_MM.leader, colour: "ink" },
    },
    {
      kind: "circle",
      centre: point(xMm, yMm),
      radiusMm: 1.3,
      stroke: lead,
      fill: "ground",
    },
    textMark(expected, xMm + EXPECTED_GAP_MM, yMm + CAP_MM.text / 2, TEXT_STYLE.strong),
  ];
}

/** A symbol in the middle of its place, name and note at the right, contact table under them. */
export function partStepMarks(step: PartStep, xMm: number, place: Placed): Mark[] {
  const middleMm = (place.topMm + place.bottomMm) / 2;
  const symbol = {
    kind: "symbol",
    symbol: step.symbol,
    at: point(xMm, middleMm),
    turnDeg: step.isTurned ? 180 : 0,
  } as const;
  const pins = symbolPins(symbol);
  const [above, below] = step.symbolPins ?? endPins(pins);
  const lines = sideLines(step);
  const table = step.contacts ? contactTable(step.contacts) : null;
  const textMm = sideHeightMm(lines);
  const blockMm = textMm + (table === null ? 0 : TABLE_GAP_MM + table.heightMm);
  const sideXMm = xMm + SIDE_GAP_MM + 3;
  const blockTopMm = middleMm - blockMm / 2;
  const marks: Mark[] = [
    ...leadMark(xMm, place.topMm, middleMm - SYMBOL_HALF_MM),
    ...leadMark(xMm, middleMm + SYMBOL_HALF_MM, place.bottomMm),
    symbol,
    ...[above, below].flatMap((pin): Mark[] => jog(xMm, pins[pin]?.xMm, pins[pin]?.yMm)),
    ...sideMarks(lines, sideXMm, blockTopMm),
    ...(table === null ? [] : moveMarks(table.marks, sideXMm, blockTopMm + textMm + TABLE_GAP_MM)),
    ...pinText(step, step.pinAbove, xMm - pinShiftMm(step), middleMm - 5),
    ...pinText(step, step.pinBelow, xMm - pinShiftMm(step), middleMm + 5 + CAP_MM.fine),
  ];
  return [{ kind: "group", id: step.id, of: "part", name: step.name, marks }];
}

/** From the line across to a pin that stands beside it. */
function jog(xMm: number, pinXMm: number | undefined, pinYMm: number | undefined): Mark[] {
  if (pinXMm === undefined || pinYMm === undefined) {
    throw new Error("a part of a circuit sheet uses a pin its symbol does not have");
  }
  if (Math.abs(pinXMm - xMm) < 1e-6) return [];
  return [
    {
      kind: "line",
      from: point(xMm, pinYMm),
      to: point(pinXMm, pinYMm),
      stroke: { ...lead, cap: "round" },
    },
  ];
}

const pinText = ({ id }: PartStep, pin: string | undefined, xMm: number, yMm: number): Mark[] => {
  if (pin === undefined) return [];
  const style = { ...TEXT_STYLE.fine, colour: "ink", weight: 700 } as const;
  const marks = [textMark(pin, xMm - 1.2, yMm, style, "end")];
  return [{ kind: "group", id: `${id}.${pin}`, of: "pin", marks }];
};

export function connectorStepMarks(step: ConnectorStep, xMm: number, place: Placed): Mark[] {
  const middleMm = (place.topMm + place.bottomMm) / 2;
  const lines = sideLines(step);
  const marks: Mark[] = [
    ...leadMark(xMm, place.topMm, middleMm - SYMBOL_HALF_MM),
    ...leadMark(xMm, middleMm + SYMBOL_HALF_MM, place.bottomMm),
    {
      kind: "symbol",
      symbol: "plugAndSocket",
      at: point(xMm, middleMm),
      turnDeg: step.liveSide === "above" ? 0 : 180,
    },
    ...sideMarks(lines, xMm + SIDE_GAP_MM, middleMm - sideHeightMm(lines) / 2),
  ];
  const inner: Mark = { kind: "group", id: step.id, of: "pin", name: step.name, marks };
  return [{ kind: "group", id: step.connector, of: "connector", marks: [inner] }];
}
