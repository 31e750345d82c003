import type { AirModel } from "./heatMaterial.ts";
import { ZERO_CELSIUS_K } from "./physicalConstants.ts";

export interface AirAtFilm {
  readonly viscosityPaS: number;
  readonly conductivityWPerMK: number;
  readonly densityKgPerM3: number;
  readonly prandtlRatio: number;
}

/**
 * Air at the mean of surface and surroundings, by the formulas of `AirModel`; Pr = cp · µ / k.
 *
 * @param air    coefficients, from the caller's table.
 * @param filmC  film temperature, °C.
 */
export function airAtFilm(air: AirModel, filmC: number): AirAtFilm {
  const kelvin = filmC + ZERO_CELSIUS_K;
  const power = kelvin * Math.sqrt(kelvin);
  const viscosityPaS = (air.viscosityPaSPerK05 * power) / (kelvin + air.viscosityOffsetK);
  const conductivityWPerMK =
    (air.conductivityWPerMK15 * power) /
    (kelvin + air.conductivityOffsetK * 10 ** (-air.conductivityDecayK / kelvin));
  return {
    viscosityPaS,
    conductivityWPerMK,
    densityKgPerM3: air.pressurePa / (air.gasConstantJPerKgK * kelvin),
    prandtlRatio: (air.heatCapacityJPerKgK * viscosityPaS) / conductivityWPerMK,
  };
}
