import { type Bundle, bundleDiameterMm, bundlePaths } from "./bundlePaths.ts";
import { REFERENCE_C } from "./physicalConstants.ts";
import { risingRoot } from "./risingRoot.ts";
import { surfaceLoss, type ThermalPath } from "./thermalPath.ts";

export interface LoadedBundle extends Bundle {
  /** Current of each wire, A, in the order of `wires`; 0 for an idle one. */
  readonly currentsA: readonly number[];
  /** The model is not asked above this conductor temperature, °C. */
  readonly ceilingC: number;
}

export type BundleTemperatures =
  | {
      readonly ok: true;
      readonly conductorsC: readonly number[];
      readonly heatsWPerM: readonly number[];
      readonly totalHeatWPerM: number;
      readonly surfaceC: number;
      readonly bundleDiameterMm: number;
      readonly outerDiameterMm: number;
    }
  | { readonly ok: false; readonly reason: "no-steady-state" | "above-ceiling" };

/**
 * Steady temperature of every conductor of a bundle, each as if it lay at the middle.
 *
 *   T_i = Ts + Q · R_shared + q_i · R_own,i + (Q − q_i) · R_other,i,   q_i = I_i² · R20,i · (1 + α · (T_i − 20))
 *
 * Both lines are linear in T, q and Q, so Q = (A + B · Ts) / (1 − G) and one equation in Ts remains:
 * surface loss(Ts) = Q(Ts). The loss is steeper than any straight line in the end, so it has one root.
 *
 * @param bundle  wires, currents A, ambient °C, conductivity and packing as stated in `Bundle`.
 * @returns the temperatures; or `no-steady-state` when G ≥ 1 (each degree makes more than a degree more).
 */
export function bundleConductorTemperaturesC(bundle: LoadedBundle): BundleTemperatures {
  if (bundle.currentsA.length !== bundle.wires.length || bundle.wires.length === 0) {
    throw new Error(`${bundle.wires.length} wires but ${bundle.currentsA.length} currents`);
  }
  const paths = bundlePaths(bundle);
  const surfacePath = paths[0] as ThermalPath;
  const heat = totalHeatLine(bundle, paths);
  if (heat === null) return { ok: false, reason: "no-steady-state" };
  const surplusAt = (surfaceC: number): number =>
    surfaceLoss(surfacePath, surfaceC).totalWPerM - heat.baseWPerM - heat.slopeWPerMK * surfaceC;
  if (surplusAt(bundle.ceilingC) < 0) return { ok: false, reason: "above-ceiling" };
  const surfaceC = risingRoot(surplusAt, { min: bundle.ambientC, max: bundle.ceilingC });
  const totalHeatWPerM = heat.baseWPerM + heat.slopeWPerMK * surfaceC;
  const heatsWPerM = heat.wires.map(
    (wire) =>
      (wire.madeWPerM20 / wire.gainRatio) *
      (1 + wire.alphaPerK * (surfaceC + totalHeatWPerM * wire.commonKMPerW - REFERENCE_C)),
  );
  const conductorsC = heat.wires.map(
    (wire, i) =>
      surfaceC + totalHeatWPerM * wire.commonKMPerW + (heatsWPerM[i] as number) * wire.extraKMPerW,
  );
  if (Math.max(...conductorsC) > bundle.ceilingC) return { ok: false, reason: "above-ceiling" };
  return {
    ok: true,
    conductorsC,
    heatsWPerM,
    totalHeatWPerM,
    surfaceC,
    bundleDiameterMm: bundleDiameterMm(bundle),
    outerDiameterMm: surfacePath.outerDiameterMm,
  };
}

interface WireGain {
  readonly madeWPerM20: number;
  readonly alphaPerK: number;
  /** What every watt of the bundle does to this wire, and what its own watts do on top. */
  readonly commonKMPerW: number;
  readonly extraKMPerW: number;
  readonly gainRatio: number;
}

/** Q as a straight line of Ts: Q = base + slope · Ts; null where it has no finite value. */
function totalHeatLine(bundle: LoadedBundle, paths: readonly ThermalPath[]) {
  const { alphaPerK } = bundle.materials.conductor;
  const wires: WireGain[] = [];
  let atZeroWPerM = 0;
  let perDegreeWPerMK = 0;
  let perWattRatio = 0;
  for (const [i, path] of paths.entries()) {
    const madeWPerM20 = (bundle.currentsA[i] as number) ** 2 * (bundle.wires[i]?.ohmPerM20 ?? 0);
    const commonKMPerW = path.sharedKMPerW + path.otherKMPerW;
    const extraKMPerW = path.ownKMPerW - path.otherKMPerW;
    const gainRatio = 1 - madeWPerM20 * alphaPerK * extraKMPerW;
    if (gainRatio <= 0) return null;
    wires.push({ madeWPerM20, alphaPerK, commonKMPerW, extraKMPerW, gainRatio });
    const scaledWPerM = madeWPerM20 / gainRatio;
    atZeroWPerM += scaledWPerM * (1 - alphaPerK * REFERENCE_C);
    perDegreeWPerMK += scaledWPerM * alphaPerK;
    perWattRatio += scaledWPerM * alphaPerK * commonKMPerW;
  }
  if (perWattRatio >= 1) return null;
  return {
    wires,
    baseWPerM: atZeroWPerM / (1 - perWattRatio),
    slopeWPerMK: perDegreeWPerMK / (1 - perWattRatio),
  };
}
