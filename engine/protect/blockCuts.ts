import { type BlockCutTree, type CutEdge, minimumCut } from "../geometry/index.ts";
import type { Job } from "../job/index.ts";
import type { FeedEdge, FeedGraph } from "./feedGraph.ts";
import { ALL_CLOSED, isExcluded, worstAssignments } from "./worstAssignments.ts";

/** The dearest of the cheapest cuts over every position of the switches concerned. */
export interface BlockCut {
  /** Sum of what the cut fuses carry, A; Infinity where no fuse parts the two; 0 where they are never joined. */
  readonly totalA: number;
  readonly fuses: readonly string[];
  readonly positions: Readonly<Record<string, string>>;
  readonly pathCount: number;
}

const NEVER: BlockCut = { totalA: 0, fuses: [], positions: {}, pathCount: 0 };

/**
 * Cut between two places of one block, for every position its switches can take there (relays pulled and released, flasher closed).
 * Closing a contact never makes a cut cheaper, so only positions whose closed contacts are not contained in another's are tried.
 *
 * @param exit  node, or the two ends of a wire: a short may lie anywhere along it, so both count as the place.
 * @param without  edge left out (the wire itself).
 */
export function blockCut(
  job: Job,
  graph: FeedGraph,
  block: readonly number[],
  entry: number,
  exit: readonly number[],
  without: number | null,
): BlockCut {
  const indices = block.filter((edge) => edge !== without);
  const edges = indices.map((index) => graph.edges[index]!);
  const number = new Map<number, number>();
  const local = (node: number): number => {
    if (!number.has(node)) number.set(node, number.size);
    return number.get(node)!;
  };
  const source = local(entry);
  for (const edge of edges) {
    local(edge.from);
    local(edge.to);
  }
  for (const node of exit) local(node);
  const target = number.size;
  let worst = NEVER;
  for (const positions of worstAssignments(edges)) {
    if (isExcluded(job, positions)) continue;
    const cut = minimumCut(
      [
        ...edges.map((edge) => cutEdge(edge, positions, local)),
        ...exit.map((node) => bridge(local(node), target)),
      ],
      target + 1,
      source,
      target,
    );
    if (cut.total <= worst.totalA) continue;
    worst = {
      totalA: cut.total,
      fuses: cut.edges
        .map((i) => edges[i]?.fuse?.id ?? "")
        .filter((id) => id !== "")
        .sort(),
      positions,
      pathCount: cut.pathCount,
    };
  }
  return worst;
}

const bridge = (from: number, to: number): CutEdge => ({
  from,
  to,
  forward: Infinity,
  backward: 0,
});

function cutEdge(
  edge: FeedEdge,
  positions: Readonly<Record<string, string>>,
  local: (node: number) => number,
): CutEdge {
  const { contact } = edge;
  const position = contact === null ? null : positions[contact.controller];
  const closed =
    position === null ||
    position === ALL_CLOSED ||
    (contact!.closedIn as readonly string[]).includes(position ?? "");
  const capacity = closed ? (edge.fuse?.carriesA ?? Infinity) : 0;
  return {
    from: local(edge.from),
    to: local(edge.to),
    forward: capacity,
    backward: edge.oneWay ? 0 : capacity,
  };
}

/** Blocks from a node up to the root, nearest first, each with the node it is left through on the way down. */
export function blocksAbove(
  tree: BlockCutTree,
  node: number,
): readonly { readonly block: number; readonly exit: number }[] {
  const chain: { block: number; exit: number }[] = [];
  for (
    let at = node, block = tree.blockAboveNode[at]!;
    block !== -1;
    block = tree.blockAboveNode[at]!
  ) {
    chain.push({ block, exit: at });
    at = tree.entryOfBlock[block]!;
  }
  return chain;
}
