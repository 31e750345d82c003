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
  const groups = choices(levelCounts.length, strength).map((factors) => {
    const missingCount = factors.reduce((product, f) => product * levelCounts[f]!, 1);
    return { factors, missing: new Uint8Array(missingCount).fill(1), missingCount };
  });
  const placeIn = (factors: readonly number[], row: readonly number[]): number =>
    factors.reduce((place, f) => place * levelCounts[f]! + row[f]!, 0);
  const gain = (row: readonly number[]): number =>
    groups.reduce((sum, { factors, missing }) => sum + missing[placeIn(factors, row)]!, 0);
  const rows: (readonly number[])[] = [];
  let open = 0;
  for (;;) {
    while (open < groups.length && groups[open]!.missingCount === 0) open++;
    const first = groups[open];
    if (first === undefined) return rows;
    const fixed = levelsAt(first.factors, first.missing.indexOf(1), levelCounts);
    const fills = Array.from({ length: FILLS }, () =>
      levelCounts.map((count, f) => fixed.get(f) ?? Math.floor(random() * count)),
    );
    const row = fills.reduce((best, one) => (gain(one) > gain(best) ? one : best));
    for (const group of groups) {
      const place = placeIn(group.factors, row);
      group.missingCount -= group.missing[place]!;
      group.missing[place] = 0;
    }
    rows.push(row);
  }
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
