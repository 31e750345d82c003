import {
  type FontWeight,
  measureTextMm,
  type PathStep,
  type PrimitiveMark,
  type SymbolName,
  symbolMarks,
  wrapText,
} from "../../drawing/index.ts";
import { unbroken } from "../partNote.ts";

/** Lettering of the diagram on A2; on A3 it is set one step smaller in the series (1 : root 2), so that nothing is below 1.8 mm. */
export const DIAGRAM_CAP_MM = { text: 2.55, part: 2.6, number: 2.7 } as const;

export interface LetteringLine {
  readonly text: string;
  readonly capMm: number;
  readonly weight: FontWeight;
  /** Which of the other columns it names, once they are known; measured with two figures until then. */
  readonly cross?: number;
}

/** Base line to base line, in capital heights of the lower line. */
const PITCH_CAPS = 1.42;
const PAD_MM = 0.7;

export const lettered = (
  text: string,
  capMm: number = DIAGRAM_CAP_MM.text,
  weight: FontWeight = 400,
): LetteringLine => ({ text, capMm, weight });

/** A line that names a column: "in 14". */
export const crossLine = (before: string, cross: number): LetteringLine => ({
  ...lettered(`${before} 88`),
  cross,
});

/** Text in lines no wider than asked; long words break. */
export const letteredLines = (text: string, widthMm: number): readonly LetteringLine[] =>
  text === ""
    ? []
    : wrapText(unbroken(text), widthMm, DIAGRAM_CAP_MM.text, 400).map((line) => lettered(line));

/** Base lines below the top of a block, and its height. */
export function baseLines(lines: readonly LetteringLine[]): {
  readonly basesMm: readonly number[];
  readonly heightMm: number;
} {
  let atMm = PAD_MM;
  const basesMm = lines.map(({ capMm }, i) => {
    atMm += i === 0 ? capMm * 1.1 : capMm * PITCH_CAPS + 0.15;
    return atMm;
  });
  const last = lines.at(-1);
  return { basesMm, heightMm: atMm + (last === undefined ? 0 : last.capMm * 0.32) + PAD_MM };
}

export const linesWidthMm = (lines: readonly LetteringLine[]): number =>
  Math.max(0, ...lines.map(({ text, capMm, weight }) => measureTextMm(text, capMm, weight)));

/** How far a symbol reaches to the left and right of its centre. */
export function symbolReachMm(
  symbol: SymbolName,
  sizeRatio: number,
): { readonly leftMm: number; readonly rightMm: number } {
  const xsMm = symbolMarks({ symbol, at: { xMm: 0, yMm: 0 } }).flatMap(xsOf);
  return {
    leftMm: -Math.min(0, ...xsMm) * sizeRatio,
    rightMm: Math.max(0, ...xsMm) * sizeRatio,
  };
}

function xsOf(mark: PrimitiveMark): readonly number[] {
  switch (mark.kind) {
    case "line":
      return [mark.from.xMm, mark.to.xMm];
    case "polyline":
      return mark.points.map(({ xMm }) => xMm);
    case "rect":
      return [mark.area.xMm, mark.area.xMm + mark.area.widthMm];
    case "circle":
      return [mark.centre.xMm - mark.radiusMm, mark.centre.xMm + mark.radiusMm];
    case "path":
      return mark.steps.flatMap((step) => (step.pen === "close" ? [] : stepXs(step)));
    case "text":
      return [];
  }
}

const stepXs = (step: Exclude<PathStep, { readonly pen: "close" }>): readonly number[] =>
  step.pen === "curve" ? [step.to.xMm, step.control1.xMm, step.control2.xMm] : [step.to.xMm];
