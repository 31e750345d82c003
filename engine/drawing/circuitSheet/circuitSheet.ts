import { CAP_MM, LINE_MM } from "../lineWidth.ts";
import { measureTextMm } from "../measureTextMm.ts";
import { type AreaMm, type Mark, point } from "../scene.ts";
import { TEXT_STYLE, textMark } from "../textBlock.ts";
import { wrapText } from "../wrapText.ts";
import type { CircuitColumn, CircuitSheetInput } from "./circuitSheetInput.ts";
import { columnLevels } from "./columnLevels.ts";
import { columnMarks } from "./columnMarks.ts";
import {
  COLUMN_GAP_MM,
  columnPages,
  columnWidthMm,
  columnWidths,
  type JointNotes,
  meetsJoint,
} from "./columnPages.ts";
import { columnsToFit } from "./columnsToFit.ts";
import { crossReferenced } from "./crossReferenced.ts";
import { type PlacedColumn, stretchedLevels } from "./stretchedLevels.ts";
import { jointNotes, wordedColumns } from "./wordedColumns.ts";

export interface CircuitSheetDrawing {
  /** Marks of each page, in place in the area. */
  readonly pages: readonly (readonly Mark[])[];
  /** False where something is wider or taller than the area: larger paper is needed. */
  readonly fits: boolean;
}

const RAIL_FOOT_MM = 8;
const LABEL_PITCH_MM = 4.4;
/** Columns are drawn out to the rails by no more than this. */
const STRETCH_MAX = 1.5;

/**
 * A circuit from feed to earth: rails above and below, one column a current path, every wire with number, colour and size beside it, every
 * break with connector and cavity, every switch at rest with its contact table. Columns that do not fit beside each other go to further pages;
 * a path longer than the page goes on in the next column, told at both ends.
 */
export function circuitSheet(input: CircuitSheetInput, area: AreaMm): CircuitSheetDrawing {
  if (input.columns.length === 0) return { pages: [], fits: true };
  const railsMaxMm = area.heightMm - railHeadMm(input, area) - RAIL_FOOT_MM;
  const fitted = columnsToFit(crossReferenced(input.columns, false), railsMaxMm, area.widthMm);
  const notes = jointNotes(fitted.columns);
  const columns = crossReferenced(wordedColumns(fitted.columns), true);
  const pages = columnPages(columns, notes, area.widthMm);
  const fits =
    fitted.fits && columns.every((column) => columnWidthMm(column, notes) <= area.widthMm);
  return {
    pages: pages.map(({ from, to }) =>
      pageMarks(input, columns.slice(from, to), from, notes, area, railsMaxMm),
    ),
    fits,
  };
}

const feedLines = (input: CircuitSheetInput, area: AreaMm): string[] =>
  wrapText(input.feedLabel, area.widthMm, CAP_MM.text, 700);

const railHeadMm = (input: CircuitSheetInput, area: AreaMm): number =>
  2 + feedLines(input, area).length * LABEL_PITCH_MM;

function pageMarks(
  input: CircuitSheetInput,
  columns: readonly CircuitColumn[],
  firstIndex: number,
  notes: JointNotes,
  area: AreaMm,
  railsMaxMm: number,
): Mark[] {
  const levels = columnLevels(columns)!;
  const naturalMm = Math.max(...levels.map(({ bottomMm }) => bottomMm));
  const railsMm = Math.max(naturalMm, Math.min(railsMaxMm, naturalMm * STRETCH_MAX));
  const placed = stretchedLevels(columns, levels, railsMm);
  const feedMm = area.yMm + railHeadMm(input, area);
  const earthMm = feedMm + railsMm;
  const widths = columns.map((column) => columnWidths(column, notes));
  const usedMm = widths.reduce(
    (sumMm, [left, right]) => sumMm + left + right + COLUMN_GAP_MM,
    -COLUMN_GAP_MM,
  );
  const spareMm = Math.min(12, Math.max(0, (area.widthMm - usedMm) / Math.max(1, columns.length)));
  const xsMm: number[] = [];
  let leftMm = area.xMm;
  for (const [left, right] of widths) {
    xsMm.push(leftMm + left);
    leftMm += left + right + COLUMN_GAP_MM + spareMm;
  }
  const railEndMm = Math.min(area.xMm + area.widthMm, leftMm - COLUMN_GAP_MM - spareMm);
  return [
    ...(columns.some(({ start }) => start.kind === "feed")
      ? feedRail(feedLines(input, area), area.xMm, railEndMm, feedMm)
      : []),
    ...(columns.some(({ end }) => end.kind === "earth")
      ? earthRail(input.earthLabel, area, railEndMm, earthMm, xsMm)
      : []),
    ...columns.flatMap((column, i) => [
      ...columnMarks(
        column,
        shiftedColumn(placed[i]!, feedMm),
        xsMm[i]!,
        xsMm[i - 1] ?? null,
        (joint) => ({
          told: notes.get(`${column.id} ${joint}`) ?? [],
          isDrawnAcross: meetsJoint(columns[i + 1], column.id, joint),
        }),
      ),
      textMark(String(firstIndex + i + 1), xsMm[i]!, earthMm + 6.3, TEXT_STYLE.part, "middle"),
    ]),
  ];
}

function shiftedColumn(placed: PlacedColumn, byMm: number): PlacedColumn {
  const shifted = ({ topMm, bottomMm }: PlacedColumn["start"]) => ({
    topMm: topMm + byMm,
    bottomMm: bottomMm + byMm,
  });
  return {
    start: shifted(placed.start),
    steps: placed.steps.map(shifted),
    end: shifted(placed.end),
  };
}

const rail = (fromMm: number, toMm: number, yMm: number): Mark => ({
  kind: "line",
  from: point(fromMm, yMm),
  to: point(toMm, yMm),
  stroke: { widthMm: LINE_MM.frame, colour: "ink" },
});

const feedRail = (
  lines: readonly string[],
  leftMm: number,
  rightMm: number,
  yMm: number,
): Mark[] => [
  ...lines.map((line, i) =>
    textMark(line, leftMm, yMm - 2 - (lines.length - 1 - i) * LABEL_PITCH_MM, TEXT_STYLE.strong),
  ),
  rail(leftMm, rightMm, yMm),
];

/** The rail, and its words in the first gap between column numbers that holds them. */
function earthRail(
  label: string,
  area: AreaMm,
  rightMm: number,
  yMm: number,
  xsMm: readonly number[],
): Mark[] {
  const clearMm = 5;
  const labelMm = measureTextMm(label, CAP_MM.text, 700);
  const gapStartsMm = [area.xMm, ...xsMm.map((xMm) => xMm + clearMm)];
  const gapEndsMm = [...xsMm.map((xMm) => xMm - clearMm), area.xMm + area.widthMm];
  const gap = gapStartsMm.findIndex((startMm, i) => gapEndsMm[i]! - startMm >= labelMm);
  const baseMm = gap >= 0 ? yMm + 2.2 + CAP_MM.text : yMm + 6.3 + 1.6 + CAP_MM.text;
  return [
    rail(area.xMm, rightMm, yMm),
    textMark(label, gap >= 0 ? gapStartsMm[gap]! : area.xMm, baseMm, TEXT_STYLE.strong),
  ];
}
