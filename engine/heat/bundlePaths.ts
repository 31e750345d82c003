import { bundleRise } from "./bundleRise.ts";
import type { HeatMaterials } from "./heatMaterial.ts";
import type { ThermalPath } from "./thermalPath.ts";
import { wallResistanceKMPerW } from "./wallResistanceKMPerW.ts";
import { type RoundWire, wireInAirPath } from "./wireInAir.ts";

/** A tube drawn over a bundle: still air inside it, then its wall. */
export interface Sleeve {
  readonly airGapMm: number;
  readonly airConductivityWPerMK: number;
  readonly wallMm: number;
  readonly wallConductivityWPerMK: number;
  readonly emissivityRatio: number;
}

export interface Bundle {
  /** Every wire in it, loaded or not. */
  readonly wires: readonly RoundWire[];
  /** Outside diameter over the wires, mm; null: packingRatio · √ΣD². */
  readonly bundleDiameterMm: number | null;
  /** Bundle diameter over √ΣD²; used only where no diameter is given and there is more than one wire. */
  readonly packingRatio: number;
  /** Conductivity of wires and air between them taken as one stuff, W/mK. */
  readonly conductivityWPerMK: number;
  readonly sleeve: Sleeve | null;
  readonly ambientC: number;
  readonly materials: HeatMaterials;
}

/** Bundle diameter over the wires, mm: as given, or packingRatio · √ΣD². One wire is its own bundle. */
export function bundleDiameterMm(bundle: Bundle): number {
  if (bundle.bundleDiameterMm !== null) return bundle.bundleDiameterMm;
  const ratio = bundle.wires.length > 1 ? bundle.packingRatio : 1;
  return ratio * Math.sqrt(sumSquaresMm2(bundle));
}

function sumSquaresMm2(bundle: Bundle): number {
  return bundle.wires.reduce((sum, wire) => sum + wire.outerDiameterMm ** 2, 0);
}

/**
 * One thermal path per wire, each wire taken at the middle of the bundle (the hottest place for it), without the heat
 * of the others: set `otherHeatWPerM` for that. All paths share the outer surface and what a sleeve adds.
 */
export function bundlePaths(bundle: Bundle): readonly ThermalPath[] {
  const innerMm = bundleDiameterMm(bundle);
  const cover = sleeveOver(innerMm, bundle.sleeve);
  const squares = sumSquaresMm2(bundle);
  return bundle.wires.map((wire) => {
    const alone = wireInAirPath(wire, bundle);
    const rise = bundleRise({
      outerDiameterMm: wire.outerDiameterMm,
      sumSquaresMm2: squares,
      conductivityWPerMK: bundle.conductivityWPerMK,
    });
    return {
      ...alone,
      outerDiameterMm: cover.outerDiameterMm,
      emissivityRatio: bundle.sleeve?.emissivityRatio ?? alone.emissivityRatio,
      sharedKMPerW: cover.resistanceKMPerW,
      ownKMPerW: alone.ownKMPerW + rise.ownKMPerW,
      otherKMPerW: rise.otherKMPerW,
    };
  });
}

function sleeveOver(innerMm: number, sleeve: Sleeve | null) {
  if (sleeve === null) return { outerDiameterMm: innerMm, resistanceKMPerW: 0 };
  const boreMm = innerMm + 2 * sleeve.airGapMm;
  const outerDiameterMm = boreMm + 2 * sleeve.wallMm;
  const gap = wallResistanceKMPerW({
    innerDiameterMm: innerMm,
    outerDiameterMm: boreMm,
    conductivityWPerMK: sleeve.airConductivityWPerMK,
  });
  const wall = wallResistanceKMPerW({
    innerDiameterMm: boreMm,
    outerDiameterMm,
    conductivityWPerMK: sleeve.wallConductivityWPerMK,
  });
  return { outerDiameterMm, resistanceKMPerW: gap + wall };
}
