import {
  type AreaMm,
  area,
  circuitSheet,
  type Mark,
  moveMarks,
  type Paper,
  type Sheet,
  sheetRoom,
} from "../../drawing/index.ts";
import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import type { circuitInput } from "./circuitInput.ts";
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

/** Between two rows of columns on one sheet. */
const TIER_GAP_MM = 7;

/** Upright or across, in one row of columns or two, whichever takes the fewest sheets; upright in one row where it is the same, because paths are long. */
function laid(input: PaperInput, { head, drawn }: WordedCircuit): readonly Sheet[] {
  const tried = [input.paper, "a3" as const].map((size) => triedOn(input, head, drawn, size));
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
  head: Sheet["head"],
  drawn: ReturnType<typeof circuitInput>,
  size: Paper["size"],
): readonly Laying[] {
  const found: Laying[] = [];
  for (const tierCount of [1, 2]) {
    for (const orientation of ["portrait", "landscape"] as const) {
      if (found.some(({ pages }) => pages.length === 1)) return found;
      const paper: Paper = { size, orientation };
      const pages = tieredPages(drawn, sheetRoom(paper, input.info, head).content, tierCount);
      if (pages !== null) found.push({ paper, pages });
    }
  }
  return found;
}

/** Columns in rows under each other; null where a step is larger than its row. */
function tieredPages(
  drawn: ReturnType<typeof circuitInput>,
  room: AreaMm,
  tierCount: number,
): readonly (readonly Mark[])[] | null {
  const heightMm = (room.heightMm - (tierCount - 1) * TIER_GAP_MM) / tierCount;
  const { pages, fits } = circuitSheet(drawn, area(room.xMm, room.yMm, room.widthMm, heightMm));
  if (!fits) return null;
  return Array.from({ length: Math.ceil(pages.length / tierCount) }, (_, i) =>
    pages
      .slice(i * tierCount, (i + 1) * tierCount)
      .flatMap((marks, tier) => moveMarks(marks, 0, tier * (heightMm + TIER_GAP_MM))),
  );
}
