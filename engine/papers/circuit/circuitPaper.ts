import {
  type AreaMm,
  area,
  type CircuitSheetDrawing,
  circuitSheet,
  type Mark,
  moveMarks,
  type Orientation,
  type Paper,
  type Sheet,
  type StepSizes,
  sheetRoom,
  stepSizes,
} from "../../drawing/index.ts";
import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import { levelsOf } from "./levels.ts";
import { machineGraph } from "./machineGraph.ts";
import { type WordedCircuit, wordedCircuit } from "./wordedCircuit.ts";

/** One sheet a circuit: fault finding with one finger on the paper. */
export function circuitPaper(input: PaperInput, name: string): PackPaper {
  const { job } = input;
  const graph = machineGraph(job);
  const levels = levelsOf(graph);
  const circuits = job.circuits.map((circuit) => {
    const worded = wordedCircuit(input, graph, levels, circuit);
    return { id: circuit.id, sheets: worded === null ? [] : laid(input, worded) };
  });
  return {
    name,
    title: "Circuit sheets",
    sheets: circuits.flatMap(({ sheets }) => sheets),
    rows: null,
    drawings: circuits.flatMap(({ id, sheets }) =>
      sheets.map((_, i) => `03-circuit-${id}${sheets.length > 1 ? `-${i + 1}` : ""}`),
    ),
  };
}

/** One way to lay the columns of a circuit. */
interface Way {
  readonly orientation: Orientation;
  /** Rows of columns under each other, where each is as tall as it may be. */
  readonly tierCount: number;
  readonly cutsTies: boolean;
}

/** In the order they are liked, where they take the same number of sheets. */
const WAYS: readonly Way[] = [false, true].flatMap((cutsTies) =>
  [1, 2, 3, 4].flatMap((tierCount) =>
    (["portrait", "landscape"] as const).map((orientation) => ({
      orientation,
      tierCount,
      cutsTies,
    })),
  ),
);

/** Between two rows of columns on one sheet. */
const TIER_GAP_MM = 4;

/** Upright or across, in one row of columns or several, whichever takes the fewest sheets; upright in one row where it is the same, because paths are long. */
function laid(input: PaperInput, { head, drawn }: WordedCircuit): readonly Sheet[] {
  const sizes = stepSizes();
  const tried = [input.paper, "a3" as const].map((size) =>
    triedOn(input, { head, drawn }, size, sizes),
  );
  const candidates = tried.find((some) => some.length > 0);
  if (candidates === undefined) throw new Error(`circuit sheet "${head.title}" fits no paper`);
  const fewest = Math.min(...candidates.map(({ pages }) => pages.length));
  const { paper, pages } = candidates.find((one) => one.pages.length === fewest)!;
  return pages.map((marks, i) => ({
    paper,
    documentName: "circuit sheet",
    head,
    bookmark: i === 0 ? [head.title] : [head.title, `continued ${i + 1}`],
    marks,
  }));
}

interface Laying {
  readonly paper: Paper;
  readonly pages: readonly (readonly Mark[])[];
}

/** Every way the columns fit one size of paper; no further ones once a single sheet is enough. */
function triedOn(
  input: PaperInput,
  { head, drawn }: WordedCircuit,
  size: Paper["size"],
  sizes: StepSizes,
): readonly Laying[] {
  const found: Laying[] = [];
  for (const way of WAYS) {
    if (found.some(({ pages }) => pages.length === 1)) return found;
    const paper: Paper = { size, orientation: way.orientation };
    const { content } = sheetRoom(paper, input.info, head);
    const pages = tieredPages(drawn, content, way, sizes);
    if (pages !== null) found.push({ paper, pages });
  }
  return found;
}

/** Columns in rows under each other, as many rows on a sheet as stand on it; null where a step is larger than its row. */
function tieredPages(
  drawn: WordedCircuit["drawn"],
  room: AreaMm,
  { tierCount, cutsTies }: Way,
  sizes: StepSizes,
): readonly (readonly Mark[])[] | null {
  const heightMm = (room.heightMm - (tierCount - 1) * TIER_GAP_MM) / tierCount;
  const rowRoom = area(room.xMm, room.yMm, room.widthMm, heightMm);
  const isOne = tierCount === 1;
  const lay = (columnsMostCount?: number) =>
    circuitSheet(drawn, rowRoom, {
      sizes,
      cutsTies,
      columnsMostCount,
      stretchMostRatio: isOne ? undefined : 1,
    });
  const rows = lay();
  if (!rows.fits) return null;
  if (!isOne) return stackedRows(rows, room);
  const columnCount = rows.columnCounts.reduce((sum, count) => sum + count, 0);
  const even = lay(Math.ceil(columnCount / rows.pages.length));
  return even.fits && even.pages.length === rows.pages.length ? even.pages : rows.pages;
}

/** Rows under each other, evenly over as many sheets as they need. */
function stackedRows(rows: CircuitSheetDrawing, room: AreaMm): readonly (readonly Mark[])[] {
  const stack = (rowsMostCount: number): Mark[][] => {
    const pages: Mark[][] = [];
    let [usedMm, rowCount] = [Number.POSITIVE_INFINITY, 0];
    rows.pages.forEach((marks, i) => {
      const rowMm = rows.heightsMm[i]!;
      if (usedMm + rowMm > room.heightMm + 1e-6 || rowCount === rowsMostCount) {
        pages.push([]);
        [usedMm, rowCount] = [0, 0];
      }
      pages.at(-1)!.push(...moveMarks(marks, 0, usedMm));
      usedMm += rowMm + TIER_GAP_MM;
      rowCount++;
    });
    return pages;
  };
  const fewest = stack(Number.POSITIVE_INFINITY);
  const even = stack(Math.ceil(rows.pages.length / fewest.length));
  return even.length === fewest.length ? even : fewest;
}
