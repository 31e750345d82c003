/** Longest word a likeness is sought for; anything longer is no slip of the finger. */
const LONGEST_COUNT = 64;

/**
 * The candidate most like a word: fewest single letters typed wrong, missing, extra or swapped, capitals ignored.
 * At most a third of the letters may differ, and never more than three; otherwise null. Of equals the first in code-point order.
 * Source: optimal string alignment distance, G. Navarro, "A guided tour to approximate string matching", ACM Computing
 * Surveys 33 (2001) 31-88, confidence memory.
 */
export function nearestWord(word: string, candidates: Iterable<string>): string | null {
  if (word.length > LONGEST_COUNT) return null;
  const wanted = word.toLowerCase();
  let limitCount = Math.min(3, Math.max(1, Math.floor(word.length / 3)));
  let best: string | null = null;
  for (const candidate of candidates) {
    const distanceCount = distanceWithin(wanted, candidate.toLowerCase(), limitCount);
    if (distanceCount === null) continue;
    const isBetter = best === null || distanceCount < limitCount || candidate < best;
    if (isBetter) best = candidate;
    limitCount = distanceCount;
  }
  return best;
}

/** Number of slips between two words, or null when more than the limit. What they begin and end with alike costs nothing. */
function distanceWithin(a: string, b: string, limitCount: number): number | null {
  if (Math.abs(a.length - b.length) > limitCount) return null;
  const shortestCount = Math.min(a.length, b.length);
  let start = 0;
  while (start < shortestCount && a[start] === b[start]) start++;
  let endCount = 0;
  while (
    endCount < shortestCount - start &&
    a[a.length - 1 - endCount] === b[b.length - 1 - endCount]
  ) {
    endCount++;
  }
  return slips(
    a.slice(start, a.length - endCount),
    b.slice(start, b.length - endCount),
    limitCount,
  );
}

function slips(a: string, b: string, limitCount: number): number | null {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const isSame = a[i - 1] === b[j - 1];
      const isSwap = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const straight = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (isSame ? 0 : 1));
      const fewest = isSwap ? Math.min(straight, beforeLast[j - 2]! + 1) : straight;
      row.push(fewest);
      least = Math.min(least, fewest);
    }
    if (least > limitCount) return null;
    beforeLast = last;
    last = row;
  }
  const distanceCount = last[b.length]!;
  return distanceCount <= limitCount ? distanceCount : null;
}
