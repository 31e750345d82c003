import { CAP_MM, LINE_MM } from "../lineWidth.ts";
import { measureTextMm } from "../measureTextMm.ts";
import { type AreaMm, type Mark, point } from "../scene.ts";
import { TEXT_STYLE, textMark } from "../textBlock.ts";
import { wrapText } from "../wrapText.ts";
import type { CircuitColumn, CircuitSheetInput } from "./circuitSheetInput.ts";
import type { JointNotes } from "./columnBoxes.ts";
import { columnMarks } from "./columnMarks.ts";
import { columnPages, meetsJoint } from "./columnPages.ts";
import { columnsToFit } from "./columnsToFit.ts";
import { crossReferenced } from "./crossReferenced.ts";
import { type PageLayout, pageLayout, type RailsAsked } from "./pageLayout.ts";
import { type StepSizes, stepSizes } from "./stepSizes.ts";
import type { PlacedColumn } from "./stretchedLevels.ts";
import { jointNotes, wordedColumns } from "./wordedColumns.ts";

export interface CircuitSheetDrawing {
  /** Marks of each page, in place in the area. */
  readonly pages: readonly (readonly Mark[])[];
  /** False where something is wider or taller than the area: larger paper is needed. */
  readonly fits: boolean;
}

/** A circuit laid on pages, not drawn yet. */
export interface CircuitLayout {
  /** What each page takes of the area's height, from its top: words over the upper rail to column numbers. */
  readonly heightsMm: readonly number[];
  /** Columns on each page. */
  readonly columnCounts: readonly number[];
  readonly fits: boolean;
  readonly draw: () => readonly (readonly Mark[])[];
}

/** How a circuit is to be laid. */
export interface CircuitSheetWay {
  /** Wires are drawn out until the columns are so much taller than they need to be, or fill the area; absent: 1.5. */
  readonly stretchMostRatio?: number | undefined;
  /** Sizes worked out by another try of the same circuit. */
  readonly sizes?: StepSizes | undefined;
  /** Ways drawn across may be told in words instead, to fill sheets better; absent: only where columns that belong together fit no sheet. */
  readonly cutsTies?: boolean | undefined;
  /** No more columns on a page, where they may be parted there; absent: as many as it holds. */
  readonly columnsMostCount?: number | undefined;
}

const RAIL_FOOT_MM = 8;
const LABEL_PITCH_MM = 4.4;
/** Columns are drawn out to the rails by no more than this. */
const STRETCH_MOST_RATIO = 1.5;
/** Columns are spread to the width of the sheet by no more than this each. */
const SPARE_MOST_MM = 12;

/**
 * A circuit from feed to earth: rails above and below, one column a current path, every wire with number, colour and size beside it, every
 * break with connector and cavity, every switch at rest with its contact table. Columns that do not fit beside each other go to further pages;
 * a path longer than the page goes on in the next column, told at both ends.
 */
export function circuitSheet(
  input: CircuitSheetInput,
  area: AreaMm,
  way: CircuitSheetWay = {},
): CircuitSheetDrawing {
  const { draw, fits } = layCircuit(input, area, way);
  return { pages: draw(), fits };
}

/** The same before anything is drawn: for whoever tries several ways. */
export function layCircuit(
  input: CircuitSheetInput,
  area: AreaMm,
  {
    stretchMostRatio = STRETCH_MOST_RATIO,
    sizes = stepSizes(),
    cutsTies = false,
    columnsMostCount = Number.POSITIVE_INFINITY,
  }: CircuitSheetWay = {},
): CircuitLayout {
  if (input.columns.length === 0) {
    return { draw: () => [], heightsMm: [], columnCounts: [], fits: true };
  }
  const railsMaxMm = area.heightMm - railHeadMm(input, area) - RAIL_FOOT_MM;
  const rails: RailsAsked = {
    mostMm: railsMaxMm,
    stretchMostRatio,
    sizes,
    cutsTies,
    columnsMostCount,
  };
  const fitted = columnsToFit(crossReferenced(input.columns, false), rails, area.widthMm);
  const notes = jointNotes(fitted.columns);
  const columns = crossReferenced(wordedColumns(fitted.columns), true);
  const pages = columnPages(columns, notes, area.widthMm, rails);
  const laid = pages.map(({ from, to }) => pageLayout(columns.slice(from, to), notes, rails)!);
  const fits = fitted.fits && laid.every(({ widthMm }) => widthMm <= area.widthMm + 1e-6);
  return {
    heightsMm: laid.map(({ railsMm }, i) => {
      const { from, to } = pages[i]!;
      return railsMm + headMm(input, columns.slice(from, to), area) + RAIL_FOOT_MM;
    }),
    columnCounts: pages.map(({ from, to }) => to - from),
    draw: () =>
      pages.map(({ from, to }, i) =>
        pageMarks(input, { columns: columns.slice(from, to), from, notes, ...laid[i]! }, area),
      ),
    fits,
  };
}

const feedLines = (input: CircuitSheetInput, area: AreaMm): string[] =>
  wrapText(input.feedLabel, area.widthMm, CAP_MM.text, 700);

const railHeadMm = (input: CircuitSheetInput, area: AreaMm): number =>
  2 + feedLines(input, area).length * LABEL_PITCH_MM;

/** Above the upper rail: its words where any column is fed by it. */
const headMm = (
  input: CircuitSheetInput,
  columns: readonly CircuitColumn[],
  area: AreaMm,
): number => (columns.some(({ start }) => start.kind === "feed") ? railHeadMm(input, area) : 0);

interface PageToDraw extends PageLayout {
  readonly columns: readonly CircuitColumn[];
  /** Of the first column among all. */
  readonly from: number;
  readonly notes: JointNotes;
}

function pageMarks(input: CircuitSheetInput, page: PageToDraw, area: AreaMm): Mark[] {
  const { columns, from, notes, placed, railsMm } = page;
  const feedMm = area.yMm + headMm(input, columns, area);
  const earthMm = feedMm + railsMm;
  const spareMm = Math.max(0, area.widthMm - page.widthMm) / Math.max(1, columns.length);
  const stepMm = Math.min(SPARE_MOST_MM, spareMm);
  const xsMm = page.xsMm.map((xMm, i) => area.xMm + xMm + i * stepMm);
  const railEndMm = area.xMm + page.widthMm + (columns.length - 1) * stepMm;
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
      textMark(String(from + i + 1), xsMm[i]!, earthMm + 6.3, TEXT_STYLE.part, "middle"),
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
