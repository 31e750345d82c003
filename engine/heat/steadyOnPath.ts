import { REFERENCE_C } from "./physicalConstants.ts";
import { risingRoot } from "./risingRoot.ts";
import { conductorOverSurfaceC, surfaceLoss, type ThermalPath } from "./thermalPath.ts";

/** A conductor as a source of heat: I² · ohmPerM20 · (1 + alphaPerK · (T − 20 °C)) per metre. */
export interface HeatSource {
  readonly ohmPerM20: number;
  readonly alphaPerK: number;
}

export type SteadyState =
  | {
      readonly ok: true;
      readonly conductorC: number;
      readonly surfaceC: number;
      readonly ownHeatWPerM: number;
      readonly convectionWPerM: number;
      readonly radiationWPerM: number;
      readonly coefficientWPerM2K: number;
      readonly covered: boolean;
    }
  | { readonly ok: false; readonly reason: "no-steady-state" | "above-ceiling" };

/**
 * The temperature at which a constant current settles on a path.
 *
 * Tc is linear in q and q is linear in Tc, so q = c · (1 + α · (T0 − 20)) / (1 − c · α · R), c = I² · R20,
 * with T0 what the conductor would have without heat of its own and R its resistance to the surface. What is left is
 * one equation in Ts: the heat leaving the surface rises faster than the heat made, so it has one root.
 *
 * @param ceilingC  the model is not asked above this conductor temperature (melting copper, say), °C.
 * @returns `no-steady-state` when c · α · R ≥ 1: the hotter the wire, the more heat it makes than its wall can pass.
 */
export function steadyOnPath(
  path: ThermalPath,
  source: HeatSource,
  asked: { readonly currentA: number; readonly ceilingC: number },
): SteadyState {
  const madeWPerM20 = asked.currentA ** 2 * source.ohmPerM20;
  const innerKMPerW = path.sharedKMPerW + path.ownKMPerW;
  const gainRatio = 1 - madeWPerM20 * source.alphaPerK * innerKMPerW;
  if (gainRatio <= 0) return { ok: false, reason: "no-steady-state" };
  const { otherHeatWPerM } = path;
  const ownHeatAt = (surfaceC: number): number => {
    const idleC = conductorOverSurfaceC(path, { surfaceC, totalWPerM: otherHeatWPerM });
    return (madeWPerM20 * (1 + source.alphaPerK * (idleC - REFERENCE_C))) / gainRatio;
  };
  const surplusAt = (surfaceC: number): number =>
    surfaceLoss(path, surfaceC).totalWPerM - otherHeatWPerM - ownHeatAt(surfaceC);
  const highC = upperSurfaceC(surplusAt, path.ambientC, asked.ceilingC);
  if (highC === null) return { ok: false, reason: "above-ceiling" };
  const surfaceC = risingRoot(surplusAt, { min: path.ambientC, max: highC });
  const loss = surfaceLoss(path, surfaceC);
  const ownHeatWPerM = ownHeatAt(surfaceC);
  const totalWPerM = ownHeatWPerM + otherHeatWPerM;
  const conductorC = conductorOverSurfaceC(path, { surfaceC, totalWPerM });
  if (conductorC > asked.ceilingC) return { ok: false, reason: "above-ceiling" };
  return { ok: true, conductorC, surfaceC, ownHeatWPerM, ...lossParts(loss) };
}

function lossParts(loss: ReturnType<typeof surfaceLoss>) {
  const { convectionWPerM, radiationWPerM, coefficientWPerM2K, covered } = loss;
  return { convectionWPerM, radiationWPerM, coefficientWPerM2K, covered };
}

/** A surface temperature at which more heat leaves than is made, or null when the ceiling is met first. */
function upperSurfaceC(
  surplusAt: (surfaceC: number) => number,
  ambientC: number,
  ceilingC: number,
): number | null {
  if (ambientC >= ceilingC) return null;
  for (let riseK = 1; ; riseK *= 2) {
    const surfaceC = Math.min(ambientC + riseK, ceilingC);
    if (surplusAt(surfaceC) >= 0) return surfaceC;
    if (surfaceC === ceilingC) return null;
  }
}
