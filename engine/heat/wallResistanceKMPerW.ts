/**
 * Thermal resistance of a tubular wall, per metre of length.
 *
 *   R = ln(D / d) / (2 · π · k)
 *
 * @param wall.innerDiameterMm     d, mm, > 0.
 * @param wall.outerDiameterMm     D, mm, ≥ d.
 * @param wall.conductivityWPerMK  k, W/mK, > 0.
 * @returns K·m/W.
 */
export function wallResistanceKMPerW(wall: {
  readonly innerDiameterMm: number;
  readonly outerDiameterMm: number;
  readonly conductivityWPerMK: number;
}): number {
  const ratio = wall.outerDiameterMm / wall.innerDiameterMm;
  if (!(ratio >= 1)) throw new Error(`wall: outer ${wall.outerDiameterMm} < inner diameter`);
  return Math.log(ratio) / (2 * Math.PI * wall.conductivityWPerMK);
}
