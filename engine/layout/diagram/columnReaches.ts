import { itemReaches, lineReach, type PlacedItem, type Reach } from "./columnPlaces.ts";
import type { LadderNode } from "./ladder.ts";
import type { ToldLadder } from "./tellJoins.ts";

/** What one column covers from top to bottom: its line, its lettering, and the names of the nodes that hang on it. */
export function columnReaches(
  chain: readonly string[],
  { tree, levels, told }: ToldLadder,
  nodes: ReadonlyMap<string, LadderNode>,
  items: ReadonlyMap<string, readonly PlacedItem[]>,
): readonly Reach[] {
  const toldCount = (node: string): number =>
    [...told.values()].filter((one) => one === node).length;
  const lineEnds: number[] = [];
  const reaches = chain.flatMap((id) => {
    const segment = tree.segments.get(id)!;
    const placed = items.get(id)!;
    const names: Reach[] = [];
    if (segment.from !== null) lineEnds.push(levels.nodeMm.get(segment.from)!);
    if (segment.to !== null) {
      const yMm = levels.nodeMm.get(segment.to)!;
      lineEnds.push(yMm);
      if (tree.hangsOn.get(segment.to) === id) {
        names.push(nameReach(nodes.get(segment.to)!, yMm, toldCount(segment.to)));
      }
    }
    if (segment.from !== null && !tree.hangsOn.has(segment.from)) {
      const isStraight = tree.straight.get(segment.from) === id;
      const yMm = levels.nodeMm.get(segment.from)!;
      if (isStraight) names.push(nameReach(nodes.get(segment.from)!, yMm, toldCount(segment.from)));
    }
    lineEnds.push(...placed.flatMap(({ topMm, bottomMm }) => [topMm, bottomMm]));
    return [...names, ...placed.flatMap((one, i) => itemReaches(segment.items[i]!.boxes, one))];
  });
  return [lineReach(Math.min(...lineEnds), Math.max(...lineEnds)), ...reaches];
}

const nameReach = ({ label, toldMm }: LadderNode, yMm: number, toldCount: number): Reach => ({
  topMm: yMm - label.heightMm,
  bottomMm: yMm,
  leftMm: label.leftMm,
  rightMm: label.rightMm + toldMm * toldCount,
});
