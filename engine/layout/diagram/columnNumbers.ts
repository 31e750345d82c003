import type { LadderLevels } from "./ladderLevels.ts";
import type { LadderTree } from "./ladderTree.ts";

/**
 * A tree in figures, so that thousands of orders can be looked at: segments are 0 … n−1, nodes stand behind them. Lists are exchanged in place and written
 * back to the tree when the search is over.
 */
export interface NumberedTree {
  /** Roots first, then the ways of each node. */
  readonly lists: readonly number[][];
  /** List of each node's ways. */
  readonly waysOf: readonly number[][];
  /** Node under each segment that hangs on it or not; −1: none. */
  readonly nodeUnder: Int32Array;
  readonly hangsOn: Int32Array;
  /** Nodes several segments come down to. */
  readonly meetings: readonly { readonly node: number; readonly into: readonly number[] }[];
  readonly rank: Float64Array;
  readonly isPut: readonly boolean[];
  /** Levels of columns and nodes for `joinCost`. */
  readonly levelMm: Float64Array;
  readonly topMm: Float64Array;
  readonly writeBack: () => void;
}

export function numberedTree(tree: LadderTree, levels: LadderLevels): NumberedTree {
  const segmentIds = [...tree.segments.keys()];
  const nodeIds = [...tree.ways.keys()];
  const numberOf = new Map([...segmentIds, ...nodeIds].map((id, i) => [id, i]));
  const n = segmentIds.length;
  const node = (id: string | null | undefined): number => (id == null ? -1 : numberOf.get(id)! - n);
  const waysOf = nodeIds.map((id) => tree.ways.get(id)!.map((way) => numberOf.get(way)!));
  const roots = tree.roots.map((id) => numberOf.get(id)!);
  const hangsOn = Int32Array.from(nodeIds, (id) => numberOf.get(tree.hangsOn.get(id) ?? "") ?? -1);
  const all = [...segmentIds, ...nodeIds];
  return {
    lists: [roots, ...waysOf],
    waysOf,
    hangsOn,
    nodeUnder: Int32Array.from(segmentIds, (id) => node(tree.segments.get(id)!.to)),
    meetings: nodeIds.flatMap((id, i) => {
      const into = tree.into.get(id)!.map((segment) => numberOf.get(segment)!);
      return into.length > 1 ? [{ node: i, into }] : [];
    }),
    rank: Float64Array.from(all, tree.rankOf),
    isPut: all.map(tree.isPut),
    levelMm: Float64Array.from(nodeIds, (id) => levels.nodeMm.get(id)!),
    topMm: Float64Array.from(segmentIds, (id) => {
      const { from } = tree.segments.get(id)!;
      return from === null ? 0 : levels.nodeMm.get(from)!;
    }),
    writeBack: () => {
      tree.roots.splice(0, roots.length, ...roots.map((i) => all[i]!));
      nodeIds.forEach((id, i) => {
        const ways = tree.ways.get(id)!;
        ways.splice(0, ways.length, ...waysOf[i]!.map((way) => all[way]!));
        if (hangsOn[i]! >= 0) tree.hangsOn.set(id, all[hangsOn[i]!]!);
      });
    },
  };
}
