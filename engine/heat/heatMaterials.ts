import { type Figure, figure, nusseltBands } from "../tables/index.ts";
import type { HeatMaterials } from "./heatMaterial.ts";

const air = (id: string): Figure => figure("airProperties", id, "value");
const copper = (id: string): Figure => figure("copper", id, "value");
const wall = (
  id: string,
  column: "conductivityWPerMK" | "volumetricHeatJPerM3K" | "emissivityRatio",
): Figure => figure("insulations", id, column);

/**
 * Copper in an insulation in still air, out of the tables.
 *
 * @param insulation  row of the insulations table, e.g. "pvc".
 * @throws  Error where the table has no such row.
 */
export function heatMaterials(insulation: string): HeatMaterials {
  return {
    conductor: {
      resistivityOhmM: copper("resistivity-20").value,
      alphaPerK: copper("tempco-20").value,
      volumetricHeatJPerM3K: copper("volumetric-heat").value,
    },
    insulation: {
      conductivityWPerMK: wall(insulation, "conductivityWPerMK").value,
      volumetricHeatJPerM3K: wall(insulation, "volumetricHeatJPerM3K").value,
      emissivityRatio: wall(insulation, "emissivityRatio").value,
    },
    air: {
      viscosityPaSPerRootK: air("viscosity-factor").value,
      viscosityOffsetK: air("viscosity-offset").value,
      conductivityWPerMPerKRootK: air("conductivity-factor").value,
      conductivityOffsetK: air("conductivity-offset").value,
      conductivityDecayK: air("conductivity-exponent").value,
      gasConstantJPerKgK: air("gas-constant").value,
      heatCapacityJPerKgK: air("specific-heat").value,
      pressurePa: air("pressure").value,
    },
    morganBands: nusseltBands.map((band) => ({
      rayleighMinRatio: band.rayleighMinRatio,
      rayleighMaxRatio: band.rayleighMaxRatio,
      coefficientRatio: band.coefficientRatio,
      exponent: band.powerExponent,
    })),
  };
}

/** The figures behind `heatMaterials` that a reader may want to see sourced: those a result is sensitive to. */
export function heatMaterialFigures(insulation: string): readonly Figure[] {
  return [
    copper("tempco-20"),
    copper("volumetric-heat"),
    wall(insulation, "conductivityWPerMK"),
    wall(insulation, "volumetricHeatJPerM3K"),
    wall(insulation, "emissivityRatio"),
  ];
}

/** The loom model's own figures: packing of round wires, conductivity of the whole, and what a sleeve is made of. */
export function loomMaterials() {
  return {
    packingRatio: air("bundle-packing").value,
    conductivityWPerMK: air("bundle-conductivity").value,
    sleeveWallConductivityWPerMK: air("sleeve-conductivity").value,
    sleeveAirConductivityWPerMK: air("sleeve-gap-air-conductivity").value,
  };
}
