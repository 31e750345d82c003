import { contactTable } from "../contactTable.ts";
import { CAP_MM } from "../lineWidth.ts";
import { measureTextMm } from "../measureTextMm.ts";
import { wrapText } from "../wrapText.ts";
import type {
  CircuitStep,
  ColumnEnd,
  ColumnStart,
  PartStep,
  WireStep,
} from "./circuitSheetInput.ts";
import { pinShiftMm } from "./pinShiftMm.ts";

/** Text beside the line is wrapped to this. */
export const SIDE_TEXT_MM = 34;
/** From the line to the text at its right. */
export const SIDE_GAP_MM = 3.5;
const SYMBOL_MM = 15;
export const JOINT_MM = 8;

/** What a step takes of its column: height, and reach to the left and right of the line. */
export interface StepSize {
  readonly heightMm: number;
  readonly leftMm: number;
  readonly rightMm: number;
}

export interface SideLine {
  readonly text: string;
  readonly capHeightMm: number;
  readonly weight: 400 | 700 | 800;
  /** From the base line before, or from the top of the first. */
  readonly downMm: number;
  /** Goes on in the lettering of text, on the same base line. */
  readonly tail?: string | undefined;
}

const wrapped = (
  text: string,
  capHeightMm: number,
  weight: 400 | 700 | 800,
  firstDownMm: number,
): SideLine[] =>
  text === ""
    ? []
    : wrapText(text, SIDE_TEXT_MM, capHeightMm, weight).map((line, i) => ({
        text: line,
        capHeightMm,
        weight,
        downMm: i === 0 ? firstDownMm : 1.7 * capHeightMm,
      }));

/** Lines beside a step, top to bottom. */
export function sideLines(step: CircuitStep): SideLine[] {
  switch (step.kind) {
    case "joint":
      return [];
    case "wire":
      return [
        ...numberAndSize(step),
        ...wrapped(`${step.code} ${step.word}`.trim(), CAP_MM.text, 700, 4.4),
      ];
    case "part":
      return [
        ...wrapped(step.name, CAP_MM.part, 700, CAP_MM.part),
        ...wrapped(step.note, CAP_MM.text, 400, 4.4),
        ...wrapped(step.crossNote ?? "", CAP_MM.text, 700, 4.4),
      ];
    case "connector":
      return [
        ...wrapped(step.name, CAP_MM.part, 700, CAP_MM.part),
        ...wrapped(step.place, CAP_MM.text, 400, 4.4),
      ];
  }
}

/** The size beside the number where both stand on one line, else under it. */
function numberAndSize({ number, size }: WireStep): SideLine[] {
  const lines = wrapped(number, CAP_MM.wireNumber, 800, CAP_MM.wireNumber);
  const [first] = lines;
  if (lines.length !== 1 || sideLineMm({ ...first!, tail: size }) > SIDE_TEXT_MM) {
    return [...lines, ...wrapped(size, CAP_MM.text, 400, 4.4)];
  }
  return [{ ...first!, tail: size }];
}

/** From a line's own lettering to its tail. */
export const TAIL_GAP_MM = 2;

function sideLineMm({ text, capHeightMm, weight, tail }: SideLine): number {
  const ownMm = measureTextMm(text, capHeightMm, weight);
  return tail === undefined ? ownMm : ownMm + TAIL_GAP_MM + measureTextMm(tail, CAP_MM.text, 400);
}

export const sideHeightMm = (lines: readonly SideLine[]): number =>
  lines.reduce((sumMm, line) => sumMm + line.downMm, 0) + 0.8;

const sideWidthMm = (lines: readonly SideLine[]): number => Math.max(0, ...lines.map(sideLineMm));

export function stepSize(step: CircuitStep): StepSize {
  const lines = sideLines(step);
  const textMm = sideHeightMm(lines);
  const gapMm = SIDE_GAP_MM + (step.kind === "part" ? 3 : 0);
  const rightMm = lines.length === 0 ? 3 : gapMm + sideWidthMm(lines);
  if (step.kind === "joint") {
    const nameMm = 3 + measureTextMm(step.name, CAP_MM.fine, 700);
    const [leftMm, rightMm] = step.side === "right" ? [3, nameMm] : [nameMm, 3];
    return { heightMm: JOINT_MM, leftMm, rightMm };
  }
  if (step.kind === "wire") {
    const expectedMm = step.expected === undefined ? 0 : EXPECTED_HEIGHT_MM;
    return {
      heightMm: textMm + 2.5 + expectedMm,
      leftMm: 3,
      rightMm: Math.max(rightMm, expectedWidthMm(step)),
    };
  }
  if (step.kind === "connector") {
    return { heightMm: Math.max(SYMBOL_MM, textMm + 1), leftMm: 3, rightMm };
  }
  const table = step.contacts ? contactTable(step.contacts) : null;
  return {
    heightMm: Math.max(SYMBOL_MM, textMm + 1 + (table ? table.heightMm + TABLE_GAP_MM : 0)),
    leftMm: Math.max(5.5, pinsMm(step) + 3),
    rightMm: Math.max(rightMm, table ? gapMm + table.widthMm : 0),
  };
}

const pinsMm = (step: PartStep): number =>
  pinShiftMm(step) +
  Math.max(
    ...[step.pinAbove, step.pinBelow].map((pin) => measureTextMm(pin ?? "", CAP_MM.fine, 700)),
  );

/** From the words of a switch to the contact table under them. */
export const TABLE_GAP_MM = 1;

/** At the foot of a wire, for the volts to be read there. */
export const EXPECTED_HEIGHT_MM = 4.6;
/** From the line to the volts at its right. */
export const EXPECTED_GAP_MM = 4.6;

const expectedWidthMm = ({ expected }: WireStep): number =>
  expected === undefined ? 3 : EXPECTED_GAP_MM + measureTextMm(expected, CAP_MM.text, 700);

/** Clear space between a rail and what is not joined to it. */
export const RAIL_CLEAR_MM = 4;

/** Room at the head of a column for its arrow and where it comes from. */
export function startSize(start: ColumnStart): StepSize {
  if (start.kind !== "reference") return { heightMm: 3, leftMm: 3, rightMm: 3 };
  const size = referenceSize(start.label);
  return { ...size, heightMm: size.heightMm + RAIL_CLEAR_MM };
}

export function endSize(end: ColumnEnd): StepSize {
  if (end.kind === "frame") {
    const size = referenceSize(end.label);
    return {
      leftMm: 5.5,
      rightMm: size.rightMm + 1,
      heightMm: Math.max(6, size.heightMm) + RAIL_CLEAR_MM,
    };
  }
  if (end.kind !== "reference") return { heightMm: 3, leftMm: 3, rightMm: 3 };
  const size = referenceSize(end.label);
  return { ...size, heightMm: size.heightMm + RAIL_CLEAR_MM };
}

export const REFERENCE_TEXT_MM = 34;

export const referenceLines = (label: string): string[] =>
  wrapText(label, REFERENCE_TEXT_MM, CAP_MM.text, 400);

function referenceSize(label: string): StepSize {
  const lines = referenceLines(label);
  const widthMm = Math.max(...lines.map((line) => measureTextMm(line, CAP_MM.text, 400)));
  return { heightMm: 6 + 4.2 * (lines.length - 1), leftMm: 4, rightMm: 4 + widthMm };
}
