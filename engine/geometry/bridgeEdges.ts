import { edgesByVertex, type GraphEdge, otherEnd } from "./graphEdge.ts";

/**
 * Edges that lie on no loop: take one away and its ends are no longer joined. Depth-first, without recursion; each
 * vertex keeps the earliest vertex its branch can climb back to.
 *
 * @returns ids.
 * @source R. Tarjan, Inform. Process. Lett. 2 (1974) 160: the criterion.
 */
export function bridgeEdges(edges: readonly GraphEdge[]): ReadonlySet<string> {
  const around = edgesByVertex(edges);
  const order = new Map<string, number>();
  const climb = new Map<string, number>();
  const bridges = new Set<string>();
  for (const root of [...around.keys()].sort()) {
    if (order.has(root)) continue;
    const stack = [{ vertex: root, by: null as string | null, next: 0 }];
    while (stack.length > 0) {
      const top = stack.at(-1)!;
      if (top.next === 0) {
        order.set(top.vertex, order.size);
        climb.set(top.vertex, order.get(top.vertex)!);
      }
      const edge = around.get(top.vertex)![top.next++];
      if (edge === undefined) {
        stack.pop();
        const below = stack.at(-1);
        if (below === undefined) continue;
        const reach = climb.get(top.vertex)!;
        climb.set(below.vertex, Math.min(climb.get(below.vertex)!, reach));
        if (reach > order.get(below.vertex)!) bridges.add(top.by!);
      } else if (edge.id !== top.by) {
        const to = otherEnd(edge, top.vertex);
        const met = order.get(to);
        if (met === undefined) stack.push({ vertex: to, by: edge.id, next: 0 });
        else climb.set(top.vertex, Math.min(climb.get(top.vertex)!, met));
      }
    }
  }
  return bridges;
}
