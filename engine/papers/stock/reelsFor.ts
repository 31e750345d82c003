/** One reel with what is cut from it. */
export interface Reel {
  readonly lengthM: number;
  readonly usedM: number;
  readonly leftoverM: number;
  readonly pieceCount: number;
}

/** A millimetre of rounding is no reason for another reel, m. */
const CLOSE_M = 1e-9;

/**
 * Cuts pieces from reels, longest piece first, each from the reel it leaves least of: a wire is never joined to be long enough.
 *
 * @param piecesM  longest first, m
 * @returns null where some piece finds no reel. Longest first is not always the best possible; then a reel more is bought.
 */
export function reelsFor(
  piecesM: readonly number[],
  reelsM: readonly number[],
): readonly Reel[] | null {
  const left = reelsM
    .toSorted((a, b) => a - b)
    .map((lengthM) => ({ lengthM, leftM: lengthM, n: 0 }));
  for (const pieceM of piecesM) {
    let best: (typeof left)[number] | null = null;
    for (const reel of left) {
      if (reel.leftM + CLOSE_M < pieceM) continue;
      if (best === null || reel.leftM < best.leftM) best = reel;
    }
    if (best === null) return null;
    best.leftM = Math.max(0, best.leftM - pieceM);
    best.n += 1;
  }
  return left.map(({ lengthM, leftM, n }) => ({
    lengthM,
    usedM: lengthM - leftM,
    leftoverM: leftM,
    pieceCount: n,
  }));
}
