/**
 * Free convection from a long horizontal cylinder, all Rayleigh numbers up to 1e12.
 *
 *   Nu = { 0.60 + 0.387 · Ra^(1/6) / [1 + (0.559 / Pr)^(9/16)]^(8/27) }²
 *
 * @param flow.rayleighRatio  Ra = Gr · Pr on the diameter, ≥ 0.
 * @param flow.prandtlRatio   Pr, > 0.
 * @source S. W. Churchill and H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049: the equation.
 */
export function nusseltChurchillChu(flow: {
  readonly rayleighRatio: number;
  readonly prandtlRatio: number;
}): number {
  const prandtlTerm = (1 + (0.559 / flow.prandtlRatio) ** (9 / 16)) ** (8 / 27);
  const root = 0.6 + (0.387 * flow.rayleighRatio ** (1 / 6)) / prandtlTerm;
  return root * root;
}
