import type { CompiledJob } from "../operate/index.ts";

/** One step of the volts on the way of a current: battery, live side, load, earth side. */
export interface FallStep {
  /** Id of the wire, contact, fuse, bond or part. */
  readonly of: string;
  readonly kind: string;
  readonly currentA: number;
  readonly dropV: number;
  readonly side: "battery" | "live" | "load" | "earth";
}

interface Solved {
  readonly nodeV: Float64Array;
  readonly elementA: Float64Array;
}

/** A step under this is not worth a line, V. */
const LEAST_V = 1e-4;

/**
 * The way of a load's current as falling volts, from the live post through the load to the earthed one. At every node the way goes
 * where most current comes from (or goes to); branches side by side drop alike, so the sum is the whole of the drop.
 *
 * @param place  element of the load in the network.
 */
export function fallOf(compiled: CompiledJob, solved: Solved, place: number): readonly FallStep[] {
  const { jobNetwork, job } = compiled;
  const { elements } = jobNetwork;
  const [a, b] = elements[place]!.nodes;
  const [into, out] = solved.elementA[place]! >= 0 ? [a, b] : [b, a];
  const before = traced(compiled, solved, { from: into, against: true, place });
  const after = traced(compiled, solved, { from: out, against: false, place });
  const isPositiveEarth = job.supply.earthPolarity === "positive";
  const [live, earth] = isPositiveEarth ? [after, before] : [before, after];
  const step = (k: number, side: FallStep["side"]): FallStep => {
    const { of, kind, law, nodes } = elements[k]!;
    const currentA = Math.abs(solved.elementA[k]!);
    const acrossV = Math.abs(solved.nodeV[nodes[0]]! - solved.nodeV[nodes[1]]!);
    const dropV = law.kind === "emf" ? law.internalOhm * currentA : acrossV;
    return { of, kind, currentA, dropV, side: law.kind === "emf" ? "battery" : side };
  };
  return [
    ...live.toReversed().map((k) => step(k, "live")),
    step(place, "load"),
    // The battery is met from both sides and told once, at the live one.
    ...earth.map((k) => step(k, "earth")).filter(({ side }) => side === "earth"),
  ].filter(({ dropV }) => dropV >= LEAST_V);
}

/** Elements from a node to the battery, the one with most current at each node. */
function traced(
  { jobNetwork: { elements } }: CompiledJob,
  { elementA }: Solved,
  start: { readonly from: number; readonly against: boolean; readonly place: number },
): readonly number[] {
  const seen = new Set([start.place]);
  const way: number[] = [];
  let node = start.from;
  for (;;) {
    let best = -1;
    elements.forEach(({ nodes: [a, b] }, k) => {
      if (seen.has(k) || (a !== node && b !== node)) return;
      // Current that leaves the node by this element; the way goes against it, or with it.
      const leavingA = a === node ? elementA[k]! : -elementA[k]!;
      const alongA = start.against ? -leavingA : leavingA;
      if (alongA <= 0) return;
      if (best < 0 || Math.abs(elementA[k]!) > Math.abs(elementA[best]!)) best = k;
    });
    if (best < 0) return way;
    seen.add(best);
    way.push(best);
    const { nodes, law } = elements[best]!;
    if (law.kind === "emf") return way;
    node = nodes[0] === node ? nodes[1] : nodes[0];
  }
}
