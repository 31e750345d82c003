import type { CircuitSheetInput, SheetHead } from "../../drawing/index.ts";
import type { Job } from "../../job/index.ts";
import { lettersName } from "../colourText.ts";
import type { PaperInput } from "../paperInput.ts";
import { circuitInput } from "./circuitInput.ts";
import type { Levels } from "./levels.ts";
import type { MachineGraph } from "./machineGraph.ts";
import { sheetLinks } from "./sheetLinks.ts";
import { loadsAt, stateFor } from "./workingState.ts";

/** A longer name of a circuit stands under the title instead of in it. */
const TITLE_LENGTH_MAX = 48;

/** One circuit with its words, before it is laid on a sheet. */
export interface WordedCircuit {
  readonly head: SheetHead;
  readonly drawn: CircuitSheetInput;
}

/** @returns null where nothing is in the circuit. */
export function wordedCircuit(
  input: PaperInput,
  graph: MachineGraph,
  levels: Levels,
  circuit: Job["circuits"][number],
): WordedCircuit | null {
  const { job } = input;
  const placed = sheetLinks(circuit.id, graph, levels);
  if (placed.length === 0) return null;
  const pins = new Set(
    placed.flatMap(({ link }) => (link.kind === "load" ? [link.a, link.b] : [])),
  );
  const own = placed.flatMap(({ link: { wire } }) => (wire?.circuit === circuit.id ? wire.id : []));
  const state = stateFor(input, new Set(own), loadsAt(job, pins));
  const volts = state
    ? `Volts: ${state.words}; full battery; meter's black lead on the earthed battery post.`
    : "No named state of the job has this circuit at work, so no volts are shown.";
  const isShort = circuit.name.length <= TITLE_LENGTH_MAX;
  return {
    head: {
      title: `Circuit: ${isShort ? circuit.name : circuit.id}`,
      lead: `${isShort ? "" : `${circuit.name}. `}${volts} Switches drawn at rest. Colours in ${lettersName(job.colours.letters)}.`,
    },
    drawn: circuitInput(input, graph, levels, placed, state),
  };
}
