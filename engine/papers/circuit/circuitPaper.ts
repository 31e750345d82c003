import { circuitSheet, type Paper, type Sheet, sheetRoom } from "../../drawing/index.ts";
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
    const head = {
      title: `Circuit: ${circuit.name}`,
      lead: `${volts} Switches drawn at rest. Colours in ${lettersName(job.colours.letters)}.`,
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

/** Upright or across, whichever takes fewer sheets; upright where it is the same, because paths are long. */
function laid(
  input: PaperInput,
  head: Sheet["head"],
  drawn: ReturnType<typeof circuitInput>,
): readonly Sheet[] {
  const tried = (["portrait", "landscape"] as const).map((orientation) => {
    const paper: Paper = { size: input.paper, orientation };
    const { content } = sheetRoom(paper, input.info, head);
    return { paper, ...circuitSheet(drawn, content) };
  });
  const [upright, across] = [tried[0]!, tried[1]!];
  const { paper, pages } =
    !upright.fits || (across.fits && across.pages.length < upright.pages.length) ? across : upright;
  return pages.map((marks, i) => ({
    paper,
    documentName: "circuit sheet",
    head,
    bookmark: i === 0 ? [head.title] : [head.title, `continued ${i + 1}`],
    marks,
  }));
}
