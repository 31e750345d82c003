/**
 * Rectified output of a generator at any speed. A rectifier into steady volts looks resistive, so
 *
 *   E² = (V + Vd + R I)² + (X I)²,  E = k n, X = c n, all referred to the direct-current side.
 *
 * Cut-in speed is (V + Vd)/k, the ceiling at high speed k/c.
 */
export interface GeneratorLine {
  /** k, volts per rpm. */
  readonly emfPerRpmRatio: number;
  /** c, ohms per rpm. */
  readonly reactancePerRpmRatio: number;
  readonly windingOhm: number;
  /** Vd. */
  readonly diodeV: number;
}

export interface OutputPoint {
  readonly speedRpm: number;
  readonly currentA: number;
  readonly atV: number;
}

/** Points under this share of the largest current count as if they had it, so that a cut-in point does not outweigh all others. */
const LEAST_WEIGHT_RATIO = 0.05;

/**
 * The line through two points; through more, the one with the least squares of relative current error:
 * I² = k²/c² − (A²/n²)/c², A = V + Vd + R I, is linear in k²/c² and 1/c².
 *
 * @returns null where the points fix no line: fewer than two, the same twice, or a current that does not rise with speed.
 */
export function fitGeneratorLine(
  points: readonly OutputPoint[],
  { windingOhm, diodeV }: { readonly windingOhm: number; readonly diodeV: number },
): GeneratorLine | null {
  const largestA = Math.max(0, ...points.map((point) => point.currentA));
  let [s00, s01, s11, t0, t1] = [0, 0, 0, 0, 0];
  for (const { speedRpm, currentA, atV } of points) {
    const weight = 1 / Math.max(currentA, LEAST_WEIGHT_RATIO * largestA) ** 2;
    const x = ((atV + diodeV + windingOhm * currentA) / speedRpm) ** 2;
    s00 += weight ** 2;
    s01 -= weight ** 2 * x;
    s11 += (weight * x) ** 2;
    t0 += weight ** 2 * currentA ** 2;
    t1 -= weight ** 2 * x * currentA ** 2;
  }
  const determinant = s00 * s11 - s01 * s01;
  // Below this the two equations are the same to within rounding.
  if (!(determinant > 1e-12 * s00 * s11)) return null;
  const ceilingSquared = (t0 * s11 - t1 * s01) / determinant;
  const inverseSquared = (s00 * t1 - s01 * t0) / determinant;
  if (!(ceilingSquared > 0 && inverseSquared > 0)) return null;
  const reactancePerRpmRatio = 1 / Math.sqrt(inverseSquared);
  return {
    emfPerRpmRatio: Math.sqrt(ceilingSquared) * reactancePerRpmRatio,
    reactancePerRpmRatio,
    windingOhm,
    diodeV,
  };
}

/** Volts with nothing connected: E − Vd, not below 0. */
export function openCircuitV(line: GeneratorLine, speedRpm: number): number {
  return Math.max(0, line.emfPerRpmRatio * speedRpm - line.diodeV);
}

/** Current into v volts, A: the positive root of (R² + X²) I² + 2 A R I + A² − E² = 0; 0 above the open-circuit volts. */
export function generatorCurrentA(line: GeneratorLine, speedRpm: number, v: number): number {
  const E = line.emfPerRpmRatio * speedRpm;
  const X = line.reactancePerRpmRatio * speedRpm;
  const R = line.windingOhm;
  const A = v + line.diodeV;
  if (A >= E || E === 0) return 0;
  const Z2 = R * R + X * X;
  return (Math.sqrt(A * A * R * R - Z2 * (A * A - E * E)) - A * R) / Z2;
}

/** Current into a dead short at the rectifier's output, A: what a shunt regulator lets the winding carry whatever the load. */
export function shortedCurrentA(line: GeneratorLine, speedRpm: number): number {
  return generatorCurrentA(line, speedRpm, 0);
}
