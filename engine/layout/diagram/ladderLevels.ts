import type { Ladder, LadderBox, LadderItem, LadderPins, LadderSegment } from "./ladder.ts";

/** From a bus down to the first thing that hangs on it. */
export const BUS_DROP_MM = 2;

/** Levels below the upper rail, as high as everything can stand. */
export interface LadderLevels {
  readonly nodeMm: ReadonlyMap<string, number>;
  /** Tops of a segment's items, and its end after them. */
  readonly topsMm: ReadonlyMap<string, readonly number[]>;
  readonly endMm: ReadonlyMap<string, number>;
}

/** The lowest way to letter an item. */
export const leastBox = ({ boxes }: LadderItem): LadderBox =>
  boxes.reduce((least, box) => (box.heightMm < least.heightMm ? box : least));

/** What an item takes where there is height to spare: one that is elastic the room for its slimmest lettering. */
export const easyHeightMm = (item: LadderItem): number =>
  item.isElastic
    ? item.boxes.reduce((slim, box) => (widthMm(box) < widthMm(slim) ? box : slim)).heightMm
    : item.boxes[0].heightMm;

const widthMm = ({ leftMm, rightMm }: LadderBox): number => leftMm + rightMm;

/**
 * Longest path from the top: a node stands below everything that comes down to it, and one that stands low as low as the foot allows.
 */
export function ladderLevels(ladder: Ladder, pins: LadderPins, heightMm: number): LadderLevels {
  const highest = highestLevels(ladder, pins);
  const low = ladder.nodes.filter(({ isLow }) => isLow).map(({ id }) => id);
  if (low.length === 0) return highest;
  const lowest = lowestLevels(ladder, new Set(low), heightMm, highest);
  return highestLevels(ladder, pins, lowest);
}

/** How low the nodes that stand low can be: so that everything below still ends above the foot. */
function lowestLevels(
  { nodes, segments }: Ladder,
  low: ReadonlySet<string>,
  heightMm: number,
  { nodeMm }: LadderLevels,
): ReadonlyMap<string, number> {
  const labelMm = new Map(nodes.map(({ id, label }) => [id, label.heightMm]));
  const found = new Map<string, number>();
  const lowestOf = (node: string): number => {
    const known = found.get(node);
    if (known !== undefined) return known;
    const limits = segments.flatMap(({ from, to, items }) => {
      if (from !== node) return [];
      const footMm =
        to === null ? heightMm : (low.has(to) ? lowestOf(to) : nodeMm.get(to)!) - labelMm.get(to)!;
      return [footMm - BUS_DROP_MM - items.reduce((sum, item) => sum + easyHeightMm(item), 0)];
    });
    const mm = Math.max(nodeMm.get(node)!, Math.min(...limits));
    found.set(node, mm);
    return mm;
  };
  for (const node of low) lowestOf(node);
  return found;
}

function highestLevels(
  { nodes, segments }: Ladder,
  pins: LadderPins,
  atLeast: ReadonlyMap<string, number> = new Map(),
): LadderLevels {
  const into = new Map<string, LadderSegment[]>(nodes.map(({ id }) => [id, []]));
  for (const segment of segments) {
    if (segment.to !== null) into.get(segment.to)!.push(segment);
  }
  const labelMm = new Map(nodes.map(({ id, label }) => [id, label.heightMm]));
  const nodeMm = new Map<string, number>();
  const topsMm = new Map<string, readonly number[]>();
  const endMm = new Map<string, number>();
  const open = new Set<string>();
  const levelOf = (node: string): number => {
    const known = nodeMm.get(node);
    if (known !== undefined) return known;
    if (open.has(node)) throw new Error(`a ladder leads back up to ${node}`);
    open.add(node);
    const ends = into.get(node)!.map((segment) => endOf(segment) + labelMm.get(node)!);
    const headMm = ends.length === 0 ? labelMm.get(node)! : 0;
    const mm = Math.max(headMm, ...ends, pins[node]?.yMm ?? 0, atLeast.get(node) ?? 0);
    nodeMm.set(node, mm);
    return mm;
  };
  const endOf = (segment: LadderSegment): number => {
    const known = endMm.get(segment.id);
    if (known !== undefined) return known;
    let atMm = segment.from === null ? 0 : levelOf(segment.from) + BUS_DROP_MM;
    const tops = segment.items.map((item) => {
      const topMm = Math.max(atMm, pins[item.id]?.yMm ?? 0);
      atMm = topMm + leastBox(item).heightMm;
      return topMm;
    });
    topsMm.set(segment.id, tops);
    endMm.set(segment.id, atMm);
    return atMm;
  };
  for (const { id } of nodes) levelOf(id);
  for (const segment of segments) endOf(segment);
  return { nodeMm, topsMm, endMm };
}
