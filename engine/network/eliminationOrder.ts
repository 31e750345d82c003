/** One node taken out of the graph: who it was, and whom it was joined to at that moment. */
export interface EliminatedNode {
  readonly node: number;
  readonly neighbours: readonly number[];
}

/**
 * Minimum-degree elimination order of the graph on nodes 1 .. nodeCount − 1 (node 0, the reference, is never eliminated).
 * Taking a node out joins all its neighbours (star-mesh), which is the fill of the factor. Of equal degrees the one fewest
 * others must precede comes first: a chain between junctions goes by every second node instead of from end to end, so that a processor has
 * independent work at hand. Then the lower node.
 * @param latePenaltyCount added to the degree of the nodes in `late`, so that they tend to come last
 */
export function eliminationOrder(
  nodeCount: number,
  pairs: readonly (readonly [number, number])[],
  late: ReadonlySet<number>,
  latePenaltyCount: number,
): EliminatedNode[] {
  const neighbours = graph(nodeCount, pairs);
  const height = new Int32Array(nodeCount);
  const alive = new Set<number>();
  for (let node = 1; node < nodeCount; node++) alive.add(node);
  const order: EliminatedNode[] = [];
  while (alive.size > 0) {
    let best = -1;
    let bestRank = Number.POSITIVE_INFINITY;
    for (const node of alive) {
      const degree = neighbours[node]!.size + (late.has(node) ? latePenaltyCount : 0);
      const rank = (degree * nodeCount + height[node]!) * nodeCount + node;
      if (rank < bestRank) {
        best = node;
        bestRank = rank;
      }
    }
    alive.delete(best);
    order.push({ node: best, neighbours: [...neighbours[best]!] });
    for (const node of neighbours[best]!) height[node] = Math.max(height[node]!, height[best]! + 1);
    joinNeighbours(neighbours, best);
  }
  return order;
}

function graph(nodeCount: number, pairs: readonly (readonly [number, number])[]): Set<number>[] {
  const neighbours = Array.from({ length: nodeCount }, () => new Set<number>());
  for (const [a, b] of pairs) {
    if (a === b || a === 0 || b === 0) continue;
    neighbours[a]!.add(b);
    neighbours[b]!.add(a);
  }
  return neighbours;
}

function joinNeighbours(neighbours: Set<number>[], gone: number): void {
  const around = [...neighbours[gone]!];
  for (const one of around) {
    neighbours[one]!.delete(gone);
    for (const other of around) if (other !== one) neighbours[one]!.add(other);
  }
}
