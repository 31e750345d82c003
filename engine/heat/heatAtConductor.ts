import { risingRoot } from "./risingRoot.ts";
import { conductorOverSurfaceC, surfaceLoss, type ThermalPath } from "./thermalPath.ts";

export interface HeatAtConductor {
  /** Heat of its own that keeps the conductor at this temperature; negative: the others would hold it hotter. */
  readonly ownHeatWPerM: number;
  readonly surfaceC: number;
  readonly covered: boolean;
}

/**
 * The heat a conductor must make to sit at a temperature, W per metre: `ThermalPath` solved the other way round.
 * Tc rises with Ts, so there is one root.
 *
 * @param conductorC  °C, at or above the ambient temperature of the path.
 */
export function heatAtConductor(path: ThermalPath, conductorC: number): HeatAtConductor {
  if (conductorC < path.ambientC) {
    throw new Error(`conductor at ${conductorC} °C is colder than its ambient ${path.ambientC} °C`);
  }
  const excessAt = (surfaceC: number): number => {
    const totalWPerM = surfaceLoss(path, surfaceC).totalWPerM;
    return conductorOverSurfaceC(path, { surfaceC, totalWPerM }) - conductorC;
  };
  // With neighbours at work the surface may be hotter than this conductor, but never hotter than they can make it.
  let highC = conductorC;
  for (let stepK = 1; excessAt(highC) < 0; stepK *= 2) highC += stepK;
  const surfaceC = risingRoot(excessAt, { min: path.ambientC, max: highC });
  const loss = surfaceLoss(path, surfaceC);
  return {
    ownHeatWPerM: loss.totalWPerM - path.otherHeatWPerM,
    surfaceC,
    covered: loss.covered,
  };
}
