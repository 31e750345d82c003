import { batteriesOf, type Job, type Part } from "../../job/index.ts";
import { type Levels, levelsOf } from "../circuit/levels.ts";
import { type MachineGraph, machineGraph } from "../circuit/machineGraph.ts";
import { type Element, elementsOf, netsOf } from "./blockElements.ts";

/** What feeds what as a tree: each box once, under what it gets its current from. */
export interface FeedBox {
  readonly kind: "source" | "fuse" | "switch" | "load" | "coil";
  readonly parts: readonly Part[];
  /** Of a box of loads: which of them, as PART:A-B. */
  readonly loads: readonly string[];
  /** Live with the key out. */
  readonly alwaysLive: boolean;
  /** Switches between these loads and earth. */
  readonly earthedBy: readonly Part[];
  readonly under: readonly FeedBox[];
}

interface Feeding {
  readonly levels: Levels;
  /** Elements by the net above them. */
  readonly below: ReadonlyMap<string, readonly Element[]>;
  readonly earthSwitches: ReadonlyMap<string, readonly Part[]>;
  /** Parts, and loads by their reference, that stand in a box already. */
  readonly used: Set<string>;
}

/** One tree for the battery, one for every generator winding that feeds something by itself. */
export function feedTrees(job: Job): readonly FeedBox[] {
  const graph = machineGraph(job);
  const levels = levelsOf(graph);
  const net = netsOf(graph, levels);
  const elements = elementsOf(job, graph, levels, net);
  const below = new Map<string, Element[]>();
  const earthSwitches = new Map<string, Part[]>();
  for (const element of elements) {
    if (levels.side(element.above) !== "earth")
      below.set(element.above, [...(below.get(element.above) ?? []), element]);
    else if (element.kind === "contact")
      earthSwitches.set(element.above, [...(earthSwitches.get(element.above) ?? []), element.part]);
  }
  const feeding: Feeding = { levels, below, earthSwitches, used: new Set() };
  return roots(job, graph, levels, net)
    .map(({ parts, nets, alwaysLive }) => ({
      kind: "source" as const,
      parts,
      loads: [],
      alwaysLive,
      earthedBy: [],
      under: boxesUnder(nets, feeding),
    }))
    .filter(({ under }) => under.length > 0);
}

function roots(job: Job, graph: MachineGraph, levels: Levels, net: ReadonlyMap<string, string>) {
  const charging = job.parts.filter(
    (part) =>
      (part.kind === "generator" && part.type !== "magneto") ||
      (part.kind === "regulator" && part.type !== "ac-shunt"),
  );
  const batteries = batteriesOf(job).map(({ battery, livePost }) => ({
    parts: [...charging, battery],
    nets: [net.get(livePost) ?? livePost],
    alwaysLive: true,
  }));
  const parts = new Map(job.parts.map((part) => [part.id, part]));
  const alone = graph.windingPins
    .filter((pin) => levels.fromLive.get(pin) === 0)
    .map((pin) => ({
      parts: [parts.get(pin.slice(0, pin.indexOf(".")))!],
      nets: [net.get(pin) ?? pin],
      alwaysLive: false,
    }));
  return [...batteries, ...alone];
}

/** Boxes on some nets: fuses each alone, switches joined where one follows the other, loads together. */
function boxesUnder(nets: readonly string[], feeding: Feeding): readonly FeedBox[] {
  const here = nets.flatMap((net) => feeding.below.get(net) ?? []);
  const alwaysLive = nets.some((net) => feeding.levels.alwaysLive.has(net));
  const clusters = clustersOf(here, feeding);
  const fuses = unused(
    here.filter(({ kind }) => kind === "fuse"),
    feeding,
  );
  const loads = unused(here.filter(isLoad), feeding);
  const coils = here.filter(({ kind }) => kind === "coil").map(({ part }) => part);
  const box = (kind: FeedBox["kind"], parts: readonly Part[], under: readonly FeedBox[]) => ({
    kind,
    parts: [...new Set(parts)],
    loads: [],
    alwaysLive,
    earthedBy: [],
    under,
  });
  return [
    ...fuses.map(({ part, below }) => box("fuse", [part], boxesUnder([below], feeding))),
    ...clusters.map(({ parts, nets: after }) => box("switch", parts, boxesUnder(after, feeding))),
    ...loadBoxes(loads, alwaysLive, feeding),
    ...(coils.length > 0 ? [box("coil", coils, [])] : []),
  ];
}

const isLoad = ({ kind, part }: Element): boolean =>
  kind === "load" && part.kind !== "regulator" && part.kind !== "capacitor";

/** Those that stand nowhere yet, each once; they stand somewhere from now on. */
function unused(elements: readonly Element[], { used }: Feeding): readonly Element[] {
  return elements.filter(({ part, kind, ref }) => {
    const key = kind === "load" ? ref : part.id;
    const isNew = !used.has(key);
    used.add(key);
    return isNew;
  });
}

interface Cluster {
  readonly parts: readonly Part[];
  readonly nets: readonly string[];
}

/** Switches that follow one another without a fuse between, and those that lead to the same place. */
function clustersOf(here: readonly Element[], feeding: Feeding): readonly Cluster[] {
  const clusters: { parts: Part[]; nets: string[] }[] = [];
  for (const first of here) {
    if (!isPassed(first) || feeding.used.has(first.part.id)) continue;
    const parts: Part[] = [];
    const nets: string[] = [];
    const queue = here.filter((one) => isPassed(one) && one.part === first.part);
    for (let i = 0; i < queue.length; i++) {
      const { part, below } = queue[i]!;
      feeding.used.add(part.id);
      if (!parts.includes(part)) parts.push(part);
      if (nets.includes(below)) continue;
      nets.push(below);
      queue.push(
        ...(feeding.below.get(below) ?? []).filter(
          (one) => isPassed(one) && !feeding.used.has(one.part.id),
        ),
      );
    }
    const same = clusters.find((one) => one.nets.some((net) => nets.includes(net)));
    if (same) {
      same.parts.push(...parts);
      same.nets.push(...nets.filter((net) => !same.nets.includes(net)));
    } else clusters.push({ parts, nets });
  }
  return clusters;
}

const isPassed = ({ kind }: Element): boolean => kind === "contact" || kind === "through";

/** Loads by the switches on their earth side. */
function loadBoxes(
  loads: readonly Element[],
  alwaysLive: boolean,
  { earthSwitches }: Feeding,
): readonly FeedBox[] {
  const groups = new Map<string, { parts: Part[]; loads: string[]; earthedBy: readonly Part[] }>();
  for (const { part, ref, below } of loads) {
    const earthedBy = [...new Set(earthSwitches.get(below) ?? [])];
    const key = earthedBy.map(({ id }) => id).join(" ");
    const group = groups.get(key) ?? { parts: [], loads: [], earthedBy };
    if (!group.parts.includes(part)) group.parts.push(part);
    group.loads.push(ref);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ parts, loads: refs, earthedBy }) => ({
    kind: "load",
    parts,
    loads: refs,
    alwaysLive,
    earthedBy,
    under: [],
  }));
}
