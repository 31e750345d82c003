import { type HeatAtConductor, heatAtConductor } from "./heatAtConductor.ts";
import type { HeatMaterials } from "./heatMaterial.ts";
import { REFERENCE_C } from "./physicalConstants.ts";
import { type RoundWire, wireInAirPath } from "./wireInAir.ts";

export interface SteadyCurrent {
  /** Largest continuous current, A; 0 when ambient and limit are the same. */
  readonly currentA: number;
  /** The same by Morgan's law; null where that law has no row. */
  readonly morganCurrentA: number | null;
  readonly surfaceC: number;
  readonly heatWPerM: number;
}

/**
 * Largest constant current of one wire in still air for a conductor limit: the inverse of `steadyConductorTemperatureC`.
 *
 *   I = √( q / (R20 · (1 + α · (T − 20))) ),   q the heat that leaves when the conductor is at T
 *
 * @param wire  Ω/m at 20 °C, mm, °C; `limitC` ≥ `ambientC`.
 * @returns null when the surroundings are already hotter than the limit: no current is right there.
 */
export function steadyCurrentA(
  wire: RoundWire & {
    readonly limitC: number;
    readonly ambientC: number;
    readonly materials: HeatMaterials;
  },
): SteadyCurrent | null {
  if (wire.limitC < wire.ambientC) return null;
  const path = wireInAirPath(wire, wire);
  const { alphaPerK } = wire.materials.conductor;
  const hotOhmPerM = wire.ohmPerM20 * (1 + alphaPerK * (wire.limitC - REFERENCE_C));
  const currentFor = (heat: HeatAtConductor): number => Math.sqrt(heat.ownHeatWPerM / hotOhmPerM);
  const heat = heatAtConductor(path, wire.limitC);
  const { morganBands } = wire.materials;
  const other = morganBands.length
    ? heatAtConductor({ ...path, morganBands }, wire.limitC)
    : undefined;
  return {
    currentA: currentFor(heat),
    morganCurrentA: other?.covered ? currentFor(other) : null,
    surfaceC: heat.surfaceC,
    heatWPerM: heat.ownHeatWPerM,
  };
}
