import { type Job, loadRef, type Part } from "../../job/index.ts";
import type { Levels } from "../circuit/levels.ts";
import type { Link, LinkKind, MachineGraph } from "../circuit/machineGraph.ts";

/** A part between two nets: everything joined by wires, joints and connectors is one net. */
export interface Element {
  readonly part: Part;
  readonly kind: LinkKind;
  /** Of a load: how intents and states write it. */
  readonly ref: string;
  readonly above: string;
  readonly below: string;
}

const JOINED: readonly LinkKind[] = ["wire", "cavity"];

/** Nets of a machine, each named by its point nearest the feed. */
export function netsOf(graph: MachineGraph, levels: Levels): ReadonlyMap<string, string> {
  const net = new Map<string, string>();
  const points = [...graph.linksAt.keys()].sort(levels.compare);
  for (const start of points) {
    if (net.has(start)) continue;
    const queue = [start];
    net.set(start, start);
    for (let i = 0; i < queue.length; i++) {
      for (const link of graph.linksAt.get(queue[i]!) ?? []) {
        if (!JOINED.includes(link.kind)) continue;
        for (const next of [link.a, link.b]) {
          if (net.has(next)) continue;
          net.set(next, start);
          queue.push(next);
        }
      }
    }
  }
  return net;
}

/** Parts with the nets above and below them; a part with both ends on one net is left out. */
export function elementsOf(
  job: Job,
  graph: MachineGraph,
  levels: Levels,
  net: ReadonlyMap<string, string>,
): readonly Element[] {
  const parts = new Map(job.parts.map((part) => [part.id, part]));
  return graph.links.flatMap((link): Element[] => {
    const part = parts.get(link.of);
    if (part === undefined || link.kind === "wire" || link.kind === "bond") return [];
    const [a, b] = [net.get(link.a)!, net.get(link.b)!];
    if (a === b) return [];
    const [above, below] = isTurned(link, levels) ? [b, a] : [a, b];
    const pins = [link.pinA, link.pinB].map((pin) => pin.slice(pin.indexOf(".") + 1));
    const ref = loadRef(part.id, [pins[0]!, pins[1]!]);
    return [{ part, kind: link.kind, ref, above, below }];
  });
}

const isTurned = (link: Link, levels: Levels): boolean => levels.compare(link.a, link.b) > 0;
