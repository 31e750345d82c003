/**
 * Rows of level numbers such that any three factors meet every combination of their levels in some row (any two, where there
 * are only two factors). Greedy: each row starts from the first combination not met yet and fills the other factors with the
 * level that meets most new ones. Deterministic; not the shortest array there is.
 */
export function coveringRows(levelCounts: readonly number[]): readonly (readonly number[])[] {
  const strengthCount = Math.min(3, levelCounts.length);
  if (strengthCount === 0) return [];
  const groups = groupsOf(levelCounts, strengthCount);
  const groupsWith = levelCounts.map((_, factor) =>
    groups.filter(({ factors }) => factors.includes(factor)),
  );
  const rows: (readonly number[])[] = [];
  for (;;) {
    const first = groups.find((group) => group.missingCount > 0);
    if (first === undefined) return rows;
    const row = levelCounts.map(() => -1);
    const index = first.missing.indexOf(1);
    levelsAt(first, index, levelCounts).forEach((level, k) => {
      row[first.factors[k]!] = level;
    });
    levelCounts.forEach((_, factor) => {
      if (row[factor] === -1)
        row[factor] = bestLevel(groupsWith[factor]!, row, factor, levelCounts);
    });
    for (const group of groups) meet(group, row, levelCounts);
    rows.push(row);
  }
}

/** Some factors together, with a mark for each combination of their levels not met yet. */
interface Group {
  readonly factors: readonly number[];
  readonly missing: Uint8Array;
  missingCount: number;
}

function groupsOf(levelCounts: readonly number[], strengthCount: number): readonly Group[] {
  const groups: Group[] = [];
  const choose = (factors: readonly number[], from: number): void => {
    if (factors.length === strengthCount) {
      const missingCount = factors.reduce((product, f) => product * levelCounts[f]!, 1);
      groups.push({ factors, missing: new Uint8Array(missingCount).fill(1), missingCount });
      return;
    }
    for (let f = from; f < levelCounts.length; f++) choose([...factors, f], f + 1);
  };
  choose([], 0);
  return groups;
}

/** Place of a row's combination in a group's marks; −1 while a factor has no level yet. */
function placeIn(
  { factors }: Group,
  row: readonly number[],
  levelCounts: readonly number[],
): number {
  let place = 0;
  for (const f of factors) {
    if (row[f]! < 0) return -1;
    place = place * levelCounts[f]! + row[f]!;
  }
  return place;
}

function levelsAt(
  { factors }: Group,
  place: number,
  levelCounts: readonly number[],
): readonly number[] {
  const levels: number[] = [];
  let rest = place;
  for (const f of [...factors].reverse()) {
    levels.unshift(rest % levelCounts[f]!);
    rest = Math.floor(rest / levelCounts[f]!);
  }
  return levels;
}

function bestLevel(
  touching: readonly Group[],
  row: readonly number[],
  factor: number,
  levelCounts: readonly number[],
): number {
  const newCounts = new Int32Array(levelCounts[factor]!);
  const trial = row.with(factor, 0);
  for (const group of touching) {
    if (group.missingCount === 0) continue;
    const first = placeIn(group, trial, levelCounts);
    if (first < 0) continue;
    const step = strideOf(group, factor, levelCounts);
    for (let level = 0; level < newCounts.length; level++) {
      if (group.missing[first + level * step] === 1) newCounts[level]!++;
    }
  }
  let best = 0;
  for (let level = 1; level < newCounts.length; level++) {
    if (newCounts[level]! > newCounts[best]!) best = level;
  }
  return best;
}

/** By how much the place of a combination grows with each level of one of its factors. */
function strideOf({ factors }: Group, factor: number, levelCounts: readonly number[]): number {
  let stride = 1;
  for (let i = factors.length - 1; factors[i] !== factor; i--) stride *= levelCounts[factors[i]!]!;
  return stride;
}

function meet(group: Group, row: readonly number[], levelCounts: readonly number[]): void {
  const place = placeIn(group, row, levelCounts);
  if (group.missing[place] !== 1) return;
  group.missing[place] = 0;
  group.missingCount--;
}
