import { batteryTimeS } from "./peukertTimeS.ts";
import type { SupplyModel } from "./supplyModel.ts";
import { placedLoads, readingOf } from "./workingLoads.ts";

/** The key left on where the contacts of every ignition coil happened to stop closed. */
export interface CoilsLeftOn {
  readonly state: string;
  readonly currentA: number;
  readonly coils: readonly { readonly load: string; readonly v: number; readonly powerW: number }[];
  readonly toEmptyS: number | null;
}

const LEAST_W = 1;

/**
 * Of the lighting states, the one with the least else switched on, engine stopped and every contact breaker closed. Null for machines
 * whose coils the battery does not feed.
 */
export function coilsLeftOn({ compiled, states, duty, battery }: SupplyModel): CoilsLeftOn | null {
  const emf = compiled.jobNetwork.elements.findIndex(({ kind }) => kind === "emf");
  let least: CoilsLeftOn | null = null;
  for (const state of states) {
    const positions = { ...state.positions };
    for (const { part, position } of duty.points) positions[part] = position;
    const solution = compiled.solve({ positions });
    const coils = placedLoads(compiled)
      .filter(({ load }) => load.part.kind === "coil")
      .map(({ load, place }) => ({ load: load.ref, ...readingOf(compiled, solution, place) }))
      .filter(({ powerW }) => powerW > LEAST_W)
      .map(({ load, v, powerW }) => ({ load, v: Math.abs(v), powerW }));
    const currentA = emf < 0 ? 0 : -solution.elementA[emf]!;
    if (coils.length === 0 || (least !== null && currentA >= least.currentA)) continue;
    const toEmptyS = battery === null || currentA <= 0 ? null : batteryTimeS(battery, currentA);
    least = { state: state.name, currentA, coils, toEmptyS };
  }
  return least;
}
