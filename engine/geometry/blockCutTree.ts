/** An undirected graph: edge e joins `from[e]` and `to[e]`; nodes are 0 .. nodeCount − 1. Parallel edges and loops may occur. */
export interface EdgeList {
  readonly nodeCount: number;
  readonly from: readonly number[];
  readonly to: readonly number[];
}

/** Blocks (maximal parts that no single node separates) of everything reachable from a root. */
export interface BlockCutTree {
  /** Block of each edge; −1 where the root does not reach it, and for loops. */
  readonly blockOfEdge: Int32Array;
  /** Edges of each block. */
  readonly blocks: readonly (readonly number[])[];
  /** Node through which each block is entered from the root. */
  readonly entryOfBlock: readonly number[];
  /** Block that holds the way from each node towards the root; −1 for the root and for what it does not reach. */
  readonly blockAboveNode: Int32Array;
}

interface Visit {
  readonly node: number;
  readonly viaEdge: number;
  next: number;
}

function incidence({ nodeCount, from, to }: EdgeList): readonly (readonly number[])[] {
  const edges: number[][] = Array.from({ length: nodeCount }, () => []);
  from.forEach((a, edge) => {
    if (a === to[edge]) return;
    edges[a]!.push(edge);
    edges[to[edge]!]!.push(edge);
  });
  return edges;
}

/**
 * Blocks by depth-first search with low points (Hopcroft & Tarjan 1973), without recursion.
 * Every simple path from the root to a node runs through exactly the blocks between `blockAboveNode` and the root.
 */
export function blockCutTree(graph: EdgeList, root: number): BlockCutTree {
  const edgesAt = incidence(graph);
  const order = new Int32Array(graph.nodeCount).fill(-1);
  const low = new Int32Array(graph.nodeCount);
  const blockOfEdge = new Int32Array(graph.from.length).fill(-1);
  const blockAboveNode = new Int32Array(graph.nodeCount).fill(-1);
  const blocks: number[][] = [];
  const entryOfBlock: number[] = [];
  const edgeStack: number[] = [];
  const visits: Visit[] = [{ node: root, viaEdge: -1, next: 0 }];
  let clock = 0;
  order[root] = low[root] = clock++;

  const closeBlock = (entry: number, lastEdge: number): void => {
    const block = blocks.length;
    const edges: number[] = [];
    let edge: number;
    do {
      edge = edgeStack.pop()!;
      blockOfEdge[edge] = block;
      edges.push(edge);
      for (const node of [graph.from[edge]!, graph.to[edge]!]) {
        if (node !== entry) blockAboveNode[node] = block;
      }
    } while (edge !== lastEdge);
    blocks.push(edges);
    entryOfBlock.push(entry);
  };

  while (visits.length > 0) {
    const visit = visits[visits.length - 1]!;
    const edge = edgesAt[visit.node]![visit.next++];
    if (edge === undefined) {
      visits.pop();
      const above = visits[visits.length - 1];
      if (above === undefined) break;
      low[above.node] = Math.min(low[above.node]!, low[visit.node]!);
      if (low[visit.node]! >= order[above.node]!) closeBlock(above.node, visit.viaEdge);
      continue;
    }
    if (edge === visit.viaEdge) continue;
    const other = graph.from[edge] === visit.node ? graph.to[edge]! : graph.from[edge]!;
    if (order[other] === -1) {
      order[other] = low[other] = clock++;
      edgeStack.push(edge);
      visits.push({ node: other, viaEdge: edge, next: 0 });
    } else if (order[other]! < order[visit.node]!) {
      edgeStack.push(edge);
      low[visit.node] = Math.min(low[visit.node]!, order[other]!);
    }
  }
  return { blockOfEdge, blocks, entryOfBlock, blockAboveNode };
}
