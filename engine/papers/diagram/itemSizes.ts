import type { SymbolName } from "../../drawing/index.ts";
import type { Job } from "../../job/index.ts";
import type { LadderBox } from "../../layout/index.ts";
import { printNumber } from "../../units/index.ts";
import type { Link } from "../circuit/machineGraph.ts";
import { colourCode } from "../colourText.ts";
import type { PaperInput } from "../paperInput.ts";
import { numberOf } from "../wireRows.ts";
import type { PartFunctions } from "./crossLinks.ts";
import {
  baseLines,
  crossLine,
  DIAGRAM_CAP_MM,
  type LetteringLine,
  lettered,
  letteredLines,
  linesWidthMm,
  symbolReachMm,
} from "./diagramLettering.ts";
import {
  CAVITY_HEIGHT_MM,
  CAVITY_RATIO,
  CODE_WIDTH_MM,
  EARTH_TEXT_MM,
  FOOT_LINES,
  LINE_PITCH_MM,
  NAME_WIDTH_MM,
  SLIM_WIDTH_MM,
  TERMINAL_TEXT_MM,
  TURNED_TEXT_MM,
  WIRE_TEXT_MM,
  WORDS_TEXT_MM,
} from "./diagramMeasures.ts";
import type { DiagramStep } from "./diagramStep.ts";
import { partSizes } from "./partSizes.ts";

export type Sized = readonly [lines: readonly LetteringLine[], box: LadderBox, way?: "turned"];

export function sizedLines(
  input: PaperInput,
  functions: PartFunctions,
  step: DiagramStep,
  symbol: SymbolName | undefined,
): Sized[] {
  switch (step.kind) {
    case "wire":
      return wireSizes(input, step.link);
    case "part":
      return partSizes(functions, step, symbol!);
    case "cavity": {
      const lines = [lettered(cavityName(step.link), DIAGRAM_CAP_MM.text, 700)];
      const { leftMm, rightMm } = symbolReachMm("plugAndSocket", CAVITY_RATIO);
      const box = { heightMm: CAVITY_HEIGHT_MM, leftMm: leftMm + 0.5, rightMm: 0 };
      return [[lines, { ...box, rightMm: rightMm + 1 + linesWidthMm(lines) }]];
    }
    case "earth":
      return [underneath(earthName(step.point, step.by), EARTH_TEXT_MM, 2.6)];
    case "terminal":
      return [underneath(step.point.split("."), TERMINAL_TEXT_MM, 2)];
    case "head":
      return headSizes(input.job, step.point);
    case "words":
      return [wordsSize(step)];
  }
}

export const beside = (
  lines: readonly LetteringLine[],
  leftMm: number,
  textMm: number,
  heightMinMm = 0,
): Sized => [
  lines,
  {
    leftMm,
    rightMm: textMm + linesWidthMm(lines),
    heightMm: Math.max(heightMinMm, baseLines(lines).heightMm),
  },
];

/** Number, code, size and words; the least is two lines. */
function wireSizes({ job, design }: PaperInput, { wire }: Link): Sized[] {
  const area = design.conductors.get(wire!.id)?.areaMm2;
  const code = colourCode(wire!.colour, job.colours.letters);
  const size = area === undefined ? "size ?" : printNumber(area, area < 10 ? 2 : 0);
  const words =
    wire!.colour === undefined
      ? []
      : [wire!.colour.main, wire!.colour.tracer, wire!.colour.secondTracer].flatMap(
          (word) => word ?? [],
        );
  const number = lettered(numberOf(wire!), DIAGRAM_CAP_MM.number, 800);
  const bold = (text: string): LetteringLine => lettered(text, DIAGRAM_CAP_MM.text, 700);
  const stacked = [number, ...codeLines(code).map(bold), lettered(size)];
  return [
    beside([...stacked, ...words.map((word) => lettered(word))], 1.4, WIRE_TEXT_MM),
    beside(stacked, 1.4, WIRE_TEXT_MM),
    turned([number, lettered(`${code}\u2002${size}\u2002${words.join(", ")}`.trim())]),
    turned([number, lettered(`${code}\u2002${size}`)]),
    beside([number, bold(`${code} ${size}`)], 1.4, WIRE_TEXT_MM),
  ];
}

/** Lettering along the line, read from the right. */
function turned(lines: readonly LetteringLine[]): Sized {
  const { heightMm } = baseLines(lines);
  const box = {
    leftMm: 1.4,
    rightMm: TURNED_TEXT_MM + heightMm,
    heightMm: linesWidthMm(lines) + 2,
  };
  return [lines, box, "turned"];
}

/** A long code breaks after a stroke. */
function codeLines(code: string): readonly string[] {
  const fits = linesWidthMm([lettered(code, DIAGRAM_CAP_MM.text, 700)]) <= CODE_WIDTH_MM;
  const cut = code.lastIndexOf("/") + 1;
  return fits || cut === 0 ? [code] : [code.slice(0, cut), code.slice(cut)];
}

function headSizes(job: Job, point: string): Sized[] {
  const joint = job.joints.find(({ id }) => id === point);
  const body = job.bodies.find(({ id }) => id === point);
  const name = joint?.name ?? body?.name ?? "";
  const id = lettered(point.replace(".", " "), DIAGRAM_CAP_MM.part, 700);
  const broad = [id, ...letteredLines(name, NAME_WIDTH_MM)];
  const slim = [id, ...letteredLines(name, SLIM_WIDTH_MM)];
  // No narrower than its longest word, which would be broken inside; on a sheet with no room left it is.
  const wordMm = linesWidthMm(name.split(/[ -]/).map((word) => lettered(word)));
  const whole = [id, ...letteredLines(name, Math.max(SLIM_WIDTH_MM, wordMm))];
  return [broad, whole, slim].map((lines) => beside(lines, 2, WORDS_TEXT_MM));
}

const wordsSize = ({ way, what }: DiagramStep & { readonly kind: "words" }): Sized =>
  beside([lettered(`${way} ${what}`), crossLine("column", 0)], 2, WORDS_TEXT_MM, 7);

/** Lettering under a sign, always with room for the same lines, so that signs stand level. */
function underneath(words: readonly string[], textMm: number, halfMinMm: number): Sized {
  const lines = words
    .slice(0, FOOT_LINES)
    .map((word, i) => lettered(word, DIAGRAM_CAP_MM.text, i === 0 ? 700 : 400));
  const halfMm = Math.max(halfMinMm, linesWidthMm(lines) / 2);
  const heightMm = textMm + FOOT_LINES * LINE_PITCH_MM;
  return [lines, { leftMm: halfMm, rightMm: halfMm, heightMm }];
}

/** "FR LOOM": the body and the point of it a wire is bolted to. */
function earthName(point: string, by: Link): readonly string[] {
  const pin = by.a === point ? by.pinA : by.pinB;
  return pin.startsWith(`${point}.`) && by.kind === "wire" && !point.includes(".")
    ? pin.split(".")
    : point.split(".");
}

export const cavityName = ({ pinA }: Link): string => pinA.slice(0, -1);
