import { batteriesOf } from "../job/index.ts";
import type { CompiledJob, JobElement } from "../operate/index.ts";
import { FLASH } from "./stateSpace.ts";

/** How an element joins its nodes: always, when a variable stands so, when a relay does, or as a load (which only couples). */
export type Joining =
  | { readonly kind: "always" }
  | { readonly kind: "variable"; readonly id: string; readonly closedIn: readonly string[] }
  | { readonly kind: "relay"; readonly index: number; readonly closedWhen: boolean }
  | { readonly kind: "couples" };

/** The machine as copper, contacts and loads, on the nodes of its network. */
export interface ContactGraph {
  readonly nodeCount: number;
  readonly a: readonly number[];
  readonly b: readonly number[];
  readonly joining: readonly Joining[];
  /** Nodes of the live posts and of the earthed post with the main body's hub. */
  readonly live: readonly number[];
  readonly earth: readonly number[];
  readonly relayCoils: readonly (readonly [number, number])[];
  /** Elements that give current when the engine runs. */
  readonly sources: readonly number[];
  /** Elements at each node: those of node n are elementAt[start[n]] … elementAt[start[n + 1] − 1]. */
  readonly start: Int32Array;
  readonly elementAt: Int32Array;
}

/** From here on a wire, a joint or a bond is an open one, Ω. */
const OPEN_FROM_OHM = 1e6;

export function contactGraph({ job, jobNetwork }: CompiledJob): ContactGraph {
  const { elements, relays, nodes } = jobNetwork;
  const relayIndex = new Map(relays.map(({ id }, k) => [id, k]));
  const node = (name: string): number => nodes.indexOf.get(name)!;
  const posts = batteriesOf(job);
  const shunts = new Set(
    job.parts.flatMap((part) =>
      part.kind === "meter" && part.measures === "amps" ? [part.id] : [],
    ),
  );
  return {
    ...elementsAtNodes(elements, nodes.names.length),
    nodeCount: nodes.names.length,
    a: elements.map((element) => element.nodes[0]),
    b: elements.map((element) => element.nodes[1]),
    joining: elements.map((element) => joiningOf(element, relayIndex, shunts)),
    live: posts.map(({ livePost }) => node(livePost)),
    earth: [0, ...(jobNetwork.earth === null ? [] : [node(jobNetwork.earth)])],
    relayCoils: relays.map(({ coilA, coilB }) => [coilA, coilB]),
    sources: elements.flatMap(({ role }, k) =>
      role.role === "supply" || role.role === "exciter" || role.role === "acSource" ? [k] : [],
    ),
  };
}

function joiningOf(
  { kind, of, role, law }: JobElement,
  relayIndex: ReadonlyMap<string, number>,
  shunts: ReadonlySet<string>,
): Joining {
  if (role.role === "switch") return { kind: "variable", id: role.part, closedIn: role.closedIn };
  if (role.role === "flasher") return { kind: "variable", id: FLASH, closedIn: ["on"] };
  if (role.role === "relay") {
    const index = relayIndex.get(role.part)!;
    return { kind: "relay", index, closedWhen: role.closedWhen === "pulled" };
  }
  const carries = kind === "wire" || kind === "joint" || kind === "bond" || kind === "fuse";
  const isShunt = kind === "resistor" && shunts.has(of.split(":")[0]!);
  const isTakenApart = kind === "contact" && role.role === "fixed" && of.includes(".");
  // A bond through paint or rubber is open: it couples, and joins nothing.
  const joins = law.kind === "ohm" && law.ohm < OPEN_FROM_OHM;
  return joins && (carries || isShunt || isTakenApart) ? { kind: "always" } : { kind: "couples" };
}

function elementsAtNodes(
  elements: readonly JobElement[],
  nodeCount: number,
): Pick<ContactGraph, "start" | "elementAt"> {
  const start = new Int32Array(nodeCount + 1);
  for (const { nodes } of elements)
    for (const node of nodes) start[node + 1] = start[node + 1]! + 1;
  for (let node = 0; node < nodeCount; node++) start[node + 1] = start[node + 1]! + start[node]!;
  const next = start.slice();
  const elementAt = new Int32Array(2 * elements.length);
  elements.forEach(({ nodes }, k) => {
    for (const node of nodes) {
      elementAt[next[node]!] = k;
      next[node] = next[node]! + 1;
    }
  });
  return { start, elementAt };
}
