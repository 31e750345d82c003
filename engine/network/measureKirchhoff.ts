import type { CompiledNetwork } from "./compileNetwork.ts";
import { evaluateSlot } from "./lawSlots.ts";
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
 * ones into work.slots.slopeS, the sum of currents leaving each node (leaks and shorts included) into work.leftoverA.
 */
export function measureKirchhoff(
  compiled: CompiledNetwork,
  shorts: readonly Short[],
): KirchhoffCheck {
  const { work, positionA, positionB, branchOfSlot, pattern } = compiled;
  const { linearS, linearEmfV, positionV, branchA, leftoverA, slots } = work;
  const n = pattern.unknownCount;
  const leakS = 1 / compiled.network.leakOhm;
  for (let j = 0; j < n; j++) leftoverA[j] = leakS * positionV[j]!;
  let largestA = 0;
  for (let k = 0; k < linearS.length; k++) {
    const a = positionA[k]!;
    const b = positionB[k]!;
    const iA = linearS[k]! * (positionV[a]! - positionV[b]! - linearEmfV[k]!);
    branchA[k] = iA;
    leftoverA[a] = leftoverA[a]! + iA;
    leftoverA[b] = leftoverA[b]! - iA;
    const size = Math.abs(iA);
    if (size > largestA) largestA = size;
  }
  for (let s = 0; s < branchOfSlot.length; s++) {
    const k = branchOfSlot[s]!;
    const a = positionA[k]!;
    const b = positionB[k]!;
    evaluateSlot(slots, s, positionV[a]! - positionV[b]!);
    const iA = slots.currentA[s]!;
    branchA[k] = iA;
    leftoverA[a] = leftoverA[a]! + iA;
    leftoverA[b] = leftoverA[b]! - iA;
    const size = Math.abs(iA);
    if (size > largestA) largestA = size;
  }
  for (const short of shorts) largestA = Math.max(largestA, addShort(compiled, short));
  let residualA = 0;
  for (let j = 0; j < n; j++) {
    const size = Math.abs(leftoverA[j]!);
    if (!(size <= residualA)) residualA = size;
  }
  return { residualA, accepted: residualA <= RESIDUAL_FLOOR_A + RESIDUAL_RATIO * largestA };
}

function addShort(compiled: CompiledNetwork, { a, b, ohm }: Short): number {
  const { positionV, leftoverA } = compiled.work;
  const placeA = compiled.pattern.positionOfNode[a]!;
  const placeB = compiled.pattern.positionOfNode[b]!;
  const iA = (positionV[placeA]! - positionV[placeB]!) / ohm;
  leftoverA[placeA] = leftoverA[placeA]! + iA;
  leftoverA[placeB] = leftoverA[placeB]! - iA;
  return Math.abs(iA);
}
