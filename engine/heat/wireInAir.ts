import type { HeatMaterials } from "./heatMaterial.ts";
import type { ThermalPath } from "./thermalPath.ts";
import { wallResistanceKMPerW } from "./wallResistanceKMPerW.ts";

/** One round conductor with a wall of insulation. */
export interface RoundWire {
  /** Resistance at 20 °C, Ω per metre: the published maximum where the type is known, so that heat is not underrated. */
  readonly ohmPerM20: number;
  readonly conductorDiameterMm: number;
  readonly outerDiameterMm: number;
}

/** A single horizontal wire in still air, as a thermal path. */
export function wireInAirPath(
  wire: RoundWire,
  place: { readonly ambientC: number; readonly materials: HeatMaterials },
): ThermalPath {
  const { insulation, air } = place.materials;
  return {
    outerDiameterMm: wire.outerDiameterMm,
    emissivityRatio: insulation.emissivityRatio,
    ambientC: place.ambientC,
    air,
    sharedKMPerW: 0,
    ownKMPerW: wallResistanceKMPerW({
      innerDiameterMm: wire.conductorDiameterMm,
      outerDiameterMm: wire.outerDiameterMm,
      conductivityWPerMK: insulation.conductivityWPerMK,
    }),
    otherKMPerW: 0,
    otherHeatWPerM: 0,
  };
}
