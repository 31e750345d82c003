import { conductorOverSurfaceC, surfaceLoss, type ThermalPath } from "./thermalPath.ts";

/**
 * Heat leaving a conductor against its temperature, as straight lines between knots: °C rising, W per metre.
 * On such lines every constant-current transient has a closed form.
 */
export interface LossTable {
  readonly temperaturesC: readonly number[];
  readonly lossesWPerM: readonly number[];
}

/**
 * Samples a thermal path between two conductor temperatures. The knots lie `stepK` apart in *surface* temperature, so
 * no equation has to be solved for them.
 *
 * The insulation is taken to follow at once (quasi-steady), and neighbours keep the heat they have.
 *
 * @param range.fromC  coldest conductor asked about, °C.
 * @param range.toC    hottest conductor asked about, °C, > fromC.
 * @param range.stepK  distance of knots, K. The lines lie off the curve by about (step²/8) · curvature: with 1 K,
 *                     under 1e-4 of the heat from 10 K above ambient.
 */
export function lossTable(
  path: ThermalPath,
  range: { readonly fromC: number; readonly toC: number; readonly stepK: number },
): LossTable {
  if (!(range.toC > range.fromC) || !(range.stepK > 0)) throw new Error("loss table: empty range");
  const knotAt = (surfaceC: number) => {
    const { totalWPerM } = surfaceLoss(path, surfaceC);
    return {
      conductorC: conductorOverSurfaceC(path, { surfaceC, totalWPerM }),
      ownWPerM: totalWPerM - path.otherHeatWPerM,
    };
  };
  let stepIndex = 0;
  while (knotAt(path.ambientC + stepIndex * range.stepK).conductorC > range.fromC) stepIndex--;
  while (knotAt(path.ambientC + (stepIndex + 1) * range.stepK).conductorC <= range.fromC) {
    stepIndex++;
  }
  const temperaturesC: number[] = [];
  const lossesWPerM: number[] = [];
  for (; ; stepIndex++) {
    const knot = knotAt(path.ambientC + stepIndex * range.stepK);
    temperaturesC.push(knot.conductorC);
    lossesWPerM.push(knot.ownWPerM);
    if (knot.conductorC >= range.toC) return { temperaturesC, lossesWPerM };
  }
}

/** No heat leaves: the adiabatic case, from and to the given temperatures, °C. */
export function noLoss(range: { readonly fromC: number; readonly toC: number }): LossTable {
  return { temperaturesC: [range.fromC, range.toC], lossesWPerM: [0, 0] };
}
