import type { JobElement, QuickSolution } from "../operate/index.ts";

/** Volts lost between a load and its source on the two ways, and how much of it in contacts of every kind. */
export interface LoadDrop {
  readonly feedV: number;
  readonly returnV: number;
  readonly contactV: number;
  /** Places of the elements passed, from the load outward, feed first. */
  readonly feed: readonly number[];
  readonly back: readonly number[];
}

/** What the tracing of a way needs to know of a network, found once. */
export interface WayMap {
  readonly elements: readonly JobElement[];
  readonly touching: readonly (readonly number[])[];
  /** Elements a way ends at: batteries and charging sources. */
  readonly sources: ReadonlySet<number>;
  /** Elements a way may not pass: loads, coils, meters of volts. */
  readonly stops: ReadonlySet<number>;
}

export function wayMap(
  elements: readonly JobElement[],
  nodeCount: number,
  loads: ReadonlySet<string>,
): WayMap {
  const touching: number[][] = Array.from({ length: nodeCount }, () => []);
  const sources = new Set<number>();
  const stops = new Set<number>();
  for (const [k, { nodes, kind, of, role }] of elements.entries()) {
    for (const node of nodes) touching[node]!.push(k);
    if (kind === "emf" || role.role === "supply") sources.add(k);
    else if (loads.has(of) || kind === "coil" || kind === "filament") stops.add(k);
  }
  return { elements, touching, sources, stops };
}

/**
 * Follows a load's current both ways to its source, at every node along the element that carries most of it; in a ring
 * that is one of the ways round, the other drops as much.
 *
 * @param at.load  place of the load's element.
 * @param at.positiveEarth  the feed is then the way the current leaves by.
 * @returns null where a way meets another load first (loads in series) or ends nowhere.
 */
export function loadDrop(
  map: WayMap,
  solution: Pick<QuickSolution, "nodeV" | "elementA">,
  at: { readonly load: number; readonly positiveEarth: boolean },
): LoadDrop | null {
  const [a, b] = map.elements[at.load]!.nodes;
  const isForward = solution.elementA[at.load]! > 0;
  const into = follow(map, solution, { load: at.load, start: isForward ? a : b, direction: -1 });
  const outOf = follow(map, solution, { load: at.load, start: isForward ? b : a, direction: 1 });
  if (into === null || outOf === null) return null;
  const [feed, back] = at.positiveEarth ? [outOf, into] : [into, outOf];
  const lost = (places: readonly number[], isCounted: (kind: string) => boolean): number =>
    places.reduce((sum, k) => {
      const { nodes, kind, ofLoad } = map.elements[k]!;
      const dropV = Math.abs(solution.nodeV[nodes[0]]! - solution.nodeV[nodes[1]]!);
      return isCounted(kind) && !ofLoad ? sum + dropV : sum;
    }, 0);
  const all = (): boolean => true;
  const isContact = (kind: string): boolean => kind !== "wire";
  return {
    feedV: lost(feed, all),
    returnV: lost(back, all),
    contactV: lost(feed, isContact) + lost(back, isContact),
    feed,
    back,
  };
}

interface Walk {
  readonly load: number;
  readonly start: number;
  /** 1: with the current, −1: against it. */
  readonly direction: 1 | -1;
}

function follow(
  map: WayMap,
  { elementA }: Pick<QuickSolution, "elementA">,
  walk: Walk,
): readonly number[] | null {
  const way: number[] = [];
  const seen = new Set([walk.start]);
  let node = walk.start;
  for (;;) {
    let next = -1;
    let mostA = 0;
    for (const k of map.touching[node]!) {
      if (k === walk.load) continue;
      const sign = map.elements[k]!.nodes[0] === node ? walk.direction : -walk.direction;
      const currentA = elementA[k]! * sign;
      if (currentA > mostA) [next, mostA] = [k, currentA];
    }
    if (next === -1 || map.stops.has(next)) return null;
    if (map.sources.has(next)) return way;
    way.push(next);
    const { nodes } = map.elements[next]!;
    node = nodes[0] === node ? nodes[1] : nodes[0];
    if (seen.has(node)) return null;
    seen.add(node);
  }
}
