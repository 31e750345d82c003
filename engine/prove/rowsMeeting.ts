import { seededRandom } from "../geometry/index.ts";

/** Fills tried for each row; the one that meets most new combinations is kept. */
const FILLS = 12;

/**
 * Rows of level numbers such that any so many factors meet every combination of their levels in some row. Each row holds the first
 * combination not met yet; the other factors are filled a few times over from a seed, and the fill that meets most is kept.
 *
 * @param strengthCount  how many factors at once; no more than there are.
 */
export function rowsMeeting(
  levelCounts: readonly number[],
  strengthCount: number,
): readonly (readonly number[])[] {
  const strength = Math.min(strengthCount, levelCounts.length);
  if (strength === 0) return [];
  const random = seededRandom(levelCounts.length);
  const open = openGroups(levelCounts, strength);
  const rows: (readonly number[])[] = [];
  for (;;) {
    const first = open.first();
    if (first === null) return rows;
    let best: readonly number[] = [];
    let bestGain = -1;
    for (let fill = 0; fill < FILLS; fill++) {
      const row = levelCounts.map((count, f) => first.get(f) ?? Math.floor(random() * count));
      const gain = open.gain(row);
      if (gain > bestGain) [best, bestGain] = [row, gain];
    }
    open.meet(best);
    rows.push(best);
  }
}

/**
 * Every choice of so many factors with the combinations of their levels no row has met yet. All choices are walked for every fill, in
 * order, so that those with the same first factors share the arithmetic of them.
 */
function openGroups(levelCounts: readonly number[], factorCount: number) {
  const groups = choices(levelCounts.length, factorCount);
  const counts = Int32Array.from(levelCounts);
  const start = new Int32Array(groups.length + 1);
  groups.forEach((factors, g) => {
    start[g + 1] = start[g]! + factors.reduce((product, f) => product * levelCounts[f]!, 1);
  });
  const missing = new Uint8Array(start[groups.length]!).fill(1);
  const levels = new Int32Array(counts.length);
  let group = 0;
  /** Adds up what is missing at the levels, marking it met if told to, over the choices that go on from `place`. */
  const walk = (left: number, from: number, place: number, meets: boolean): number => {
    let sum = 0;
    for (let f = from; f <= counts.length - left; f++) {
      const next = place * counts[f]! + levels[f]!;
      if (left > 1) {
        sum += walk(left - 1, f + 1, next, meets);
        continue;
      }
      const at = start[group++]! + next;
      sum += missing[at]!;
      if (meets) missing[at] = 0;
    }
    return sum;
  };
  const walkAll = (row: readonly number[], meets: boolean): number => {
    levels.set(row);
    group = 0;
    return walk(factorCount, 0, 0, meets);
  };
  let firstOpen = 0;
  return {
    /** Levels of the first combination not met; null: all are. */
    first: (): ReadonlyMap<number, number> | null => {
      const place = missing.indexOf(1, firstOpen);
      if (place < 0) return null;
      firstOpen = place;
      const g = start.findLastIndex((from) => from <= place);
      return levelsAt(groups[g]!, place - start[g]!, levelCounts);
    },
    gain: (row: readonly number[]): number => walkAll(row, false),
    meet: (row: readonly number[]): number => walkAll(row, true),
  };
}

function levelsAt(
  factors: readonly number[],
  place: number,
  levelCounts: readonly number[],
): ReadonlyMap<number, number> {
  const levels = new Map<number, number>();
  let left = place;
  for (const f of [...factors].reverse()) {
    levels.set(f, left % levelCounts[f]!);
    left = Math.floor(left / levelCounts[f]!);
  }
  return levels;
}

/** Every choice of so many out of the first `count` numbers, in order. */
function choices(count: number, of: number, from = 0): readonly (readonly number[])[] {
  if (of === 0) return [[]];
  return Array.from({ length: Math.max(0, count - from) }, (_, k) => from + k).flatMap((first) =>
    choices(count, of - 1, first + 1).map((rest) => [first, ...rest]),
  );
}
