import type { HeatMaterials } from "./heatMaterial.ts";

/**
 * Heat capacity of one metre of wire taken as one lump, J/mK.
 *
 *   C = c_conductor · S + share · c_insulation · π/4 · (D² − d²)
 *
 * @param wire.areaMm2              metal only, mm².
 * @param wire.insulationShareRatio 1: all insulation as hot as the conductor, the usual lump for minutes. 0: copper
 *                                  alone. With less capacity a wire is never colder while it heats, so 0 is the safe
 *                                  side for any question "how hot at most".
 */
export function heatCapacityJPerMK(
  wire: {
    readonly areaMm2: number;
    readonly conductorDiameterMm: number;
    readonly outerDiameterMm: number;
    readonly insulationShareRatio: number;
  },
  materials: Pick<HeatMaterials, "conductor" | "insulation">,
): number {
  const wallMm2 = (Math.PI / 4) * (wire.outerDiameterMm ** 2 - wire.conductorDiameterMm ** 2);
  const perMm2 = 1e-6;
  return (
    perMm2 *
    (materials.conductor.volumetricHeatJPerM3K * wire.areaMm2 +
      wire.insulationShareRatio * materials.insulation.volumetricHeatJPerM3K * wallMm2)
  );
}
