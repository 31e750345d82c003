import type { DesignNetwork } from "./designNetwork.ts";

/** The way of a load's current through the loom: element places on each side, from the load outward. */
export interface LoadWay {
  /** Into the load, against the current, to the battery. */
  readonly into: readonly number[];
  /** Out of the load, with the current, to the battery. */
  readonly outOf: readonly number[];
}

/** Elements that touch each node, by node; an element both of whose ends are there is listed twice. */
export type Touching = readonly (readonly number[])[];

export function touchingOf({ elements }: DesignNetwork): Touching {
  const touching: number[][] = [];
  for (const [k, { nodes }] of elements.entries()) {
    for (const node of nodes) {
      touching[node] ??= [];
      touching[node].push(k);
    }
  }
  return touching;
}

/**
 * Follows a load's current both ways to the battery, at every node along the element that carries most of it.
 * In a ring that is one of the ways round; the other drops as much.
 *
 * @param at.elementA  solved currents, A.
 * @param at.load      place of the load's element; it must carry current.
 * @returns null where a way meets another load first (loads in series) or ends nowhere.
 */
export function loadWay(
  network: DesignNetwork,
  touching: Touching,
  at: { readonly elementA: Float64Array; readonly load: number },
): LoadWay | null {
  const [a, b] = network.elements[at.load]!.nodes;
  const isForward = at.elementA[at.load]! > 0;
  const follow = (start: number, direction: 1 | -1): readonly number[] | null => {
    const way: number[] = [];
    const seen = new Set([start]);
    let node = start;
    for (;;) {
      const next = heaviest(network, touching, at, { node, direction });
      if (next === null || network.loadAt.has(next)) return null;
      if (network.batteryAt.has(next)) return way;
      way.push(next);
      const { nodes } = network.elements[next]!;
      node = nodes[0] === node ? nodes[1] : nodes[0];
      if (seen.has(node)) return null;
      seen.add(node);
    }
  };
  const into = follow(isForward ? a : b, -1);
  const outOf = follow(isForward ? b : a, 1);
  return into === null || outOf === null ? null : { into, outOf };
}

/** The element through which most current leaves a node (direction 1) or arrives at it (direction −1). */
export function heaviest(
  network: DesignNetwork,
  touching: Touching,
  at: { readonly elementA: Float64Array; readonly load: number },
  from: { readonly node: number; readonly direction: 1 | -1 },
): number | null {
  let best: number | null = null;
  let mostA = 0;
  for (const k of touching[from.node] ?? []) {
    if (k === at.load) continue;
    const sign = network.elements[k]!.nodes[0] === from.node ? from.direction : -from.direction;
    const currentA = at.elementA[k]! * sign;
    if (currentA > mostA) [best, mostA] = [k, currentA];
  }
  return best;
}
