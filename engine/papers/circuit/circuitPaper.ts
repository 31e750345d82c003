import {
  type AreaMm,
  area,
  type CircuitLayout,
  layCircuit,
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
  for (const size of [input.paper, "a3"] as const) {
    const candidates = triedOn(input, { head, drawn }, size, sizes);
    if (candidates.length === 0) continue;
    const fewest = Math.min(...candidates.map(({ pageCount }) => pageCount));
    const { paper, draw } = candidates.find(({ pageCount }) => pageCount === fewest)!;
    return draw().map((marks, i) => ({
      paper,
      documentName: "circuit sheet",
      head,
      bookmark: i === 0 ? [head.title] : [head.title, `continued ${i + 1}`],
      marks,
    }));
  }
  throw new Error(`circuit sheet "${head.title}" fits no paper`);
}

/** Sheets laid one way, drawn when that way is taken. */
interface Laying {
  readonly pageCount: number;
  readonly draw: () => readonly (readonly Mark[])[];
}

/** Every way the columns fit one size of paper; no further ones once a single sheet is enough. */
function triedOn(
  input: PaperInput,
  { head, drawn }: WordedCircuit,
  size: Paper["size"],
  sizes: StepSizes,
): readonly (Laying & { readonly paper: Paper })[] {
  const found: (Laying & { readonly paper: Paper })[] = [];
  const hasTies = drawn.columns.some(
    ({ start, end }) => start.kind === "branch" || end.kind === "join",
  );
  for (const way of WAYS) {
    if (found.some(({ pageCount }) => pageCount === 1)) return found;
    if (way.cutsTies && !hasTies) return found;
    const paper: Paper = { size, orientation: way.orientation };
    const { content } = sheetRoom(paper, input.info, head);
    const laying = tiered(drawn, content, way, sizes);
    if (laying !== null) found.push({ paper, ...laying });
  }
  return found;
}

/** Columns in rows under each other, as many rows on a sheet as stand on it; null where a step is larger than its row. */
function tiered(
  drawn: WordedCircuit["drawn"],
  room: AreaMm,
  { tierCount, cutsTies }: Way,
  sizes: StepSizes,
): Laying | null {
  const heightMm = (room.heightMm - (tierCount - 1) * TIER_GAP_MM) / tierCount;
  const rowRoom = area(room.xMm, room.yMm, room.widthMm, heightMm);
  const isOne = tierCount === 1;
  const lay = (columnsMostCount?: number): CircuitLayout =>
    layCircuit(drawn, rowRoom, {
      sizes,
      cutsTies,
      columnsMostCount,
      stretchMostRatio: isOne ? undefined : 1,
    });
  const rows = lay();
  if (!rows.fits) return null;
  if (!isOne) return stacked(rows, room);
  const pageCount = rows.columnCounts.length;
  const columnCount = rows.columnCounts.reduce((sum, count) => sum + count, 0);
  const draw = (): readonly (readonly Mark[])[] => {
    if (pageCount === 1) return rows.draw();
    const even = lay(Math.ceil(columnCount / pageCount));
    return (even.fits && even.columnCounts.length === pageCount ? even : rows).draw();
  };
  return { pageCount, draw };
}

/** Rows under each other, evenly over as many sheets as they need. */
function stacked(rows: CircuitLayout, room: AreaMm): Laying {
  const stack = (rowsMostCount: number): readonly Placed[] => {
    let [pageIndex, usedMm, rowCount] = [-1, Number.POSITIVE_INFINITY, 0];
    return rows.heightsMm.map((rowMm): Placed => {
      if (usedMm + rowMm > room.heightMm + 1e-6 || rowCount === rowsMostCount) {
        pageIndex++;
        [usedMm, rowCount] = [0, 0];
      }
      const downMm = usedMm;
      usedMm += rowMm + TIER_GAP_MM;
      rowCount++;
      return { pageIndex, downMm };
    });
  };
  const countOf = (placed: readonly Placed[]): number => placed.at(-1)!.pageIndex + 1;
  const fewest = stack(Number.POSITIVE_INFINITY);
  const pageCount = countOf(fewest);
  const even = stack(Math.ceil(rows.heightsMm.length / pageCount));
  const placed = countOf(even) === pageCount ? even : fewest;
  const draw = (): readonly (readonly Mark[])[] => {
    const pages: Mark[][] = Array.from({ length: pageCount }, () => []);
    rows.draw().forEach((marks, i) => {
      const { pageIndex, downMm } = placed[i]!;
      pages[pageIndex]!.push(...moveMarks(marks, 0, downMm));
    });
    return pages;
  };
  return { pageCount, draw };
}

/** Where a row of columns goes. */
interface Placed {
  readonly pageIndex: number;
  readonly downMm: number;
}
