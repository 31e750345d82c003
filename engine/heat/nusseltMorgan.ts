import type { NusseltBand } from "./heatMaterial.ts";

/**
 * Free convection from a thin horizontal wire as a piecewise power law, Nu = C · Ra^m.
 *
 * @param rayleighRatio  Ra on the diameter.
 * @param bands          rows of the law, from the caller's table, in rising order of Ra.
 * @returns Nu, or null where no row covers Ra: the law is not stretched beyond its rows.
 */
export function nusseltMorgan(rayleighRatio: number, bands: readonly NusseltBand[]): number | null {
  for (const band of bands) {
    if (rayleighRatio >= band.rayleighMinRatio && rayleighRatio < band.rayleighMaxRatio) {
      return band.coefficientRatio * rayleighRatio ** band.exponent;
    }
  }
  return null;
}
