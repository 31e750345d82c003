import { bridgeEdges, type GraphEdge, type Route, shortestRoutes } from "../geometry/index.ts";
import type { LoomGraph } from "./loomGraph.ts";

/** A way over the graph: edges in order, each with the direction it is passed in. */
export type Way = readonly { readonly edge: number; readonly forward: boolean }[];

export interface WayFinder {
  /**
   * Shortest way between two vertices; null where none leads there. An unmeasured run counts as nothing, so a way
   * that avoids it is certainly the shortest, and a way that uses it has no length.
   */
  way(from: number, to: number): Way | null;
  /** Shortest way that differs from `way(from, to)` by at least one edge; null where there is none. */
  otherWay(from: number, to: number): Way | null;
}

/** Finds ways over a loom, with the answers for each start kept: many wires share their ends. */
export function wayFinder(graph: LoomGraph): WayFinder {
  const edges = graph.edges.map(
    ({ a, b, lengthMm }, i): GraphEdge => ({
      id: `${i}`,
      a: `${a}`,
      b: `${b}`,
      length: lengthMm ?? 0,
    }),
  );
  const bridges = bridgeEdges(edges);
  const kept = new Map<number, ReadonlyMap<string, Route>>();
  const routesFrom = (from: number): ReadonlyMap<string, Route> => {
    const known = kept.get(from) ?? shortestRoutes(edges, `${from}`);
    kept.set(from, known);
    return known;
  };
  const way = (from: number, to: number): Way | null =>
    from === to ? [] : asWay(graph, from, routesFrom(from).get(`${to}`));
  const others = new Map<string, Way | null>();
  const otherWay = (from: number, to: number): Way | null => {
    const key = `${from} ${to}`;
    const known = others.get(key);
    if (known !== undefined) return known;
    let other: Way | null = null;
    for (const { edge } of way(from, to) ?? []) {
      if (bridges.has(`${edge}`)) continue;
      const rest = edges.filter(({ id }) => id !== `${edge}`);
      const found = asWay(graph, from, shortestRoutes(rest, `${from}`, `${to}`).get(`${to}`));
      if (found === null) continue;
      if (other === null || costMm(graph, found) < costMm(graph, other)) other = found;
    }
    others.set(key, other);
    return other;
  };
  return { way, otherWay };
}

function asWay(graph: LoomGraph, from: number, route: Route | undefined): Way | null {
  if (route === undefined || route.kind !== "found") return null;
  let vertex = from;
  return route.edges.map((id) => {
    const edge = Number(id);
    const { a, b } = graph.edges[edge]!;
    const forward = a === vertex;
    vertex = forward ? b : a;
    return { edge, forward };
  });
}

const costMm = (graph: LoomGraph, way: Way): number =>
  way.reduce((sum, { edge }) => sum + (graph.edges[edge]?.lengthMm ?? 0), 0);
