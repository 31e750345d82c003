/** An undirected edge. Several may join the same two vertices. */
export interface GraphEdge {
  readonly id: string;
  readonly a: string;
  readonly b: string;
  /** ≥ 0; null: nobody knows. It is never taken for nil. */
  readonly length: number | null;
}

/** The edges at each vertex, in order of id. */
export function edgesByVertex(
  edges: readonly GraphEdge[],
): ReadonlyMap<string, readonly GraphEdge[]> {
  const byVertex = new Map<string, GraphEdge[]>();
  const sorted = [...edges].sort((p, q) => (p.id < q.id ? -1 : p.id > q.id ? 1 : 0));
  for (const edge of sorted) {
    if (edge.length !== null && !(edge.length >= 0)) {
      throw new Error(`edge ${edge.id}: length ${edge.length}`);
    }
    for (const vertex of edge.a === edge.b ? [edge.a] : [edge.a, edge.b]) {
      const here = byVertex.get(vertex);
      if (here) here.push(edge);
      else byVertex.set(vertex, [edge]);
    }
  }
  return byVertex;
}

export function otherEnd(edge: GraphEdge, vertex: string): string {
  return edge.a === vertex ? edge.b : edge.a;
}
