import { limitedMemoryDescent } from "./limitedMemoryDescent.ts";
import { packingEnergy } from "./packingEnergy.ts";
import { disturb } from "./packingMoves.ts";
import { layOut } from "./packingStarts.ts";

/** A resting place of the soft energy: x0, y0, …, rim, and its value. */
export interface SoftPacking {
  readonly x: Float64Array;
  readonly value: number;
}

interface Temper {
  /** Softer circles slide past each other and forgive; harder ones rank more truly. */
  readonly stiffness: number;
  readonly gradientMax: number;
  readonly fallMin: number;
  readonly trialCount: number;
  readonly hopeless: number;
}

/** Chosen by trial on counts 2 to 60 and on mixes of eight sizes; `tools/bench/bundle.bench.ts` shows what they give. */
const EQUAL: Temper = {
  stiffness: 3,
  gradientMax: 0.01,
  fallMin: 1e-4,
  trialCount: 30,
  hopeless: 1.03,
};
const MIXED: Temper = {
  stiffness: 1,
  gradientMax: 0.03,
  fallMin: 5e-4,
  trialCount: 12,
  hopeless: 1.01,
};
const START_COUNT = 6;
const DESCENT_STEPS = 150;
/** A disturbed packing a little worse than the one it came from may still be the way on. */
const TOLERATED = 0.002;
/** So many disturbances in a row without a new best, and the search goes on from elsewhere. */
const PATIENCE = 60;
const KEPT_COUNT = 4;

/**
 * Looks for low resting places of the soft packing energy: a few ordered starts, then disturbances of the best, each
 * let come to rest and kept when it is lower or nearly as low (basin hopping). Counted in energy evaluations.
 *
 * @param radii  near 1, sorted.
 * @returns the lowest few, lowest first, and what was spent.
 */
export function packingSearch(
  radii: Float64Array,
  budget: { readonly stepCount: number; readonly random: () => number },
): { readonly found: readonly SoftPacking[]; readonly stepCount: number } {
  const { random } = budget;
  const count = radii.length;
  const isEqual = radii[0] === radii[count - 1];
  const temper = isEqual ? EQUAL : MIXED;
  const size = Math.sqrt(radii.reduce((sum, radius) => sum + radius * radius, 0));
  const energy = packingEnergy(radii);
  const descend = limitedMemoryDescent(2 * count + 1);
  const x = new Float64Array(2 * count + 1);
  const state = { radii, x, random };
  energy.soften(temper.stiffness);
  let stepCount = 0;
  const rest = (best?: number): SoftPacking => {
    const { value, evaluationCount } = descend(energy.slope, x, {
      evaluationCountMax: Math.min(DESCENT_STEPS, Math.max(1, budget.stepCount - stepCount)),
      gradientMax: temper.gradientMax,
      fallMin: temper.fallMin * size,
      ...(best !== undefined && {
        hopeless: { trialCount: temper.trialCount, value: temper.hopeless * best },
      }),
    });
    stepCount += evaluationCount;
    return { x: x.slice(), value };
  };
  const afresh = (turn: number): SoftPacking => {
    layOut(state, turn);
    return rest();
  };
  const starts = [afresh(0)];
  for (let n = 1; n < START_COUNT && stepCount < budget.stepCount; n++) starts.push(afresh(n));
  starts.sort((a, b) => a.value - b.value);
  const found = keepLowest([], starts);
  let current = starts[0]!;
  let idleCount = 0;
  for (let start = 1; stepCount < budget.stepCount; idleCount++) {
    if (idleCount > PATIENCE) {
      current = starts[start++] ?? afresh(random() < 0.5 ? 0 : 2 * START_COUNT + 1);
      idleCount = 0;
    }
    x.set(current.x);
    disturb(state, isEqual);
    const next = rest(current.value);
    if (next.value < found[0]!.value - 1e-9) idleCount = 0;
    keepLowest(found, [next]);
    if (next.value < current.value * (1 + TOLERATED * random())) current = next;
  }
  return { found, stepCount };
}

/** Puts packings into a short sorted list, one of each value. */
function keepLowest(kept: SoftPacking[], packings: readonly SoftPacking[]): SoftPacking[] {
  for (const packing of packings) {
    if (kept.some(({ value }) => Math.abs(value - packing.value) < 1e-4)) continue;
    if (kept.length < KEPT_COUNT || packing.value < kept.at(-1)!.value) {
      kept.push(packing);
      kept.sort((a, b) => a.value - b.value);
      kept.length = Math.min(kept.length, KEPT_COUNT);
    }
  }
  return kept;
}
