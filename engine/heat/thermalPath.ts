import { filmCoefficient } from "./filmCoefficient.ts";
import type { AirModel, NusseltBand } from "./heatMaterial.ts";
import { STEFAN_BOLTZMANN_W_PER_M2K4, ZERO_CELSIUS_K } from "./physicalConstants.ts";

/**
 * How the heat of one conductor gets to the surrounding air. With q the conductor's own heat and Q = q + otherHeat
 * all heat leaving the outer surface (W/m), and Ts the surface temperature:
 *
 *   Tc = Ts + Q · sharedKMPerW + q · ownKMPerW + otherHeat · otherKMPerW
 *   Q  = π · D · [ h · (Ts − Ta) + ε · σ · (Ts⁴ − Ta⁴) ]
 *
 * A lone wire is the case otherHeat = 0, shared = 0, own = the wall of its insulation.
 */
export interface ThermalPath {
  readonly outerDiameterMm: number;
  readonly emissivityRatio: number;
  readonly ambientC: number;
  readonly air: AirModel;
  readonly sharedKMPerW: number;
  readonly ownKMPerW: number;
  readonly otherKMPerW: number;
  readonly otherHeatWPerM: number;
  /** When given, convection follows this power law instead of Churchill and Chu. */
  readonly morganBands?: readonly NusseltBand[];
}

export interface SurfaceLoss {
  readonly convectionWPerM: number;
  readonly radiationWPerM: number;
  readonly totalWPerM: number;
  readonly coefficientWPerM2K: number;
  /** False where Morgan's law has no row: convection is then counted as nil, so the loss is a lower bound. */
  readonly covered: boolean;
}

/** Q of the equation above at a surface temperature, W per metre; negative when the surface is colder than the air. */
export function surfaceLoss(path: ThermalPath, surfaceC: number): SurfaceLoss {
  const { ambientC, outerDiameterMm } = path;
  const film = filmCoefficient(
    { diameterMm: outerDiameterMm, surfaceC, ambientC, air: path.air },
    path.morganBands,
  );
  const coefficientWPerM2K = film.coefficientWPerM2K ?? 0;
  const girthM = (Math.PI * outerDiameterMm) / 1000;
  const convectionWPerM = girthM * coefficientWPerM2K * (surfaceC - ambientC);
  const hot = (surfaceC + ZERO_CELSIUS_K) ** 2;
  const cold = (ambientC + ZERO_CELSIUS_K) ** 2;
  const radiationWPerM =
    girthM * path.emissivityRatio * STEFAN_BOLTZMANN_W_PER_M2K4 * (hot * hot - cold * cold);
  return {
    convectionWPerM,
    radiationWPerM,
    totalWPerM: convectionWPerM + radiationWPerM,
    coefficientWPerM2K,
    covered: film.coefficientWPerM2K !== null || surfaceC === ambientC,
  };
}

/** Tc of the equation above, °C, when `totalWPerM` leaves a surface at `surfaceC`. */
export function conductorOverSurfaceC(
  path: ThermalPath,
  at: { readonly surfaceC: number; readonly totalWPerM: number },
): number {
  const ownWPerM = at.totalWPerM - path.otherHeatWPerM;
  return (
    at.surfaceC +
    at.totalWPerM * path.sharedKMPerW +
    ownWPerM * path.ownKMPerW +
    path.otherHeatWPerM * path.otherKMPerW
  );
}
