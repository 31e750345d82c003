import { blockCutTree } from "../geometry/index.ts";
import type { CompiledJob } from "../operate/index.ts";

/** Stands for the frame among what can be touched: anything fed can. */
export const FRAME = "@frame";

/**
 * For every conductor nothing feeds: the conductors nothing feeds, itself among them, from which current on its way to earth can pass
 * through it, and whether current from the frame can. Contacts count as closed. In the graph of what is not fed, rooted at the battery's
 * earthed post, a simple path to the root runs through
 * the blocks above its start and no others, so every edge of those blocks may carry and no other can.
 */
export function touchedUpstream(
  { jobNetwork, elementOfConductor }: CompiledJob,
  isFed: (conductor: string) => boolean,
): (conductor: string) => readonly string[] {
  const { elements, nodes, earth } = jobNetwork;
  const fedNodes = new Set<number>();
  for (const [id, k] of elementOfConductor) {
    if (isFed(id)) for (const node of elements[k]!.nodes) fedNodes.add(node);
  }
  const isReturn = (k: number): boolean => {
    const { kind, nodes: ends, law } = elements[k]!;
    const joins = kind === "wire" || kind === "joint" || kind === "bond" || kind === "contact";
    return (
      joins &&
      law.kind === "ohm" &&
      law.ohm < 1e6 &&
      !ends.some((node) => fedNodes.has(node) && node !== 0)
    );
  };
  const edges = [...elements.keys()].filter(isReturn);
  const graph = {
    nodeCount: nodes.names.length,
    from: edges.map((k) => elements[k]!.nodes[0]),
    to: edges.map((k) => elements[k]!.nodes[1]),
  };
  const tree = blockCutTree(graph, 0);
  const conductorOf = new Map([...elementOfConductor].map(([id, k]) => [k, id]));
  const upstream = new Map<string, Set<string>>();
  const mark = (from: number, touched: string): void => {
    for (let block = from; block >= 0; block = tree.blockAboveNode[tree.entryOfBlock[block]!]!) {
      for (const edge of tree.blocks[block]!) {
        const carried = conductorOf.get(edges[edge]!);
        if (carried !== undefined)
          upstream.set(carried, (upstream.get(carried) ?? new Set()).add(touched));
      }
    }
  };
  edges.forEach((k, edge) => {
    const id = conductorOf.get(k);
    if (id !== undefined) mark(tree.blockOfEdge[edge]!, id);
  });
  if (earth !== null) mark(tree.blockAboveNode[nodes.indexOf.get(earth)!]!, FRAME);
  return (id) => (isFed(id) ? [] : [...(upstream.get(id) ?? [id])].sort());
}
