import type { Ladder, LadderPins, LadderSegment, LadderWords } from "./ladder.ts";
import { type LadderLevels, ladderLevels, leastBox } from "./ladderLevels.ts";

/** A path that goes on elsewhere: the segment cut, and the one that goes on. */
export interface LadderFold {
  readonly upper: string;
  readonly lower: string;
}

export interface FoldedLadder {
  readonly ladder: Ladder;
  readonly folds: readonly LadderFold[];
  /** False where a single item is taller than the paper. */
  readonly fits: boolean;
}

/**
 * Cuts paths longer than the paper is high: what does not fit goes on at the top in a column of its own, told in words at both ends. Of the paths that
 * are too long the one cut is the first that leaves the height; it is cut where the upper part still fits.
 */
export function foldLadder(
  input: Ladder,
  heightMm: number,
  pins: LadderPins,
  words: LadderWords,
): FoldedLadder {
  let ladder = input;
  const folds: LadderFold[] = [];
  const roundMax = input.segments.length + 8;
  for (let round = 0; round < roundMax; round++) {
    const levels = ladderLevels(ladder, pins, heightMm);
    const tall = firstTooTall(ladder, levels, heightMm);
    if (tall === null) return { ladder, folds, fits: true };
    const cut = cutAbove(tall, ladder, levels, heightMm - leastBox(words.to("")).heightMm);
    if (cut === null) return { ladder, folds, fits: false };
    const { upper, lower } = cutSegment(cut, words);
    folds.push({ upper: upper.id, lower: lower.id });
    ladder = {
      ...ladder,
      segments: ladder.segments.flatMap((one) => (one === cut.segment ? [upper, lower] : [one])),
    };
  }
  return { ladder, folds, fits: false };
}

/** Of the segments that run out below, the one that begins highest: what hangs below it moves with it. */
function firstTooTall(
  { segments }: Ladder,
  { endMm, topsMm }: LadderLevels,
  heightMm: number,
): LadderSegment | null {
  const tall = segments.filter(({ id }) => endMm.get(id)! > heightMm + 1e-6);
  const topOf = ({ id }: LadderSegment): number => topsMm.get(id)![0] ?? 0;
  return tall.sort((a, b) => topOf(a) - topOf(b) || (a.id < b.id ? -1 : 1))[0] ?? null;
}

/** A place in a path: before an item, or after the last. */
interface Cut {
  readonly segment: LadderSegment;
  readonly before: number;
}

/** The lowest place on the way down to a segment's end where the words still fit; null where a single item is too tall. */
function cutAbove(
  tall: LadderSegment,
  ladder: Ladder,
  { topsMm, endMm }: LadderLevels,
  limitMm: number,
): Cut | null {
  let segment = tall;
  for (;;) {
    const tops = topsMm.get(segment.id)!;
    const isTall = segment === tall;
    for (let before = segment.items.length - (isTall ? 1 : 0); before > 0; before--) {
      const atMm = tops[before] ?? endMm.get(segment.id)!;
      // What only goes on from elsewhere is not cut again: nothing would be gained.
      if (atMm <= limitMm && !(before === 1 && segment.from === null)) return { segment, before };
    }
    const { from } = segment;
    if (from === null) return null;
    if ((tops[0] ?? 0) <= limitMm && isTall) return { segment, before: 0 };
    const above = ladder.segments
      .filter(({ to }) => to === from)
      .sort((a, b) => endMm.get(b.id)! - endMm.get(a.id)! || (a.id < b.id ? -1 : 1))[0];
    if (above === undefined) return null;
    segment = above;
  }
}

function cutSegment(
  { segment, before }: Cut,
  words: LadderWords,
): { readonly upper: LadderSegment; readonly lower: LadderSegment } {
  const { id, items, from, to } = segment;
  const last = items[before - 1]?.id ?? from ?? "";
  const next = items[before]?.id ?? to ?? "";
  return {
    upper: { ...segment, to: null, items: [...items.slice(0, before), words.to(next)] },
    lower: {
      ...segment,
      id: `${id}, on`,
      from: null,
      items: [words.from(last), ...items.slice(before)],
    },
  };
}
