import { type Job, type Part, pinRef } from "../job/index.ts";
import type { Network, RelayRule } from "../network/index.ts";
import type { Conductors } from "../route/index.ts";
import { type ElementDraft, type JobElement, letterOf, OPEN_OHM } from "./jobElement.ts";
import { type JobNodes, jobNodes } from "./jobNodes.ts";
import { diodeElements, lampElements, meterElements, resistanceElements } from "./loadElements.ts";
import {
  bodyElements,
  conductorElements,
  joiningElements,
  takenApartElements,
} from "./loomElements.ts";
import { type Conditions, type NetworkContext, networkContext } from "./networkContext.ts";
import { relayRules } from "./relayRules.ts";
import {
  batteryElements,
  regulatorElements,
  sourceElements,
  windingElements,
} from "./supplyElements.ts";
import { type SupplySource, supplySources } from "./supplySources.ts";
import {
  driverElements,
  flasherElements,
  fuseElements,
  relayElements,
  switchElements,
} from "./switchingElements.ts";

/** A job as a network without trade words, and the way back: branch k of the network is elements[k]. */
export interface JobNetwork {
  readonly nodes: JobNodes;
  readonly elements: readonly JobElement[];
  readonly network: Network;
  /** Relays in order of part id; contacts as indices of elements. */
  readonly relays: readonly RelayRule[];
  /** Elements that `open` and `extraOhm` reach by a wire, a pin, a bond or a fuse. */
  readonly controlledBy: ReadonlyMap<string, readonly number[]>;
  /** Elements of its part that end at each pin, by pin. */
  readonly insideAt: ReadonlyMap<string, readonly number[]>;
  readonly sources: readonly SupplySource[];
  /** Hub of the main body. */
  readonly earth: string | null;
  readonly context: NetworkContext;
}

/**
 * The network of a job: every pin a node (see jobNodes), every wire, way, cavity, contact and load an element of its own.
 * A wire end at PART.PIN is the pin's node; the part's inside is the same node unless a fly lead lies between.
 *
 * @param takenApart  pins (without fly lead) to be separable from their part, for `open` and `extraOhm`.
 */
export function buildJobNetwork(
  job: Job,
  conductors: Conductors,
  options: { readonly conditions: Conditions; readonly takenApart?: readonly string[] },
): JobNetwork {
  const takenApart = options.takenApart ?? [];
  const context = networkContext(job, conductors, options.conditions, new Set(takenApart));
  const nodes = jobNodes(job, takenApart);
  const loom = [...conductorElements(context), ...joiningElements(context)];
  const insides = context.parts.flatMap((part) => partElements(context, part));
  const sources = supplySources(context, [...loom, ...insides]);
  // Separable pins come last, so that taking one apart renumbers no other element.
  const drafts = [
    ...loom,
    ...bodyElements(context),
    ...insides,
    ...sourceElements(sources),
    ...takenApartElements(context),
  ];
  const elements = drafts.map((draft, k) => numbered(draft, k + 1, nodes));
  return {
    nodes,
    elements,
    network: {
      nodeCount: nodes.names.length,
      branches: elements.map(({ id, nodes: [a, b], law }) => ({ id, a, b, law })),
      leakOhm: OPEN_OHM,
    },
    relays: relayRules(context, nodes, elements),
    controlledBy: controls(elements),
    insideAt: insideAt(elements),
    sources,
    earth: context.earth,
    context,
  };
}

function partElements(context: NetworkContext, part: Part): readonly ElementDraft[] {
  switch (part.kind) {
    case "battery":
      return batteryElements(context, part);
    case "fuse":
      return fuseElements(context, part);
    case "switch":
      return switchElements(context, part);
    case "relay":
      return relayElements(context, part);
    case "flasher":
      return flasherElements(context, part);
    case "lamp":
      return lampElements(context, part);
    case "meter":
      return meterElements(context, part);
    case "diode":
    case "rectifier":
      return diodeElements(context, part);
    case "generator":
      return windingElements(context, part);
    case "module":
      return [...resistanceElements(context, part), ...driverElements(context, part)];
    case "regulator":
      return [...regulatorElements(context, part), ...resistanceElements(context, part)];
    default:
      return resistanceElements(context, part);
  }
}

function numbered(draft: ElementDraft, numberIndex: number, { indexOf }: JobNodes): JobElement {
  const node = (name: string): number => {
    const index = indexOf.get(name);
    if (index === undefined) throw new Error(`${draft.of} ends at ${name}, which is no pin`);
    return index;
  };
  return {
    ...draft,
    id: `${letterOf(draft.law)}${numberIndex}`,
    nodes: [node(draft.from), node(draft.to)],
  };
}

function controls(elements: readonly JobElement[]): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  const add = (name: string, k: number): void => {
    found.set(name, [...(found.get(name) ?? []), k]);
  };
  elements.forEach(({ kind, of, controlledBy }, k) => {
    const isPlace =
      kind === "wire" || kind === "joint" || kind === "bond" || kind === "fuse" || of.includes(".");
    if (isPlace) for (const name of new Set([of, ...(controlledBy ?? [])])) add(name, k);
  });
  return found;
}

/** Elements of parts (not of the loom) by the pins they end at. */
function insideAt(elements: readonly JobElement[]): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  elements.forEach(({ kind, from, to }, k) => {
    if (kind === "wire" || kind === "joint" || kind === "bond") return;
    for (const pin of [from, to]) found.set(pin, [...(found.get(pin) ?? []), k]);
  });
  return found;
}

/** Pins of parts that can only be opened by taking them apart: no fly lead, no element of their own. */
export function pinsToTakeApart(job: Job, names: readonly string[]): readonly string[] {
  const bare = new Set<string>();
  for (const part of job.parts) {
    if (part.kind === "fuse") continue;
    for (const pin of part.pins) if (pin.flyLead === undefined) bare.add(pinRef(part.id, pin.id));
  }
  return [...new Set(names)].filter((name) => bare.has(name)).sort();
}
