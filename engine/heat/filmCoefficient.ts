import { airAtFilm } from "./airAtFilm.ts";
import type { AirModel, NusseltBand } from "./heatMaterial.ts";
import { nusseltChurchillChu } from "./nusseltChurchillChu.ts";
import { nusseltMorgan } from "./nusseltMorgan.ts";
import { STANDARD_GRAVITY_M_PER_S2, ZERO_CELSIUS_K } from "./physicalConstants.ts";

export interface FilmProblem {
  readonly diameterMm: number;
  readonly surfaceC: number;
  readonly ambientC: number;
  readonly air: AirModel;
}

export interface Film {
  /** h, W/m²K; null where the chosen law has no row for this Rayleigh number. */
  readonly coefficientWPerM2K: number | null;
  readonly rayleighRatio: number;
  readonly nusseltRatio: number | null;
  readonly prandtlRatio: number;
}

/**
 * Film coefficient of a horizontal cylinder in still air.
 *
 *   Ra = g · |Ts − Ta| · D³ · Pr / (Tf · ν²),   h = Nu · k / D,   air at Tf = (Ts + Ta) / 2
 *
 * @param film         diameter mm (> 0), temperatures °C, air coefficients.
 * @param morganBands  when given, Morgan's power law; otherwise Churchill and Chu's equation.
 */
export function filmCoefficient(film: FilmProblem, morganBands?: readonly NusseltBand[]): Film {
  const filmC = (film.surfaceC + film.ambientC) / 2;
  const air = airAtFilm(film.air, filmC);
  const diameterM = film.diameterMm / 1000;
  const grashofRatio =
    (STANDARD_GRAVITY_M_PER_S2 * Math.abs(film.surfaceC - film.ambientC) * diameterM ** 3) /
    ((filmC + ZERO_CELSIUS_K) * air.kinematicM2PerS ** 2);
  const rayleighRatio = grashofRatio * air.prandtlRatio;
  const nusseltRatio = morganBands
    ? nusseltMorgan(rayleighRatio, morganBands)
    : nusseltChurchillChu({ rayleighRatio, prandtlRatio: air.prandtlRatio });
  return {
    coefficientWPerM2K:
      nusseltRatio === null ? null : (nusseltRatio * air.conductivityWPerMK) / diameterM,
    rayleighRatio,
    nusseltRatio,
    prandtlRatio: air.prandtlRatio,
  };
}
