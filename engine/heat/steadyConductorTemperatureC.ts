import type { HeatMaterials } from "./heatMaterial.ts";
import { type SteadyState, steadyOnPath } from "./steadyOnPath.ts";
import { type RoundWire, wireInAirPath } from "./wireInAir.ts";

export interface LoadedWire extends RoundWire {
  readonly currentA: number;
  readonly ambientC: number;
  /** The model is not asked above this, °C. */
  readonly ceilingC: number;
  readonly materials: HeatMaterials;
}

export type SteadyWire =
  | (Extract<SteadyState, { ok: true }> & {
      /** The same by Morgan's law: the other edge of the uncertainty. Null where that law has no row. */
      readonly morganConductorC: number | null;
    })
  | Extract<SteadyState, { ok: false }>;

/**
 * Where one wire in still air settles under a constant current.
 *
 *   I² · R20 · (1 + α · (Tc − 20)) = (Tc − Ts) / R_wall = π · D · [h · (Ts − Ta) + ε · σ · (Ts⁴ − Ta⁴)]
 *
 * @param wire  resistance Ω/m at 20 °C, diameters mm, current A, temperatures °C, materials from the tables.
 * @returns conductor and surface temperature with the split of the heat; or why there is none.
 * @source heat balance of a cylinder; correlations as in `filmCoefficient`.
 */
export function steadyConductorTemperatureC(wire: LoadedWire): SteadyWire {
  const path = wireInAirPath(wire, wire);
  const source = {
    ohmPerM20: wire.ohmPerM20,
    alphaPerK: wire.materials.conductor.alphaPerK,
  };
  const state = steadyOnPath(path, source, wire);
  if (!state.ok) return state;
  const { morganBands } = wire.materials;
  const other = morganBands.length
    ? steadyOnPath({ ...path, morganBands }, source, wire)
    : undefined;
  return { ...state, morganConductorC: other?.ok && other.covered ? other.conductorC : null };
}
