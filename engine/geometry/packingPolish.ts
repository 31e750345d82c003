import { limitedMemoryDescent } from "./limitedMemoryDescent.ts";
import { packingEnergy } from "./packingEnergy.ts";
import type { SoftPacking } from "./packingSearch.ts";

const RANKING_STIFFNESS = 30;
const RANKING_STEPS = 80;
const STIFFNESS = 100;
const ROUND_STEPS = 250;
const ROUND_COUNT = 20;
/** Overlap that no longer matters, against radii near 1; what is left is taken out by stretching. */
const OVERLAP_MAX = 1e-12;

/**
 * Hardens the lowest soft packings, takes the best of them and brings it to rest without overlap: augmented Lagrangian
 * rounds, then every centre is moved outwards in one proportion until no pair overlaps by the last digit.
 *
 * @param budget  energy evaluations it may use.
 * @returns centres x0, y0, …, and the rim that holds all of them.
 */
export function packingPolish(
  radii: Float64Array,
  found: readonly SoftPacking[],
  budget: number,
): { readonly centres: Float64Array; readonly rim: number; readonly stepCount: number } {
  const energy = packingEnergy(radii);
  const descend = limitedMemoryDescent(2 * radii.length + 1);
  let stepCount = 0;
  const limits = (most: number) => ({
    evaluationCountMax: Math.max(1, Math.min(most, budget - stepCount)),
    gradientMax: 1e-9,
    fallMin: 1e-14,
  });
  const hardened = found
    .slice(0, budget < found.length * RANKING_STEPS ? 1 : undefined)
    .map((soft) => {
      const x = soft.x.slice();
      energy.soften(RANKING_STIFFNESS);
      const { value, evaluationCount } = descend(energy.slope, x, limits(RANKING_STEPS));
      stepCount += evaluationCount;
      return { x, value };
    });
  hardened.sort((a, b) => a.value - b.value);
  const { x } = hardened[0]!;
  energy.soften(STIFFNESS);
  for (let n = 0; n < ROUND_COUNT && stepCount < budget; n++) {
    stepCount += descend(energy.slope, x, limits(ROUND_STEPS)).evaluationCount;
    if (energy.press(x) < OVERLAP_MAX) break;
  }
  return { ...stretch(radii, x), stepCount };
}

/** Moves the centres apart in one proportion until no pair overlaps; the rim that then holds them. */
function stretch(radii: Float64Array, x: Float64Array) {
  const count = radii.length;
  let ratio = 0;
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const distance = Math.hypot(x[2 * i]! - x[2 * j]!, x[2 * i + 1]! - x[2 * j + 1]!);
      ratio = Math.max(ratio, (radii[i]! + radii[j]!) / distance);
    }
  }
  const centres = new Float64Array(2 * count);
  let rim = 0;
  for (let i = 0; i < count; i++) {
    centres[2 * i] = ratio * x[2 * i]!;
    centres[2 * i + 1] = ratio * x[2 * i + 1]!;
    rim = Math.max(rim, Math.hypot(centres[2 * i]!, centres[2 * i + 1]!) + radii[i]!);
  }
  return { centres, rim };
}
