import type { AirModel } from "./heatMaterial.ts";
import { ZERO_CELSIUS_K } from "./physicalConstants.ts";

export interface AirAtFilm {
  readonly viscosityPaS: number;
  readonly conductivityWPerMK: number;
  /** ν = µ / ρ. */
  readonly kinematicM2PerS: number;
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
  const viscosityPaS = (air.viscosityPaSPerRootK * power) / (kelvin + air.viscosityOffsetK);
  const conductivityWPerMK =
    (air.conductivityWPerMPerKRootK * power) /
    (kelvin + air.conductivityOffsetK * 10 ** (-air.conductivityDecayK / kelvin));
  return {
    viscosityPaS,
    conductivityWPerMK,
    kinematicM2PerS: (viscosityPaS * air.gasConstantJPerKgK * kelvin) / air.pressurePa,
    prandtlRatio: (air.heatCapacityJPerKgK * viscosityPaS) / conductivityWPerMK,
  };
}
