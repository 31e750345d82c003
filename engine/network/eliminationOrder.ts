/** One node taken out of the graph: who it was, and whom it was joined to at that moment. */
export interface EliminatedNode {
  readonly node: number;
  readonly neighbours: readonly number[];
}

/**
 * Minimum-degree elimination order of the graph on nodes 1 .. nodeCount − 1 (node 0, the reference, is never eliminated).
 * Taking a node out joins all its neighbours (star-mesh), which is the fill of the factor.
 * @param latePenaltyCount added to the degree of the nodes in `late`, so that they tend to come last; ties go to the lower node
 */
export function eliminationOrder(
  nodeCount: number,
  pairs: readonly (readonly [number, number])[],
  late: ReadonlySet<number>,
  latePenaltyCount: number,
): EliminatedNode[] {
  const neighbours = graph(nodeCount, pairs);
  const alive = new Set<number>();
  for (let node = 1; node < nodeCount; node++) alive.add(node);
  const order: EliminatedNode[] = [];
  while (alive.size > 0) {
    let best = -1;
    let bestRank = Number.POSITIVE_INFINITY;
    for (const node of alive) {
      const rank = neighbours[node]!.size + (late.has(node) ? latePenaltyCount : 0);
      if (rank < bestRank || (rank === bestRank && node < best)) {
        best = node;
        bestRank = rank;
      }
    }
    alive.delete(best);
    order.push({ node: best, neighbours: [...neighbours[best]!] });
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
