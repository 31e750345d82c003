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
import { lettersName } from "../colourText.ts";
import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import { circuitInput } from "./circuitInput.ts";
import { levelsOf } from "./levels.ts";
import { machineGraph } from "./machineGraph.ts";
import { sheetLinks } from "./sheetLinks.ts";
import { loadsAt, stateFor } from "./workingState.ts";

/** One sheet a circuit: fault finding with one finger on the paper. */
export function circuitPaper(input: PaperInput, name: string): PackPaper {
  const { job } = input;
  const graph = machineGraph(job);
  const levels = levelsOf(graph);
  const circuits = job.circuits.map((circuit) => {
    const placed = sheetLinks(circuit.id, graph, levels);
    if (placed.length === 0) return { id: circuit.id, sheets: [] };
    const pins = new Set(
      placed.flatMap(({ link }) => (link.kind === "load" ? [link.a, link.b] : [])),
    );
    const own = placed.flatMap(({ link: { wire } }) =>
      wire?.circuit === circuit.id ? wire.id : [],
    );
    const state = stateFor(input, new Set(own), loadsAt(job, pins));
    const volts = state
      ? `Volts: ${state.words}; full battery; meter's black lead on the earthed battery post.`
      : "No named state of the job has this circuit at work, so no volts are shown.";
    const drawn = circuitInput(input, graph, levels, placed, state);
    const isShort = circuit.name.length <= TITLE_LENGTH_MAX;
    const head = {
      title: `Circuit: ${isShort ? circuit.name : circuit.id}`,
      lead: `${isShort ? "" : `${circuit.name}. `}${volts} Switches drawn at rest. Colours in ${lettersName(job.colours.letters)}.`,
    };
    return { id: circuit.id, sheets: laid(input, head, drawn) };
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

/** A longer name of a circuit stands under the title instead of in it. */
const TITLE_LENGTH_MAX = 48;

/** Between two rows of columns on one sheet. */
const TIER_GAP_MM = 7;

/** Upright or across, in one row of columns or two, whichever takes the fewest sheets; upright in one row where it is the same, because paths are long. */
function laid(
  input: PaperInput,
  head: Sheet["head"],
  drawn: ReturnType<typeof circuitInput>,
): readonly Sheet[] {
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
