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

/** Dijkstra's method (1959) with the answers for each start kept. Ties go to the lower vertex, so it is repeatable. */
export function wayFinder(graph: LoomGraph): WayFinder {
  const touching = edgesByVertex(graph);
  const trees = new Map<number, readonly (number | null)[]>();
  const bridges = new Map<number, boolean>();
  const isBridge = (edge: number): boolean => {
    const known = bridges.get(edge) ?? !joinedWithout(graph, touching, edge);
    bridges.set(edge, known);
    return known;
  };
  const treeFrom = (from: number): readonly (number | null)[] => {
    const known = trees.get(from) ?? shortestTree(graph, touching, { from, without: null });
    trees.set(from, known);
    return known;
  };
  const way = (from: number, to: number): Way | null => walkBack(graph, treeFrom(from), from, to);
  const others = new Map<string, Way | null>();
  const findOther = (from: number, to: number): Way | null => {
    let other: Way | null = null;
    for (const { edge } of way(from, to) ?? []) {
      if (isBridge(edge)) continue;
      const tree = shortestTree(graph, touching, { from, without: edge });
      const found = walkBack(graph, tree, from, to);
      if (found === null) continue;
      if (other === null || costMm(graph, found) < costMm(graph, other)) other = found;
    }
    return other;
  };
  const otherWay = (from: number, to: number): Way | null => {
    const key = `${from} ${to}`;
    const known = others.get(key);
    if (known !== undefined) return known;
    const other = findOther(from, to);
    others.set(key, other);
    return other;
  };
  return { way, otherWay };
}

const edgeCostMm = (graph: LoomGraph, edge: number): number => graph.edges[edge]?.lengthMm ?? 0;

const costMm = (graph: LoomGraph, way: Way): number =>
  way.reduce((sum, { edge }) => sum + edgeCostMm(graph, edge), 0);

function edgesByVertex(graph: LoomGraph): readonly (readonly number[])[] {
  const touching: number[][] = Array.from({ length: graph.vertexCount }, () => []);
  for (const [i, edge] of graph.edges.entries()) {
    touching[edge.a]?.push(i);
    touching[edge.b]?.push(i);
  }
  return touching;
}

const otherEnd = (graph: LoomGraph, edge: number, vertex: number): number => {
  const { a, b } = graph.edges[edge]!;
  return a === vertex ? b : a;
};

/** True where the two ends of an edge still hang together without it. */
function joinedWithout(
  graph: LoomGraph,
  touching: readonly (readonly number[])[],
  without: number,
): boolean {
  const { a, b } = graph.edges[without]!;
  const seen = new Set([a]);
  const open = [a];
  for (let vertex = open.pop(); vertex !== undefined; vertex = open.pop()) {
    if (vertex === b) return true;
    for (const edge of touching[vertex] ?? []) {
      const next = otherEnd(graph, edge, vertex);
      if (edge === without || seen.has(next)) continue;
      seen.add(next);
      open.push(next);
    }
  }
  return false;
}

/** For every vertex the last edge of its shortest way from `from`; null where none leads there. */
function shortestTree(
  graph: LoomGraph,
  touching: readonly (readonly number[])[],
  search: { readonly from: number; readonly without: number | null },
): readonly (number | null)[] {
  const costsMm = new Array<number>(graph.vertexCount).fill(Number.POSITIVE_INFINITY);
  const lastEdge = new Array<number | null>(graph.vertexCount).fill(null);
  const settled = new Array<boolean>(graph.vertexCount).fill(false);
  costsMm[search.from] = 0;
  for (;;) {
    let nearest = -1;
    for (let i = 0; i < graph.vertexCount; i++) {
      if (!settled[i] && costsMm[i]! < (costsMm[nearest] ?? Number.POSITIVE_INFINITY)) nearest = i;
    }
    if (nearest < 0) return lastEdge;
    settled[nearest] = true;
    for (const edge of touching[nearest] ?? []) {
      if (edge === search.without) continue;
      const next = otherEnd(graph, edge, nearest);
      const cost = costsMm[nearest]! + edgeCostMm(graph, edge);
      if (cost < costsMm[next]!) {
        costsMm[next] = cost;
        lastEdge[next] = edge;
      }
    }
  }
}

function walkBack(
  graph: LoomGraph,
  tree: readonly (number | null)[],
  from: number,
  to: number,
): Way | null {
  const way: { edge: number; forward: boolean }[] = [];
  let vertex = to;
  while (vertex !== from) {
    const edge = tree[vertex] ?? null;
    if (edge === null) return null;
    way.push({ edge, forward: graph.edges[edge]?.b === vertex });
    vertex = otherEnd(graph, edge, vertex);
  }
  return way.reverse();
}
