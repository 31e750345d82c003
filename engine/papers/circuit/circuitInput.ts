import type {
  CircuitColumn,
  CircuitSheetInput,
  CircuitStep,
  ContactTableInput,
} from "../../drawing/index.ts";
import type { Job, Part } from "../../job/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";
import { colourCode, colourWords } from "../colourText.ts";
import type { PaperInput } from "../paperInput.ts";
import { partNote } from "../partNote.ts";
import { pointSubject } from "../pointSubject.ts";
import { numberOf } from "../wireRows.ts";
import { columnsOf, type PathColumn, type PathStep } from "./columns.ts";
import { filamentHalf } from "./filamentHalf.ts";
import type { Levels } from "./levels.ts";
import type { Link, MachineGraph } from "./machineGraph.ts";
import { partSymbol } from "./partSymbol.ts";
import { type PointWords, placeWords } from "./pointWords.ts";
import { relayHalf } from "./relayHalf.ts";
import type { Placed } from "./sheetLinks.ts";
import type { WorkingState } from "./workingState.ts";

/** Everything the wording of one sheet needs. */
interface Wording {
  readonly input: PaperInput;
  readonly graph: MachineGraph;
  readonly levels: Levels;
  readonly words: PointWords;
  readonly state: WorkingState | null;
  readonly parts: ReadonlyMap<string, Part>;
  /** Switches whose contact table stands on the sheet already. */
  readonly shown: Set<string>;
}

/** One circuit as columns of steps, worded and ready to draw. */
export function circuitInput(
  input: PaperInput,
  graph: MachineGraph,
  levels: Levels,
  placed: readonly Placed[],
  state: WorkingState | null,
): CircuitSheetInput {
  const { job } = input;
  const ends = new Set([...graph.bodies, ...graph.earthedPosts]);
  const wording: Wording = {
    input,
    graph,
    levels,
    state,
    words: placeWords(job, graph, levels),
    parts: new Map(job.parts.map((part) => [part.id, part])),
    shown: new Set(),
  };
  const columns = columnsOf(placed, levels, graph.joints, ends);
  const { live, earth } = signs(job);
  return {
    feedLabel: `live ${live}: battery, no switch before it`,
    earthLabel: `earth ${earth}, 0 V`,
    columns: columns.map((column) => wordedColumn(wording, column)),
  };
}

const signs = ({ supply }: Job): { readonly live: string; readonly earth: string } =>
  supply.earthPolarity === "positive"
    ? { live: "\u2212", earth: "+" }
    : { live: "+", earth: "\u2212" };

function wordedColumn(wording: Wording, column: PathColumn): CircuitColumn {
  return {
    id: column.id,
    start: startOf(wording, column),
    steps: column.steps.map((step, i) => wordedStep(wording, step, column.steps[i + 1])),
    end: endOf(wording, column),
  };
}

function startOf({ graph, words }: Wording, { start }: PathColumn): CircuitColumn["start"] {
  if (start.column !== null) return { kind: "branch", column: start.column, joint: start.point };
  if (graph.livePosts.includes(start.point)) return { kind: "feed" };
  return { kind: "reference", label: words.from(start.point) };
}

function endOf({ graph, words }: Wording, { end, steps }: PathColumn): CircuitColumn["end"] {
  if (end.column !== null) return { kind: "join", column: end.column, joint: end.point };
  if (graph.earthedPosts.includes(end.point)) return { kind: "earth" };
  if (graph.bodies.has(end.point)) {
    const last = steps.findLast((step) => step.kind === "link");
    const link = last?.kind === "link" ? last.placed.link : null;
    return { kind: "frame", label: words.body(end.point, link) };
  }
  return { kind: "reference", label: words.to(end.point) };
}

function wordedStep(wording: Wording, step: PathStep, next: PathStep | undefined): CircuitStep {
  if (step.kind === "dot") {
    const of = pointSubject(wording.graph, step.point);
    return { kind: "joint", id: step.point, of, name: wording.words.dot(step.point) };
  }
  const { link } = step.placed;
  switch (link.kind) {
    case "wire":
      return wireStep(wording, step.placed, next);
    case "cavity":
      return cavityStep(wording, step.placed);
    case "bond":
      return bondStep(link);
    default:
      return partStep(wording, step.placed);
  }
}

function wireStep(
  { input, state }: Wording,
  { link, above, below }: Placed,
  next: PathStep | undefined,
): CircuitStep {
  const wire = link.wire!;
  const conductor = input.design.conductors.get(wire.id);
  const { letters } = input.job.colours;
  const isTestPoint =
    next === undefined || (next.kind === "link" && next.placed.link.kind !== "cavity");
  const pin = link.a === below ? link.pinA : link.pinB;
  const other = link.a === above ? link.pinA : link.pinB;
  const v = state?.volts.get(pin) ?? state?.volts.get(other);
  const ac = state?.kindOf(pin) === "ac" ? " AC" : "";
  return {
    kind: "wire",
    id: wire.id,
    pinAbove: other,
    pinBelow: pin,
    number: numberOf(wire),
    colours: wire.colour ?? null,
    areaMm2: conductor?.areaMm2 ?? null,
    code: colourCode(wire.colour, letters),
    word: colourWords(wire.colour),
    size: conductor === undefined ? "size not known" : `${printNumber(conductor.areaMm2, 2)} mm²`,
    ...(isTestPoint && v !== undefined ? { expected: `${voltText(v)}${ac}` } : {}),
  };
}

/** No minus before a nought. */
const voltText = (v: number): string => printQuantity(Math.abs(v) < 0.005 ? 0 : v, "V");

/** The arc of the symbol is the socket half. */
function cavityStep({ words }: Wording, { link, above }: Placed): CircuitStep {
  const pinAbove = link.a === above ? link.pinA : link.pinB;
  const isSocketAbove = pinAbove.endsWith("s");
  return {
    kind: "connector",
    id: pinAbove,
    connector: link.of,
    name: link.pinA.slice(0, -1),
    place: words.connector(link.of),
    liveSide: isSocketAbove ? "above" : "below",
  };
}

const bondStep = (link: Link): CircuitStep => ({
  kind: "joint",
  id: link.pinA,
  of: "pin",
  name: "through its case",
  side: "right",
});

function partStep(wording: Wording, { link, above }: Placed): CircuitStep {
  const part = link.part ?? wording.parts.get(link.of)!;
  const [pinAbove, pinBelow] = link.a === above ? [link.pinA, link.pinB] : [link.pinB, link.pinA];
  const bare = (pin: string): string => pin.slice(pin.indexOf(".") + 1);
  const showsTable = part.kind === "switch" && !wording.shown.has(part.id);
  if (showsTable) wording.shown.add(part.id);
  const turned = isTurned(part, link, pinAbove);
  const { job } = wording.input;
  const half =
    part.kind === "relay"
      ? relayHalf(job, wording.graph, wording.levels, part, link)
      : filamentHalf(job, wording.graph, wording.levels, part, link);
  return {
    kind: "part",
    id: part.id,
    symbol: partSymbol(link, part),
    name: part.id,
    note: partNote(job, part, link.kind === "coil" ? "coil" : "whole"),
    pinAbove: bare(pinAbove),
    pinBelow: bare(pinBelow),
    ...(turned ? { isTurned: true } : {}),
    ...(half === null ? {} : { half }),
    ...(showsTable && part.kind === "switch" ? { contacts: contactsOf(part) } : {}),
  };
}

/** A diode or LED whose anode stands below; a battery whose positive post does. */
function isTurned(part: Part, link: Link, pinAbove: string): boolean {
  if (!["diode", "rectifier", "battery"].includes(part.kind)) return false;
  return pinAbove !== link.pinA;
}

/** Contact table of a switch: pins in the order of the part, positions in the order of the job. */
export function contactsOf(part: Part & { readonly kind: "switch" }): ContactTableInput {
  const used = new Set(part.positions.flatMap(({ joins }) => joins.flat()));
  return {
    id: part.id,
    pins: part.pins.map(({ id }) => id).filter((id) => used.has(id)),
    positions: part.positions.map(({ id, name, joins }) => ({
      name: name ?? id,
      isRest: id === part.rest,
      joins: joins.map(([a, b]) => [a, b] as const),
    })),
  };
}
