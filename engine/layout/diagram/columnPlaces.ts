import type { LadderBox, LadderSegment } from "./ladder.ts";
import type { LadderSpan } from "./stretchLadder.ts";

/** Fineness of the outline kept of what has been placed. */
const BIN_MM = 0.5;
const GAP_MM = 0.7;
/** Half of the widest line, with air. */
const LINE_HALF_MM = 1.2;
/** What is elastic is named again after this length: under 60 mm where it is set one step smaller. */
export const REPEAT_MM = 80;

/** An item in place: its span, how it is lettered, and where its lettering begins each time it is repeated. */
export interface PlacedItem extends LadderSpan {
  readonly boxIndex: number;
  readonly letteringTopsMm: readonly number[];
}

/** A box in a column by its level and reach. */
export interface Reach extends LadderSpan {
  readonly leftMm: number;
  readonly rightMm: number;
}

export interface ColumnRoom {
  /** Least distance of columns at the foot, where their numbers stand. */
  readonly footPitchMm: number;
  readonly heightMm: number;
}

/** `full`: the fullest lettering that has room; `short`: any but the fullest; `narrow`: the narrowest that has room. */
export type Fullness = "full" | "short" | "narrow";

function chosenBox(boxes: readonly LadderBox[], lengthMm: number, fullness: Fullness): number {
  const least = boxes.reduce((low, box, i) => (box.heightMm < boxes[low]!.heightMm ? i : low), 0);
  const fitting = boxes.flatMap((box, i) => (box.heightMm <= lengthMm + 1e-6 ? [i] : []));
  if (fullness === "narrow") {
    const widthOf = (i: number): number => boxes[i]!.leftMm + boxes[i]!.rightMm;
    return fitting.reduce((best, i) => (widthOf(i) < widthOf(best) ? i : best), least);
  }
  return fitting.find((i) => fullness === "full" || i > 0) ?? least;
}

/** An item in its span, lettered as fully as asked for and as there is room. */
export function placedItem(
  { boxes, isElastic }: LadderSegment["items"][number],
  { topMm, bottomMm }: LadderSpan,
  fullness: Fullness,
): PlacedItem {
  const lengthMm = bottomMm - topMm;
  const boxIndex = chosenBox(boxes, lengthMm, fullness);
  const { heightMm } = boxes[boxIndex]!;
  const count = isElastic
    ? Math.max(
        1,
        Math.min(Math.floor(lengthMm / (heightMm + 4)), 1 + Math.floor(lengthMm / REPEAT_MM)),
      )
    : 1;
  const letteringTopsMm = Array.from(
    { length: count },
    (_, i) => topMm + ((i + 0.5) * lengthMm) / count - heightMm / 2,
  );
  return { topMm, bottomMm, boxIndex, letteringTopsMm };
}

/** What an item covers beside the line of its column. */
export const itemReaches = (
  boxes: readonly LadderBox[],
  { boxIndex, letteringTopsMm }: PlacedItem,
): Reach[] => {
  const { leftMm, rightMm, heightMm } = boxes[boxIndex]!;
  return letteringTopsMm.map((topMm) => ({
    topMm,
    bottomMm: topMm + heightMm,
    leftMm,
    rightMm,
  }));
};

export const lineReach = (topMm: number, bottomMm: number): Reach => ({
  topMm,
  bottomMm,
  leftMm: LINE_HALF_MM,
  rightMm: LINE_HALF_MM,
});

/**
 * Lines of columns from left to right, each as far left as what stands at its left allows, level by level. The last figure is the width of all.
 */
export function columnPlaces(
  columns: readonly (readonly Reach[])[],
  { footPitchMm, heightMm }: ColumnRoom,
): { readonly xsMm: readonly number[]; readonly widthMm: number } {
  const outlineMm = new Float64Array(Math.ceil(heightMm / BIN_MM) + 2);
  const xsMm: number[] = [];
  let widthMm = 0;
  const bins = ({ topMm, bottomMm }: LadderSpan): [number, number] => [
    Math.max(0, Math.floor(topMm / BIN_MM)),
    Math.min(outlineMm.length - 1, Math.ceil(bottomMm / BIN_MM)),
  ];
  for (const reaches of columns) {
    let xMm = xsMm.length === 0 ? footPitchMm / 2 : xsMm.at(-1)! + footPitchMm;
    for (const reach of reaches) {
      const [from, to] = bins(reach);
      for (let i = from; i < to; i++) xMm = Math.max(xMm, outlineMm[i]! + reach.leftMm);
    }
    for (const reach of reaches) {
      const [from, to] = bins(reach);
      const rightMm = xMm + reach.rightMm + GAP_MM;
      for (let i = from; i < to; i++) outlineMm[i] = Math.max(outlineMm[i]!, rightMm);
      widthMm = Math.max(widthMm, xMm + reach.rightMm);
    }
    xsMm.push(xMm);
  }
  return { xsMm, widthMm };
}
