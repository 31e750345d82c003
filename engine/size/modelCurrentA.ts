import {
  bundlePaths,
  type HeatMaterials,
  heatAtConductor,
  heatMaterials,
  loomMaterials,
  type ThermalPath,
} from "../heat/index.ts";
import type { BundleCount } from "./bundleTableRatio.ts";

/** What the heat model has to know of a wire: a Conductor, or the figures of a make. */
export interface HeatWire {
  readonly ohmPerM20Max: number;
  readonly conductorDiameterMm: number;
  readonly odMm: number;
  readonly insulation: string;
  readonly classC: number;
}

/**
 * Continuous current that brings the loaded wires of a bundle of equal wires to their class temperature, A.
 *
 * With M of N wires loaded alike every loaded one makes q = Q / M, so the bundle is one path for all its heat:
 *
 *   Tc = Ts + Q · ( shared + own / M + other · (M − 1) / M ),   I = √( q / R(Tc) )
 *
 * One wire alone is N = M = 1.
 *
 * @returns 0 where the air is at or above the class temperature: no current is right there.
 */
export function modelCurrentA(wire: HeatWire, ambientC: number, bundle: BundleCount): number {
  if (ambientC >= wire.classC) return 0;
  const { materials, packing } = figuresFor(wire.insulation);
  const round = {
    ohmPerM20: wire.ohmPerM20Max,
    conductorDiameterMm: wire.conductorDiameterMm,
    outerDiameterMm: wire.odMm,
  };
  const [path] = bundlePaths({
    wires: Array.from({ length: bundle.wireCount }, () => round),
    bundleDiameterMm: null,
    packingRatio: packing.packingRatio,
    conductivityWPerMK: packing.conductivityWPerMK,
    sleeve: null,
    ambientC,
    materials,
  });
  const whole = asOnePath(path as ThermalPath, bundle.loadedCount);
  const heatWPerM = heatAtConductor(whole, wire.classC).ownHeatWPerM / bundle.loadedCount;
  const hotRatio = 1 + materials.conductor.alphaPerK * (wire.classC - 20);
  return Math.sqrt(heatWPerM / (wire.ohmPerM20Max * hotRatio));
}

function asOnePath(path: ThermalPath, loadedCount: number): ThermalPath {
  const eachKMPerW =
    (path.ownKMPerW + path.otherKMPerW * (loadedCount - 1)) / loadedCount + path.sharedKMPerW;
  return { ...path, sharedKMPerW: eachKMPerW, ownKMPerW: 0, otherKMPerW: 0, otherHeatWPerM: 0 };
}

interface ModelFigures {
  readonly materials: HeatMaterials;
  readonly packing: ReturnType<typeof loomMaterials>;
}

function figuresFor(insulation: string): ModelFigures {
  return { materials: heatMaterials(insulation), packing: loomMaterials() };
}
