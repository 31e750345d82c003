import type { CompiledNetwork } from "./compileNetwork.ts";
import type { Short } from "./solution.ts";

/** Part of the acceptance bound that does not depend on the currents, and the part that does. */
const RESIDUAL_FLOOR_A = 1e-9;
const RESIDUAL_RATIO = 1e-12;

/** What is left of Kirchhoff's current law at some node volts. */
export interface KirchhoffCheck {
  readonly residualA: number;
  readonly accepted: boolean;
}

/**
 * Evaluates every law at work.positionV, without any linearisation: branch currents into work.branchA, slopes of the nonlinear
 * ones into work.slotS, the sum of currents leaving each node (leaks and shorts included) into work.leftoverA.
 */
export function measureKirchhoff(
  compiled: CompiledNetwork,
  shorts: readonly Short[],
): KirchhoffCheck {
  const { run } = compiled.kernel;
  let largestA = run.measure(1 / compiled.network.leakOhm);
  for (let k = 0; k < shorts.length; k++) {
    largestA = Math.max(largestA, addShort(compiled, shorts[k]!));
  }
  const residualA = run.largestLeftover();
  const boundA = RESIDUAL_FLOOR_A + RESIDUAL_RATIO * largestA;
  return { residualA, accepted: Number.isFinite(residualA) && residualA <= boundA };
}

/** Adds the current of a short to what leaves its nodes; returns its size, A. */
function addShort(compiled: CompiledNetwork, { a, b, ohm }: Short): number {
  const { positionOfNode } = compiled.pattern;
  const { positionV, leftoverA } = compiled.work;
  const placeA = positionOfNode[a]!;
  const placeB = positionOfNode[b]!;
  const currentA = (positionV[placeA]! - positionV[placeB]!) / ohm;
  leftoverA[placeA] = leftoverA[placeA]! + currentA;
  leftoverA[placeB] = leftoverA[placeB]! - currentA;
  return Math.abs(currentA);
}
