import { bridgeEdges } from "./bridgeEdges.ts";
import { edgesByVertex, type GraphEdge, otherEnd } from "./graphEdge.ts";

/** Lengths nearer than this share of themselves count as the same: sums in another order differ in the last digits. */
const SAME_SHARE = 1e-9;

export type Route =
  | {
      readonly kind: "found";
      readonly length: number;
      /** From the start to the end, both included. */
      readonly vertices: readonly string[];
      readonly edges: readonly string[];
      /** Another route is just as short; this one was taken for its fewer edges, then its earlier ids. */
      readonly isTied: boolean;
      /** No loop is touched, so there is no other route at all. */
      readonly isOnly: boolean;
      /** Through edges of unknown length there may be a shorter one. */
      readonly mayBeShorter: boolean;
    }
  /** Every route leads over edges of unknown length; these are the ones to be measured on one with the fewest of them. */
  | { readonly kind: "unknown"; readonly unknownEdges: readonly string[] };

interface Reached {
  readonly unknownCount: number;
  readonly length: number;
  readonly hopCount: number;
  readonly by: GraphEdge | null;
  readonly before: string | null;
  readonly routeCount: number;
}

/**
 * The shortest route from one vertex to every other it is joined to (Dijkstra), by known lengths.
 *
 * @param edges  undirected; ids unique.
 * @param from   a vertex. It has a route of length 0 to itself.
 * @param only   the one vertex wanted, where the others are not.
 * @returns by vertex; a vertex that cannot be reached at all has no entry.
 */
export function shortestRoutes(
  edges: readonly GraphEdge[],
  from: string,
  only?: string,
): ReadonlyMap<string, Route> {
  const around = edgesByVertex(edges);
  const bridges = bridgeEdges(edges);
  // First by unknown edges, then by length: a route without unknown edges is preferred to any other.
  const known = reach(around, from, (a, b) => a.unknownCount - b.unknownCount);
  // Unknown edges taken as nil: no real route is shorter than this.
  const isKnown = edges.every(({ length }) => length !== null);
  const least = isKnown ? known : reach(around, from, () => 0);
  const routes = new Map<string, Route>();
  const wanted = only === undefined ? [...known.keys()].sort() : known.has(only) ? [only] : [];
  for (const vertex of wanted) {
    const end = known.get(vertex)!;
    const { vertices, edges: path } = walkBack(known, vertex);
    if (end.unknownCount > 0) {
      const unknownEdges = path.filter(({ length }) => length === null).map(({ id }) => id);
      routes.set(vertex, { kind: "unknown", unknownEdges });
      continue;
    }
    routes.set(vertex, {
      kind: "found",
      length: end.length,
      vertices,
      edges: path.map(({ id }) => id),
      isTied: end.routeCount > 1,
      isOnly: path.every(({ id }) => bridges.has(id)),
      mayBeShorter: shorterBy(least.get(vertex)!.length, end.length),
    });
  }
  return routes;
}

const shorterBy = (a: number, b: number): boolean => a < b - SAME_SHARE * Math.max(a, b);

type Rank = (a: Reached, b: Reached) => number;

/** Below 0 where `a` is the better way to the same vertex; 0 where they tie in rank and length. */
function compare(a: Reached, b: Reached, rank: Rank): number {
  const first = rank(a, b);
  if (first !== 0) return first;
  return shorterBy(a.length, b.length) ? -1 : shorterBy(b.length, a.length) ? 1 : 0;
}

function reach(
  around: ReadonlyMap<string, readonly GraphEdge[]>,
  from: string,
  rank: Rank,
): ReadonlyMap<string, Reached> {
  const best = new Map<string, Reached>([
    [from, { unknownCount: 0, length: 0, hopCount: 0, by: null, before: null, routeCount: 1 }],
  ]);
  const settled = new Map<string, Reached>();
  const isBefore = (p: string, q: string): boolean => {
    const order = compare(best.get(p)!, best.get(q)!, rank);
    const hops = best.get(p)!.hopCount - best.get(q)!.hopCount;
    return order !== 0 ? order < 0 : hops !== 0 ? hops < 0 : p < q;
  };
  // Open vertices, unsorted: the graphs met here have few at a time.
  const open = new Set([from]);
  while (open.size > 0) {
    let vertex: string | null = null;
    for (const one of open) if (vertex === null || isBefore(one, vertex)) vertex = one;
    open.delete(vertex!);
    const here = best.get(vertex!)!;
    settled.set(vertex!, here);
    for (const edge of around.get(vertex!) ?? []) {
      const to = otherEnd(edge, vertex!);
      if (settled.has(to)) continue;
      const over: Reached = {
        unknownCount: here.unknownCount + (edge.length === null ? 1 : 0),
        length: here.length + (edge.length ?? 0),
        hopCount: here.hopCount + 1,
        by: edge,
        before: vertex,
        routeCount: here.routeCount,
      };
      best.set(to, better(best.get(to), over, rank));
      open.add(to);
    }
  }
  return settled;
}

function better(old: Reached | undefined, fresh: Reached, rank: Rank): Reached {
  if (old === undefined) return fresh;
  const order = compare(fresh, old, rank);
  if (order !== 0) return order < 0 ? fresh : old;
  const routeCount = old.routeCount + fresh.routeCount;
  const hops = fresh.hopCount - old.hopCount;
  const isFresh = hops !== 0 ? hops < 0 : fresh.by!.id < old.by!.id;
  return { ...(isFresh ? fresh : old), routeCount };
}

function walkBack(reached: ReadonlyMap<string, Reached>, to: string) {
  const vertices = [to];
  const edges: GraphEdge[] = [];
  for (let at = reached.get(to)!; at.by !== null; at = reached.get(at.before!)!) {
    edges.unshift(at.by);
    vertices.unshift(at.before!);
  }
  return { vertices, edges };
}
