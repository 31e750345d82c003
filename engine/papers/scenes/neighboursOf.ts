import type { Job, Wire } from "../../job/index.ts";
import { type Levels, levelsOf } from "../circuit/levels.ts";
import { type MachineGraph, machineGraph } from "../circuit/machineGraph.ts";
import { compareNumbers, numberOf } from "../wireRows.ts";

type Kind = "wire" | "part" | "joint" | "connector" | "body";

/** Something next to a thing along the wiring. */
export interface Neighbour {
  readonly kind: Kind;
  readonly id: string;
  /** Pin they meet at. */
  readonly pin: string;
  readonly name: string;
  /** Towards the live post, towards the return, or on the same point beside it. */
  readonly way: "feed" | "return" | "beside";
}

/**
 * What lies next to a thing: of a wire the two things it ends on and the wires beside it on the same points, of anything else the wires that end on it.
 * Feed first, then what lies beside, then the return; the order feed to earth is that of the diagram, whichever pole is earthed.
 */
export function neighboursOf(
  job: Job,
  thing: { readonly kind: string; readonly id: string },
): readonly Neighbour[] {
  const graph = machineGraph(job);
  const levels = levelsOf(graph);
  const found =
    thing.kind === "wire"
      ? besideWire(job, graph, levels, thing.id)
      : onOwner(job, graph, levels, ownerOf(thing));
  const rank = { feed: 0, beside: 1, return: 2 };
  return [...found].sort((p, q) => rank[p.way] - rank[q.way] || compareNumbers(p.name, q.name));
}

const ownerOf = ({ kind, id }: { readonly kind: string; readonly id: string }): string =>
  kind === "pin" || id.includes(".") ? id.slice(0, id.indexOf(".")) : id;

function besideWire(
  job: Job,
  graph: MachineGraph,
  { compare }: Levels,
  id: string,
): readonly Neighbour[] {
  const wire = job.wires.find((one) => one.id === id);
  if (wire === undefined) return [];
  const isDown = compare(graph.pointOf(wire.from), graph.pointOf(wire.to)) <= 0;
  const [up, down] = isDown ? [wire.from, wire.to] : [wire.to, wire.from];
  const ends = [
    { pin: up, way: "feed" as const },
    { pin: down, way: "return" as const },
  ].map(({ pin, way }): Neighbour => ({ ...thingAt(job, pin), pin, way }));
  const points = new Set([graph.pointOf(wire.from), graph.pointOf(wire.to)]);
  const wires = job.wires.flatMap((other): Neighbour[] => {
    const pin = [other.from, other.to].find((end) => points.has(graph.pointOf(end)));
    if (other.id === id || pin === undefined) return [];
    return [{ kind: "wire", id: other.id, pin, name: wireName(other), way: "beside" }];
  });
  return [...ends, ...wires];
}

function onOwner(
  job: Job,
  graph: MachineGraph,
  { compare }: Levels,
  owner: string,
): readonly Neighbour[] {
  return job.wires.flatMap((wire): Neighbour[] => {
    const pin = [wire.from, wire.to].find((end) => end.startsWith(`${owner}.`));
    if (pin === undefined) return [];
    const other = pin === wire.from ? wire.to : wire.from;
    const isFed = compare(graph.pointOf(other), graph.pointOf(pin)) < 0;
    return [
      { kind: "wire", id: wire.id, pin, name: wireName(wire), way: isFed ? "feed" : "return" },
    ];
  });
}

const wireName = (wire: Wire): string => `wire ${numberOf(wire)}`;

function thingAt(job: Job, pin: string): Pick<Neighbour, "kind" | "id" | "name"> {
  const id = pin.slice(0, pin.indexOf("."));
  const lists = [
    ["part", job.parts],
    ["joint", job.joints],
    ["connector", job.connectors],
    ["body", job.bodies],
  ] as const;
  for (const [kind, list] of lists) {
    const item = list.find((one) => one.id === id);
    if (item !== undefined) return { kind, id, name: item.name || id };
  }
  return { kind: "part", id, name: id };
}
