import type { Ladder, LadderBox, LadderItem } from "./ladder.ts";

/** The same ladder without lettering that is lower but wider: what is drawn where there is height to spare. */
export const leanLadder = (ladder: Ladder): Ladder => ({
  ...ladder,
  segments: ladder.segments.map((segment) => ({ ...segment, items: segment.items.map(leanItem) })),
});

/** Without its last box where that one is wider than the one before. */
export function leanItem(item: LadderItem): LadderItem {
  const [first, ...rest] = item.boxes;
  const last = rest.at(-1);
  const before = rest.at(-2) ?? first;
  if (last === undefined || !item.isElastic || widthMm(last) <= widthMm(before)) return item;
  return { ...item, boxes: [first, ...rest.slice(0, -1)] };
}

const widthMm = ({ leftMm, rightMm }: LadderBox): number => leftMm + rightMm;
