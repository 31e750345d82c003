import type { WireRow } from "../operate/index.ts";
import type { Conductors, Routed } from "../route/index.ts";
import { wireLumps } from "./wireLumps.ts";

/** How warm a wire settles under the currents of one state, where along its way it gets warmest. */
export interface WireTemperature {
  readonly wire: string;
  /** °C; null: it does not settle below the end of the model. */
  readonly temperatureC: number | null;
  readonly ambientC: number;
  readonly stretch: string | null;
  /** What it may have without end, °C. */
  readonly limitC: number;
}

/** Every wire at rest in the heat of one state, its neighbours in the bundle counted in. */
export function wireTemperatures(
  plan: { readonly conductors: Conductors; readonly routed: Routed },
  rows: readonly WireRow[],
): readonly WireTemperature[] {
  const rmsA = new Map(
    rows.map(({ wire, currentA, acA = 0 }) => [wire, Math.sqrt(currentA * currentA + acA * acA)]),
  );
  const lumpsOf = wireLumps(plan.conductors, plan.routed, (id) => rmsA.get(id) ?? 0);
  return rows
    .filter(({ wire }) => plan.conductors.has(wire))
    .map(({ wire }) => {
      const places = lumpsOf(wire);
      const hottest = places.reduce((hot, one) =>
        (one.startC ?? Infinity) > (hot.startC ?? Infinity) ? one : hot,
      );
      const { startC, ambientC, stretch, limits } = hottest;
      return { wire, temperatureC: startC, ambientC, stretch, limitC: limits.foreverC };
    });
}
