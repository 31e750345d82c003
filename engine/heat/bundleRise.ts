/**
 * How far a wire in the middle of a round bundle sits above the bundle's surface, per watt and metre.
 *
 * The other wires' heat is spread evenly from this wire's own edge to the rim; this wire's heat passes through all of
 * it. With ρ the ratio of bundle to wire by area (ρ² = ΣD² / D²) and k the conductivity of the bundle as a whole:
 *
 *   own   = ln ρ / (2πk)
 *   other = [ 1/2 − ln ρ / (ρ² − 1) ] / (2πk)
 *
 * For N equal wires all making the same heat the two together are exactly Q · (1 − 1/N) / (4πk).
 *
 * @param bundle.outerDiameterMm     of this wire, mm.
 * @param bundle.sumSquaresMm2       ΣD² over all wires of the bundle, this one included, mm², ≥ D².
 * @param bundle.conductivityWPerMK  k, W/mK.
 * @returns K·m/W for the wire's own heat and for the heat of all the others.
 */
export function bundleRise(bundle: {
  readonly outerDiameterMm: number;
  readonly sumSquaresMm2: number;
  readonly conductivityWPerMK: number;
}): { readonly ownKMPerW: number; readonly otherKMPerW: number } {
  const squareRatio = bundle.sumSquaresMm2 / bundle.outerDiameterMm ** 2;
  const aroundKMPerW = 1 / (2 * Math.PI * bundle.conductivityWPerMK);
  if (!(squareRatio >= 1 - 1e-12))
    throw new Error("bundle: this wire is not in the sum of squares");
  const excess = squareRatio - 1;
  if (excess < 1e-9) return { ownKMPerW: 0, otherKMPerW: 0 };
  const logRatio = Math.log1p(excess) / 2;
  return {
    ownKMPerW: aroundKMPerW * logRatio,
    otherKMPerW: aroundKMPerW * (0.5 - logRatio / excess),
  };
}
