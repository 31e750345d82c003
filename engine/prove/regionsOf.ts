import type { ContactGraph } from "./contactGraph.ts";
import type { Assignment } from "./stateSpace.ts";

/** What is known so far: positions of some variables, of some relays, and elements taken out. */
export interface Known {
  readonly positions: Assignment;
  /** By relay index: pulled, or null where an open question decides it. Absent: nothing can feed its coil, released. */
  readonly relays: ReadonlyMap<number, boolean | null>;
  readonly opened: ReadonlySet<number>;
}

/** Bits of a node's region: joined to a live post by copper, joined to earth; both: a short. */
export const RAIL = 1;
export const EARTHED = 2;

/** What an element does as far as is known. */
export const PARTED = 0;
export const JOINED = 1;
export const QUESTION = 2;
export const COUPLED = 3;

/** State of every element under what is known. */
export function elementStates(graph: ContactGraph, known: Known): Uint8Array {
  const states = new Uint8Array(graph.a.length);
  for (let k = 0; k < states.length; k++) states[k] = stateOf(graph, k, known);
  for (const k of known.opened) states[k] = PARTED;
  return states;
}

function stateOf(graph: ContactGraph, k: number, { positions, relays }: Known): number {
  const joining = graph.joining[k]!;
  switch (joining.kind) {
    case "always":
      return JOINED;
    case "couples":
      return COUPLED;
    case "variable": {
      const position = positions[joining.id];
      if (position === undefined) return QUESTION;
      return joining.closedIn.includes(position) ? JOINED : PARTED;
    }
    case "relay": {
      const pulled = relays.get(joining.index);
      if (pulled === null) return QUESTION;
      return (pulled ?? false) === joining.closedWhen ? JOINED : PARTED;
    }
  }
}

/** Floods live posts and earth through everything that is known to join. */
export function regionsOf(graph: ContactGraph, states: Uint8Array): Uint8Array {
  const region = new Uint8Array(graph.nodeCount);
  flood(graph, states, graph.live, RAIL, region);
  flood(graph, states, graph.earth, EARTHED, region);
  return region;
}

function flood(
  { a, b, start, elementAt }: ContactGraph,
  states: Uint8Array,
  from: readonly number[],
  mark: number,
  region: Uint8Array,
): void {
  const queue = [...from];
  for (const node of from) region[node] = region[node]! | mark;
  for (let node = queue.pop(); node !== undefined; node = queue.pop()) {
    for (let at = start[node]!; at < start[node + 1]!; at++) {
      const k = elementAt[at]!;
      if (states[k] !== JOINED) continue;
      const next = a[k] === node ? b[k]! : a[k]!;
      if ((region[next]! & mark) !== 0) continue;
      region[next] = region[next]! | mark;
      queue.push(next);
    }
  }
}
