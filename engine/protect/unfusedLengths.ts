import type { FeedGraph } from "./feedGraph.ts";

/** How far one can go from a source along copper, and how much of that lies before the first fuse. */
export interface UnfusedLengths {
  /** Wire between the source and the first fuse on the shortest way to each node, mm; null where a length is missing; undefined where there is no way. */
  readonly beforeFuseMm: readonly (number | null | undefined)[];
}

/** A length nobody measured counts as this while ways are compared (never in the answer), so that a measured way is preferred. */
const UNMEASURED_MM = 1e6;

/**
 * Shortest ways over all contacts closed (Dijkstra 1959, array form), remembering the wire passed before the first fuse.
 */
export function unfusedLengths(graph: FeedGraph, root: number): UnfusedLengths {
  const { nodeCount, edges } = graph;
  const at: number[][] = Array.from({ length: nodeCount }, () => []);
  edges.forEach((edge, index) => {
    at[edge.from]!.push(index);
    if (!edge.oneWay) at[edge.to]!.push(index);
  });
  const farMm = new Float64Array(nodeCount).fill(Infinity);
  const beforeFuseMm: (number | null | undefined)[] = new Array(nodeCount).fill(undefined);
  const fused = new Uint8Array(nodeCount);
  const queue = [root];
  farMm[root] = 0;
  beforeFuseMm[root] = 0;
  // A queue that is re-entered on improvement: exact for lengths ≥ 0, and near-linear on looms, which are nearly trees.
  for (let i = 0; i < queue.length; i++) {
    const node = queue[i]!;
    for (const index of at[node]!) {
      const edge = edges[index]!;
      const next = edge.from === node ? edge.to : edge.from;
      const stepMm = edge.lengthMm ?? UNMEASURED_MM;
      if (farMm[node]! + stepMm >= farMm[next]!) continue;
      farMm[next] = farMm[node]! + stepMm;
      fused[next] = fused[node] || edge.fuse !== null ? 1 : 0;
      const before = beforeFuseMm[node]!;
      const adds = fused[next] ? 0 : edge.lengthMm;
      beforeFuseMm[next] = before === null || adds === null ? null : before + adds;
      queue.push(next);
    }
  }
  return { beforeFuseMm };
}
