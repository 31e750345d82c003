import { blockCutTree } from "../geometry/index.ts";
import type { FeedGraph } from "./feedGraph.ts";

/**
 * For every conductor that leads current home: the loads whose return runs (or may run) through it, each with its feed end.
 * Seen from the earthed post the return side is a graph of its own; the wires between a load and the post are those of the blocks
 * on the way.
 */
export function returnLoads(
  graph: FeedGraph,
): ReadonlyMap<string, readonly { readonly ref: string; readonly feedNode: number }[]> {
  const tree = blockCutTree(graph, 0);
  const loads = loadsOfIslands(graph, tree);
  for (const { ref, from, to } of graph.loads) {
    for (const [returnNode, feedNode] of [
      [to, from],
      [from, to],
    ] as const) {
      for (const edge of edgesTowardsRoot(tree, returnNode)) {
        const { conductor } = graph.edges[edge]!;
        if (conductor === null) continue;
        loads.set(conductor, [...(loads.get(conductor) ?? []), { ref, feedNode }]);
      }
    }
  }
  return loads;
}

function edgesTowardsRoot(tree: ReturnType<typeof blockCutTree>, node: number): readonly number[] {
  const edges: number[] = [];
  for (
    let at = node, block = tree.blockAboveNode[at]!;
    block !== -1;
    block = tree.blockAboveNode[at]!
  ) {
    edges.push(...tree.blocks[block]!);
    at = tree.entryOfBlock[block]!;
  }
  return edges;
}

/** Conductors that reach earth through a load only (a field lead behind the charge lamp): every load that touches their island. */
function loadsOfIslands(
  graph: FeedGraph,
  tree: ReturnType<typeof blockCutTree>,
): Map<string, { ref: string; feedNode: number }[]> {
  const islandOf = Int32Array.from({ length: graph.nodeCount }, (_, node) => node);
  const find = (node: number): number => {
    let top = node;
    while (islandOf[top] !== top) top = islandOf[top]!;
    islandOf[node] = top;
    return top;
  };
  graph.edges.forEach(({ from, to }) => {
    islandOf[find(from)] = find(to);
  });
  const earth = find(0);
  const byIsland = new Map<number, { ref: string; feedNode: number }[]>();
  for (const { ref, from, to } of graph.loads) {
    for (const [inside, feedNode] of [
      [from, to],
      [to, from],
    ] as const) {
      const island = find(inside);
      if (island === earth) continue;
      byIsland.set(island, [...(byIsland.get(island) ?? []), { ref, feedNode }]);
    }
  }
  const loads = new Map<string, { ref: string; feedNode: number }[]>();
  graph.edges.forEach(({ conductor, from }, edge) => {
    const island = byIsland.get(find(from));
    if (conductor !== null && island !== undefined && tree.blockOfEdge[edge] === -1) {
      loads.set(conductor, [...(loads.get(conductor) ?? []), ...island]);
    }
  });
  return loads;
}
