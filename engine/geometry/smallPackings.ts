/** Circles by radius, largest first, as centres about the middle of the rim that holds them. */
export interface RimPacking {
  readonly radius: number;
  readonly centres: readonly (readonly [x: number, y: number])[];
}

/**
 * Radius of the rim around three circles that touch each other (the outer one of Descartes' four circles):
 *
 *   k = k1 + k2 + k3 − 2 · √(k1·k2 + k2·k3 + k3·k1), radius = −1 / k, k_i = 1 / r_i
 *
 * or r1 + r2 where the third fits beside the two largest without adding to them. The largest that does touches both and
 * the rim of r1 + r2: k3 = (k1² + k1·k2 + k2²) / (k1 + k2), the same equation solved for that circle.
 *
 * @param radii  three, largest first, all > 0.
 */
export function threeCircleRim(radii: readonly [number, number, number]): number {
  const [a, b, c] = radii.map((radius) => 1 / radius) as [number, number, number];
  if (c >= (a * a + a * b + b * b) / (a + b)) return radii[0] + radii[1];
  return -1 / (a + b + c - 2 * Math.sqrt(a * b + b * c + c * a));
}

/**
 * The tightest rim around one, two or three circles, in closed form.
 *
 * @param radii  one to three, largest first.
 */
export function smallPacking(radii: readonly number[]): RimPacking {
  const [a, b, c] = radii as [number, number?, number?];
  if (b === undefined) return { radius: a, centres: [[0, 0]] };
  const pair = a + b;
  const two = [
    [-b, 0],
    [a, 0],
  ] as const;
  if (c === undefined) return { radius: pair, centres: two };
  const radius = threeCircleRim([a, b, c]);
  if (radius === pair) return { radius, centres: [...two, besideTwo(pair, a, b, c)] };
  // The middle of the rim is the point whose distance to each centre is the rim's radius less the circle's.
  const apart = { x: (pair ** 2 + (a + c) ** 2 - (b + c) ** 2) / (2 * pair) };
  const height = Math.sqrt(Math.max(0, (a + c) ** 2 - apart.x ** 2));
  const x = (pair ** 2 + (radius - a) ** 2 - (radius - b) ** 2) / (2 * pair);
  const rise = Math.sqrt(Math.max(0, (radius - a) ** 2 - x ** 2));
  const off = (y: number): number => Math.abs(Math.hypot(apart.x - x, height - y) - (radius - c));
  const y = off(rise) < off(-rise) ? rise : -rise;
  return {
    radius,
    centres: [
      [-x, -y],
      [pair - x, -y],
      [apart.x - x, height - y],
    ],
  };
}

/** A third circle inside the rim of two that touch, resting on the larger and on the rim. */
function besideTwo(rim: number, a: number, b: number, c: number): readonly [number, number] {
  // Distances: a + c from the centre (−b, 0) of the larger, rim − c from the middle.
  const x = ((a + c) ** 2 - (rim - c) ** 2 - b ** 2) / (2 * b);
  return [x, Math.sqrt(Math.max(0, (rim - c) ** 2 - x ** 2))];
}
