import type { Ladder, LadderSegment } from "./ladder.ts";
import { BUS_DROP_MM, easyHeightMm, type LadderLevels, leastBox } from "./ladderLevels.ts";

export interface LadderSpan {
  readonly topMm: number;
  readonly bottomMm: number;
}

/**
 * Spans of every segment's items once paths are drawn out to their nodes and to the lower rail: what is elastic takes the slack in equal parts, loads and
 * what is below them stand on the rail.
 */
export function stretchLadder(
  { nodes, segments }: Ladder,
  levels: LadderLevels,
  heightMm: number,
): ReadonlyMap<string, readonly LadderSpan[]> {
  const labelMm = new Map(nodes.map(({ id, label }) => [id, label.heightMm]));
  return new Map(
    segments.map((segment) => {
      const { id, from, to } = segment;
      const startMm = from === null ? 0 : levels.nodeMm.get(from)! + BUS_DROP_MM;
      const footMm = to === null ? heightMm : levels.nodeMm.get(to)! - labelMm.get(to)!;
      return [id, spansOf(segment, levels.topsMm.get(id)!, startMm, footMm)] as const;
    }),
  );
}

function spansOf(
  { items }: LadderSegment,
  tops: readonly number[],
  startMm: number,
  footMm: number,
): LadderSpan[] {
  const least = items.map((item) => leastBox(item).heightMm);
  const naturalMm = tops.length === 0 ? startMm : tops.at(-1)! + least.at(-1)!;
  let slackMm = Math.max(0, footMm - naturalMm);
  // First room for the lettering of what does not stretch, then the rest to what does.
  const stretched = stretchedItems(items);
  const grown = items.map((item, i) => {
    const moreMm = stretched[i] ? 0 : Math.max(0, easyHeightMm(item) - least[i]!);
    const isRoom = moreMm <= slackMm;
    if (isRoom) slackMm -= moreMm;
    return isRoom ? moreMm : 0;
  });
  const eachMm = slackMm / Math.max(1, stretched.filter(Boolean).length);
  const firstLow = items.findIndex(({ isLow }) => isLow);
  let shiftMm = 0;
  return items.map((_, i) => {
    if (!stretched.some(Boolean) && i === firstLow) shiftMm += slackMm;
    const topMm = tops[i]! + shiftMm;
    shiftMm += grown[i]! + (stretched[i] ? eachMm : 0);
    return { topMm, bottomMm: tops[i]! + least[i]! + shiftMm };
  });
}

/** What takes up slack: the elastic items above the first that stands low; without any, those below it. */
function stretchedItems(items: LadderSegment["items"]): readonly boolean[] {
  const firstLow = items.findIndex(({ isLow }) => isLow);
  const upper = items.map(({ isElastic }, i) => isElastic && (firstLow < 0 || i < firstLow));
  return upper.some(Boolean) ? upper : items.map(({ isElastic }) => isElastic);
}
