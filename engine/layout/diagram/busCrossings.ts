import type { LadderLevels } from "./ladderLevels.ts";
import type { LadderTree } from "./ladderTree.ts";

/** A way into a node that does not hang on it, and the columns its line would run across. */
export interface JoinCrossing {
  readonly segment: string;
  readonly node: string;
  readonly crossedCount: number;
  /** Columns between it and the node. */
  readonly acrossCount: number;
}

/** From where to where a column has a line, in levels. */
interface Extent {
  readonly topMm: number;
  readonly bottomMm: number;
}

/** Every join of a ladder in an order of columns, with what it would cross. Buses of the tree itself cross nothing. */
export function busCrossings(
  tree: LadderTree,
  columns: readonly (readonly string[])[],
  levels: LadderLevels,
): readonly JoinCrossing[] {
  const columnOf = new Map<string, number>();
  columns.forEach((chain, i) => {
    for (const segment of chain) columnOf.set(segment, i);
  });
  const extents = columns.map((chain) => extentOf(tree, chain, levels));
  const joins: JoinCrossing[] = [];
  for (const [node, coming] of tree.into) {
    const hangsOn = tree.hangsOn.get(node);
    const own = [hangsOn, ...tree.ways.get(node)!].flatMap((id) =>
      id === undefined ? [] : columnOf.get(id)!,
    );
    const [from, to] = [Math.min(...own), Math.max(...own)];
    const yMm = levels.nodeMm.get(node)!;
    const others = coming.filter((id) => id !== hangsOn);
    const joined = new Set(others.map((id) => columnOf.get(id)!));
    for (const segment of others) {
      const at = columnOf.get(segment)!;
      const between = at < from ? [at + 1, from] : [to + 1, at];
      let crossedCount = 0;
      for (let i = between[0]!; i < between[1]!; i++) {
        const { topMm, bottomMm } = extents[i]!;
        if (!joined.has(i) && topMm < yMm && bottomMm > yMm) crossedCount++;
      }
      joins.push({
        segment,
        node,
        crossedCount,
        acrossCount: Math.max(0, between[1]! - between[0]!),
      });
    }
  }
  return joins;
}

function extentOf(tree: LadderTree, chain: readonly string[], levels: LadderLevels): Extent {
  const first = tree.segments.get(chain[0]!)!;
  const last = tree.segments.get(chain.at(-1)!)!;
  return {
    topMm: first.from === null ? 0 : levels.nodeMm.get(first.from)!,
    bottomMm: last.to === null ? Number.POSITIVE_INFINITY : levels.nodeMm.get(last.to)!,
  };
}
