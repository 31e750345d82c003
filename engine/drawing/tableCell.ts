import { CAP_MM, LINE_MM } from "./lineWidth.ts";
import { measureTextMm } from "./measureTextMm.ts";
import { area, type Mark, point } from "./scene.ts";
import { SEVERITY_TAG_HEIGHT_MM, severityTag, severityTagWidthMm } from "./severityTag.ts";
import type { TableCell, TableColumn } from "./table.ts";
import { TEXT_STYLE, type TextStyle, textMark } from "./textBlock.ts";
import { wrapText } from "./wrapText.ts";

/** Space between a cell's edge and what is in it. */
export const CELL_PAD_MM = 1.25;
/** From the top of a row to the top of its first line's capitals. */
export const ROW_PAD_MM = 1.9;
/** Under the last base line, room for the tails of letters included. */
const ROW_FOOT_MM = 1.9;
const SWATCH_MM = 9;
const TICK_MM = 4.5;
const WRITE_IN_MM = 6.5;

/** One line of a cell, in the order they stand. */
export interface CellLine {
  readonly text: string;
  readonly style: TextStyle;
  /** Base line to base line from the line before; the first stands on the row's own base line. */
  readonly pitchMm: number;
}

/** What a cell needs: lines of text in a width, or a drawn thing. */
export interface LaidCell {
  readonly lines: readonly CellLine[];
  /** Marks about the cell's own left edge and the row's first base line. */
  readonly drawn: readonly Mark[];
  /** From the row's first base line up, and down. */
  readonly riseMm: number;
  readonly fallMm: number;
  /** Where text begins, from the cell's left edge. */
  readonly textFromMm: number;
}

const EMPTY: LaidCell = { lines: [], drawn: [], riseMm: 0, fallMm: 0, textFromMm: CELL_PAD_MM };

/** Lays one cell into its column's width. */
export function layCell(cell: TableCell, column: TableColumn, widthMm: number): LaidCell {
  if (cell === null) return EMPTY;
  if (typeof cell === "string") return layText(cell, styleOf(column), widthMm);
  switch (cell.kind) {
    case "text": {
      const style = { ...styleOf(column), weight: cell.weight ?? column.weight ?? 400 };
      return layText(cell.text, style, widthMm, cell.note);
    }
    case "wireNumber":
      return layText(cell.text, TEXT_STYLE.wireNumber, widthMm);
    case "wire":
      return layWire(cell, widthMm);
    case "tick":
      return layBox(cell.done ?? false, widthMm, TICK_MM, TICK_MM);
    case "writeIn":
      return layBox(false, widthMm, widthMm - 2 * CELL_PAD_MM, WRITE_IN_MM);
    case "severity":
      return {
        ...EMPTY,
        drawn: severityTag(cell.severity, point(CELL_PAD_MM, -CAP_MM.text - 1.35)),
        riseMm: CAP_MM.text + 1.35,
        fallMm: SEVERITY_TAG_HEIGHT_MM - CAP_MM.text - 1.35,
      };
  }
}

const styleOf = (column: TableColumn): TextStyle => ({
  ...TEXT_STYLE.text,
  weight: column.weight ?? 400,
});

/** The width a cell would like, edges included. */
export function naturalWidthMm(cell: TableCell, column: TableColumn): number {
  const padMm = 2 * CELL_PAD_MM;
  const wide = (text: string, style: TextStyle): number =>
    Math.max(
      ...text.split("\n").map((line) => measureTextMm(line, style.capHeightMm, style.weight)),
    ) + 0.01;
  if (cell === null) return 0;
  if (typeof cell === "string") return padMm + wide(cell, styleOf(column));
  switch (cell.kind) {
    case "text": {
      const style = { ...styleOf(column), weight: cell.weight ?? column.weight ?? 400 };
      return padMm + Math.max(wide(cell.text, style), wide(cell.note ?? "", TEXT_STYLE.fine));
    }
    case "wireNumber":
      return padMm + wide(cell.text, TEXT_STYLE.wireNumber);
    case "wire":
      return (
        padMm +
        SWATCH_MM +
        1.5 +
        Math.max(wide(cell.code, TEXT_STYLE.strong), wide(cell.word, TEXT_STYLE.text))
      );
    case "tick":
      return padMm + TICK_MM;
    case "writeIn":
      return padMm + 14;
    case "severity":
      return padMm + severityTagWidthMm(cell.severity);
  }
}

function layText(text: string, style: TextStyle, widthMm: number, note?: string): LaidCell {
  const innerMm = widthMm - 2 * CELL_PAD_MM;
  const lines = textLines(text, style, innerMm);
  const notes = note === undefined ? [] : textLines(note, TEXT_STYLE.fine, innerMm);
  if (notes[0]) notes[0] = { ...notes[0], pitchMm: CAP_MM.fine + 1.7 };
  return withLines([...lines, ...notes], CELL_PAD_MM, []);
}

const textLines = (text: string, style: TextStyle, widthMm: number): CellLine[] =>
  wrapText(text, widthMm, style.capHeightMm, style.weight).map((line) => ({
    text: line,
    style,
    pitchMm: 1.75 * style.capHeightMm,
  }));

function withLines(lines: CellLine[], textFromMm: number, drawn: Mark[]): LaidCell {
  const downMm = lines.slice(1).reduce((sumMm, line) => sumMm + line.pitchMm, 0);
  return {
    lines,
    drawn,
    riseMm: lines[0]?.style.capHeightMm ?? 0,
    fallMm: downMm + (lines.at(-1)?.style.capHeightMm ?? 0) * 0.2,
    textFromMm,
  };
}

function layWire(cell: Extract<TableCell, { kind: "wire" }>, widthMm: number): LaidCell {
  const textFromMm = CELL_PAD_MM + SWATCH_MM + 1.5;
  const innerMm = widthMm - textFromMm - CELL_PAD_MM;
  const code = textLines(cell.code, TEXT_STYLE.strong, innerMm);
  const word = cell.word === "" ? [] : textLines(cell.word, TEXT_STYLE.text, innerMm);
  const swatch: Mark = {
    kind: "wire",
    points: [
      point(CELL_PAD_MM, -CAP_MM.text / 2),
      point(CELL_PAD_MM + SWATCH_MM, -CAP_MM.text / 2),
    ],
    areaMm2: cell.areaMm2,
    colours: cell.colours,
  };
  return withLines([...code, ...word], textFromMm, [swatch]);
}

/** A box about the middle of the first line, ticked when done. */
function layBox(done: boolean, widthMm: number, boxWidthMm: number, boxHeightMm: number): LaidCell {
  const leftMm = (widthMm - boxWidthMm) / 2;
  const topMm = -CAP_MM.text / 2 - boxHeightMm / 2;
  const drawn: Mark[] = [
    {
      kind: "rect",
      area: area(leftMm, topMm, boxWidthMm, boxHeightMm),
      stroke: { widthMm: LINE_MM.symbol, colour: "ink" },
      fill: "ground",
    },
  ];
  if (done) {
    drawn.push({
      kind: "polyline",
      points: [
        point(leftMm + 1, topMm + 2.4),
        point(leftMm + 1.9, topMm + 3.5),
        point(leftMm + 3.6, topMm + 0.9),
      ],
      stroke: { widthMm: LINE_MM.frame, colour: "ink", cap: "round" },
    });
  }
  return { ...EMPTY, drawn, riseMm: -topMm, fallMm: topMm + boxHeightMm };
}

/** Height of a row of laid cells, and where its first base line stands. */
export function rowMetrics(cells: readonly LaidCell[]): { baseMm: number; heightMm: number } {
  const riseMm = Math.max(CAP_MM.text, ...cells.map((cell) => cell.riseMm));
  const fallMm = Math.max(0.5, ...cells.map((cell) => cell.fallMm));
  return { baseMm: ROW_PAD_MM + riseMm, heightMm: ROW_PAD_MM + riseMm + fallMm + ROW_FOOT_MM };
}

/** A cell's lines as marks, from its left edge and the row's base line. */
export function cellTextMarks(
  cell: LaidCell,
  column: TableColumn,
  leftMm: number,
  widthMm: number,
  baseMm: number,
): Mark[] {
  const align = column.align ?? "start";
  const xMm =
    leftMm + { start: cell.textFromMm, middle: widthMm / 2, end: widthMm - CELL_PAD_MM }[align];
  let yMm = baseMm;
  return cell.lines.map((line, i) => {
    if (i > 0) yMm += line.pitchMm;
    return textMark(line.text, xMm, yMm, line.style, align);
  });
}
