import { threeCircleRim } from "./smallPackings.ts";

export interface PackingBounds {
  /** No rim is smaller: the best of all proven bounds. */
  readonly lowerBound: number;
  /** No rim has less area than the circles in it: √Σr². */
  readonly areaBound: number;
}

/**
 * Radii below which no rim can hold the circles.
 *
 * Three bounds, the largest counts: area, √Σr²; the exact rim of the three largest; and for each k the k largest,
 * shrunk to the smallest of them, r, by Oler's inequality for points at least 1 apart in a disc of radius ρ:
 *
 *   k ≤ (2/√3) · π · ρ² + π · ρ + 1,   rim ≥ r + 2 · r · ρ
 *
 * @param radii  largest first, all > 0, at least one.
 * @source N. Oler, Acta Math. 105 (1961) 19: the inequality.
 */
export function packingBounds(radii: readonly number[]): PackingBounds {
  const areaBound = Math.sqrt(radii.reduce((sum, radius) => sum + radius * radius, 0));
  const [a = 0, b = 0, c] = radii;
  const few = c === undefined ? a + b : threeCircleRim([a, b, c]);
  let lowerBound = Math.max(areaBound, few);
  const square = (2 * Math.PI) / Math.sqrt(3);
  for (const [i, radius] of radii.entries()) {
    const reach = (Math.sqrt(Math.PI ** 2 + 4 * square * i) - Math.PI) / (2 * square);
    lowerBound = Math.max(lowerBound, radius * (1 + 2 * reach));
  }
  return { lowerBound, areaBound };
}
