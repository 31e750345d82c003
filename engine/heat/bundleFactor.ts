import { bundleConductorTemperaturesC, type LoadedBundle } from "./bundleConductorTemperaturesC.ts";
import { steadyCurrentA } from "./steadyCurrentA.ts";
import type { RoundWire } from "./wireInAir.ts";

/** Halvings of the scale: 2^-60 of the first bracket is below the last place of a double. */
const HALVING_COUNT = 60;

/**
 * Largest number by which all currents of a bundle may be multiplied before its hottest conductor reaches a limit.
 *
 * @param bundle         wires and currents; at least one current > 0.
 * @param bundle.limitC  °C. Where it is at or below ambient the answer is 0.
 * @returns the multiplier; every conductor is at or below the limit there.
 */
export function bundleScaleRatio(bundle: LoadedBundle & { readonly limitC: number }): number {
  if (!bundle.currentsA.some((currentA) => currentA > 0)) {
    throw new Error("bundle: no wire carries current, so no scale is the largest");
  }
  if (bundle.limitC <= bundle.ambientC) return 0;
  const fits = (scaleRatio: number): boolean => {
    const currentsA = bundle.currentsA.map((currentA) => currentA * scaleRatio);
    const state = bundleConductorTemperaturesC({ ...bundle, currentsA });
    return state.ok && Math.max(...state.conductorsC) <= bundle.limitC;
  };
  let high = 1;
  while (fits(high)) high *= 2;
  let low = 0;
  for (let n = 0; n < HALVING_COUNT; n++) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * What each of the loaded wires of a bundle of equal wires may carry, against the same wire alone in air.
 *
 * @param bundle.wire         the wire; all are alike.
 * @param bundle.wireCount    how many lie in the bundle.
 * @param bundle.loadedCount  how many of them carry current, all the same; 1 ≤ loadedCount ≤ wireCount.
 * @param bundle.limitC       conductor limit, °C, above ambient.
 * @returns ratio, at most 1 but for the packing: a wire in a loose bundle of idle ones has more surface than alone.
 */
export function bundleFactor(
  bundle: Omit<LoadedBundle, "wires" | "currentsA"> & {
    readonly wire: RoundWire;
    readonly wireCount: number;
    readonly loadedCount: number;
    readonly limitC: number;
  },
): number {
  const { wire, wireCount, loadedCount } = bundle;
  const alone = steadyCurrentA({ ...wire, ...bundle });
  if (alone === null || alone.currentA === 0) throw new Error("bundle: limit is not above ambient");
  const wires = Array.from({ length: wireCount }, () => wire);
  const currentsA = wires.map((_, i) => (i < loadedCount ? alone.currentA : 0));
  return bundleScaleRatio({ ...bundle, wires, currentsA });
}
