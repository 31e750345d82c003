import type { NumberedTree } from "./columnNumbers.ts";

/** A join that crosses anything weighs more than any length of line or any wish for a place. */
const CROSSING_WEIGHT = 1000;
const CROSSED_WEIGHT = 10;
const ACROSS_WEIGHT = 3;

export type JoinCosts = () => number;

/** What the order the lists have now costs: crossings first, then how far joins run, then pairs that stand against their wish. */
export function joinCosts(tree: NumberedTree, straight: Int32Array): JoinCosts {
  const { lists, waysOf, nodeUnder, hangsOn, meetings, rank, levelMm, topMm } = tree;
  const segmentCount = nodeUnder.length;
  const columns: Columns = {
    columnOf: new Int32Array(segmentCount),
    columnTopMm: new Float64Array(segmentCount + levelMm.length),
    columnBottomMm: new Float64Array(segmentCount + levelMm.length),
  };
  const { columnOf, columnTopMm, columnBottomMm } = columns;
  let columnCount = 0;

  /** Columns under a way, told from above where its own column begins. */
  const lay = (segment: number, fromMm: number, above: number[]): void => {
    const node = nodeUnder[segment]!;
    above.push(segment);
    if (node >= 0 && hangsOn[node] === segment) {
      layNode(node, fromMm, above);
      return;
    }
    for (const one of above) columnOf[one] = columnCount;
    columnTopMm[columnCount] = fromMm;
    columnBottomMm[columnCount++] = node < 0 ? Number.POSITIVE_INFINITY : levelMm[node]!;
  };
  const layNode = (node: number, fromMm: number, above: number[]): void => {
    const ways = waysOf[node]!;
    if (ways.length === 0) {
      for (const one of above) columnOf[one] = columnCount;
      columnTopMm[columnCount] = fromMm;
      columnBottomMm[columnCount++] = levelMm[node]!;
    }
    for (const way of ways) {
      if (way === straight[node] && above.length > 0) lay(way, fromMm, above);
      else lay(way, levelMm[node]!, []);
    }
  };

  return () => {
    columnCount = 0;
    for (const root of lists[0]!) {
      if (root < segmentCount) lay(root, topMm[root]!, []);
      else layNode(root - segmentCount, levelMm[root - segmentCount]!, []);
    }
    let cost = 0;
    for (const meeting of meetings) cost += meetingCost(tree, columns, meeting);
    for (const list of lists) cost += disorder(list, rank);
    return cost;
  };
}

/** Column of each segment, and from where to where each column has a line. */
interface Columns {
  readonly columnOf: Int32Array;
  readonly columnTopMm: Float64Array;
  readonly columnBottomMm: Float64Array;
}

/** What the joins of one node cost. */
function meetingCost(
  { hangsOn, waysOf, levelMm }: NumberedTree,
  { columnOf, columnTopMm, columnBottomMm }: Columns,
  { node, into }: NumberedTree["meetings"][number],
): number {
  const on = hangsOn[node]!;
  let [from, to] = [columnOf[on]!, columnOf[on]!];
  for (const way of waysOf[node]!) {
    from = Math.min(from, columnOf[way]!);
    to = Math.max(to, columnOf[way]!);
  }
  let cost = 0;
  for (const segment of into) {
    if (segment === on) continue;
    const at = columnOf[segment]!;
    const [first, last] = at < from ? [at + 1, from] : [to + 1, at];
    let crossedCount = 0;
    for (let i = first; i < last; i++) {
      const isMember = into.some((one) => columnOf[one] === i);
      if (isMember || columnTopMm[i]! >= levelMm[node]!) continue;
      if (columnBottomMm[i]! > levelMm[node]!) crossedCount++;
    }
    cost += ACROSS_WEIGHT * Math.max(0, last - first) + CROSSED_WEIGHT * crossedCount;
    if (crossedCount > 0) cost += CROSSING_WEIGHT;
  }
  return cost;
}

/** Pairs that stand against their wish. */
function disorder(list: readonly number[], rank: Float64Array): number {
  let count = 0;
  for (let i = 0; i < list.length; i++) {
    for (let k = i + 1; k < list.length; k++) {
      if (rank[list[i]!]! > rank[list[k]!]!) count++;
    }
  }
  return count;
}
