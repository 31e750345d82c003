import type { Block } from "./block.ts";
import { columnWidthsMm } from "./columnWidthsMm.ts";
import { CAP_MM, LINE_MM } from "./lineWidth.ts";
import { measureTextMm } from "./measureTextMm.ts";
import { type Mark, point } from "./scene.ts";
import type { Table, TableGroup, TableRow } from "./table.ts";
import { cellTextMarks, type LaidCell, layCell, rowMetrics } from "./tableCell.ts";
import { TEXT_STYLE, textMark } from "./textBlock.ts";
import { moveMarks } from "./transformMark.ts";
import { wrapText } from "./wrapText.ts";

/**
 * A table as blocks: column headings, then each row. Rows grow with their text; they are never made smaller and never cut by a page, except
 * a row taller than `heightMaxMm`, which goes on under its own line. Headings come again at the top of each page.
 *
 * @param heightMaxMm  the height of the page the rows will be laid into
 */
export function tableBlocks(table: Table, widthMm: number, heightMaxMm: number): Block[] {
  const widthsMm = columnWidthsMm(table, widthMm);
  const heading: Block = { ...headingRow(table, widthsMm, widthMm), keepWithNext: true };
  const blocks = table.groups.flatMap((group) =>
    groupBlocks(table, group, widthsMm, widthMm, heading, heightMaxMm),
  );
  return [
    heading,
    ...blocks.map((block, i) => (i < blocks.length - 1 ? block : { ...block, gapAfterMm: 5 })),
  ];
}

function groupBlocks(
  table: Table,
  group: TableGroup,
  widthsMm: readonly number[],
  widthMm: number,
  heading: Block,
  heightMaxMm: number,
): Block[] {
  const { heading: words, headingNote = "" } = group;
  const title = words === null ? [] : [groupHeading(words, headingNote, widthMm)];
  const again = words === null ? [] : [groupHeading(`${words}, continued`, "", widthMm)];
  const repeatedAbove = [heading, ...again];
  const aboveMm = repeatedAbove.reduce((sumMm, block) => sumMm + block.heightMm, 0);
  const rows = group.rows.flatMap((row) =>
    rowBlocks(table, row, widthsMm, widthMm, heightMaxMm - aboveMm),
  );
  return [
    ...title.map((block) => ({ ...block, keepWithNext: true, repeatedAbove: [heading] })),
    ...rows.map((block) => ({ ...block, repeatedAbove })),
  ];
}

const ruleMark = (yMm: number, widthMm: number, strokeMm: number): Mark => ({
  kind: "line",
  from: point(0, yMm),
  to: point(widthMm, yMm),
  stroke: { widthMm: strokeMm, colour: "ink" },
});

/** Column headings, standing on a heavy line, their last lines level. */
function headingRow(table: Table, widthsMm: readonly number[], widthMm: number): Block {
  const cells = table.columns.map((column, i) =>
    layCell(column.heading, { ...column, weight: 700 }, widthsMm[i]!),
  );
  const fallMm = Math.max(...cells.map((cell) => cell.fallMm));
  const heightMm = 1.5 + CAP_MM.text + fallMm + 1.4;
  const marks = table.columns.flatMap((column, i) => {
    const cell = cells[i]!;
    const leftMm = leftOf(widthsMm, i);
    const baseMm = 1.5 + CAP_MM.text + fallMm - cell.fallMm;
    return cellTextMarks(cell, column, leftMm, widthsMm[i]!, baseMm);
  });
  return { heightMm, marks: [...marks, ruleMark(heightMm, widthMm, LINE_MM.symbol)] };
}

/** Name of a group of rows, with its totals at the right. */
function groupHeading(words: string, note: string, widthMm: number): Block {
  const noteMm = note === "" ? 0 : measureTextMm(note, CAP_MM.text, 600) + 4;
  const lines = wrapText(words, widthMm - noteMm, CAP_MM.part, 700);
  const pitchMm = 1.6 * CAP_MM.part;
  const heightMm = 3 + CAP_MM.part + (lines.length - 1) * pitchMm + 2;
  const marks: Mark[] = [
    ...lines.map((line, i) => textMark(line, 0, 3 + CAP_MM.part + i * pitchMm, TEXT_STYLE.part)),
    ruleMark(heightMm, widthMm, LINE_MM.detail),
  ];
  if (note !== "") {
    const style = { ...TEXT_STYLE.text, weight: 600 as const };
    marks.push(textMark(note, widthMm, 3 + CAP_MM.part, style, "end"));
  }
  return { heightMm, marks };
}

const leftOf = (widthsMm: readonly number[], index: number): number =>
  widthsMm.slice(0, index).reduce((sumMm, each) => sumMm + each, 0);

/** One row, or several where its text is longer than a page. */
function rowBlocks(
  table: Table,
  row: TableRow,
  widthsMm: readonly number[],
  widthMm: number,
  heightMaxMm: number,
): Block[] {
  const laid = table.columns.map((column, i) =>
    layCell(row.cells[column.key] ?? null, column, widthsMm[i]!),
  );
  const pieces = rowMetrics(laid).heightMm <= heightMaxMm ? [laid] : cutRow(laid, heightMaxMm);
  return pieces.map((cells) => {
    const { baseMm, heightMm } = rowMetrics(cells);
    const marks = table.columns.flatMap((column, i) => {
      const leftMm = leftOf(widthsMm, i);
      return [
        ...moveMarks(cells[i]!.drawn, leftMm, baseMm),
        ...cellTextMarks(cells[i]!, column, leftMm, widthsMm[i]!, baseMm),
      ];
    });
    const rule = ruleMark(heightMm, widthMm, LINE_MM.leader);
    return { heightMm, marks: [{ kind: "group", id: row.id, marks: [...marks, rule] }] };
  });
}

/** Cuts every cell's lines after as many as fit, again and again. */
function cutRow(cells: readonly LaidCell[], heightMaxMm: number): LaidCell[][] {
  const pitchMm = Math.max(...cells.flatMap((cell) => cell.lines.map((line) => line.pitchMm)));
  const count = Math.max(1, Math.floor((heightMaxMm - 8) / pitchMm));
  const pieceCount = Math.ceil(Math.max(...cells.map((cell) => cell.lines.length)) / count);
  return Array.from({ length: pieceCount }, (_, piece) =>
    cells.map((cell) => {
      const lines = cell.lines.slice(piece * count, (piece + 1) * count);
      const downMm = lines.slice(1).reduce((sumMm, line) => sumMm + line.pitchMm, 0);
      const drawn = piece === 0 ? cell.drawn : [];
      return { ...cell, lines, drawn, fallMm: downMm + 1 };
    }),
  );
}
