/** Enough halvings to exhaust a double between any two temperatures; the method normally needs fewer than twenty. */
const STEP_COUNT_MAX = 200;

/**
 * Root of a function that changes sign once, from below zero at `min` to above zero at `max`, by the Illinois form of
 * false position guarded by halving: the bracket is never left.
 *
 * @returns the root to about 1e-12 of its size.
 */
export function risingRoot(
  valueAt: (x: number) => number,
  bracket: { readonly min: number; readonly max: number },
): number {
  let { min: low, max: high } = bracket;
  let below = valueAt(low);
  let above = valueAt(high);
  if (below >= 0) return low;
  if (above <= 0) return high;
  let lastSide = 0;
  for (let step = 0; step < STEP_COUNT_MAX; step++) {
    const width = high - low;
    if (width <= 1e-12 * (1 + Math.abs(low) + Math.abs(high))) break;
    let x = low - (below * width) / (above - below);
    if (!(x > low && x < high) || step % 3 === 2) x = (low + high) / 2;
    const value = valueAt(x);
    if (value === 0) return x;
    if (value < 0) {
      low = x;
      below = value;
      if (lastSide < 0) above /= 2;
      lastSide = -1;
    } else {
      high = x;
      above = value;
      if (lastSide > 0) below /= 2;
      lastSide = 1;
    }
  }
  return (low + high) / 2;
}
