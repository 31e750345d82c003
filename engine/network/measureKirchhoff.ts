import type { CompiledNetwork } from "./compileNetwork.ts";
import { evaluateSlots } from "./lawSlots.ts";
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
  const { leftoverA } = compiled.work;
  addLinear(compiled);
  addSlots(compiled);
  for (let k = 0; k < shorts.length; k++) addShort(compiled, shorts[k]!);
  const largestA = largest(compiled.work.branchA, compiled.network.branches.length);
  const residualA = largest(leftoverA, compiled.pattern.unknownCount);
  let boundA = RESIDUAL_FLOOR_A + RESIDUAL_RATIO * largestA;
  for (const short of shorts)
    boundA = Math.max(
      boundA,
      RESIDUAL_FLOOR_A + RESIDUAL_RATIO * Math.abs(shortA(compiled, short)),
    );
  return { residualA, accepted: Number.isFinite(residualA) && residualA <= boundA };
}

/** Starts each node with its leak, then adds the linear branches. */
function addLinear(compiled: CompiledNetwork): void {
  const { work, positionA, positionB } = compiled;
  const { linearS, linearEmfV, positionV, branchA, leftoverA } = work;
  const leakS = 1 / compiled.network.leakOhm;
  for (let j = 0; j < leftoverA.length; j++) leftoverA[j] = leakS * positionV[j]!;
  for (let k = 0; k < linearS.length; k++) {
    const a = positionA[k]!;
    const b = positionB[k]!;
    const currentA = linearS[k]! * (positionV[a]! - positionV[b]! - linearEmfV[k]!);
    branchA[k] = currentA;
    leftoverA[a] = leftoverA[a]! + currentA;
    leftoverA[b] = leftoverA[b]! - currentA;
  }
}

function addSlots(compiled: CompiledNetwork): void {
  const { work, positionA, positionB, branchOfSlot } = compiled;
  const { positionV, branchA, leftoverA, slots } = work;
  const { v, currentA } = slots;
  for (let s = 0; s < branchOfSlot.length; s++) {
    const k = branchOfSlot[s]!;
    v[s] = positionV[positionA[k]!]! - positionV[positionB[k]!]!;
  }
  evaluateSlots(slots);
  for (let s = 0; s < branchOfSlot.length; s++) {
    const k = branchOfSlot[s]!;
    const a = positionA[k]!;
    const b = positionB[k]!;
    branchA[k] = currentA[s]!;
    leftoverA[a] = leftoverA[a]! + currentA[s]!;
    leftoverA[b] = leftoverA[b]! - currentA[s]!;
  }
}

/** Largest |x| of the first `count`; NaN when any is NaN. */
function largest(values: Float64Array, count: number): number {
  let largestSoFar = 0;
  for (let k = 0; k < count; k++) {
    const size = Math.abs(values[k]!);
    if (!(size <= largestSoFar)) largestSoFar = size;
  }
  return largestSoFar;
}

function shortA({ pattern, work }: CompiledNetwork, { a, b, ohm }: Short): number {
  const { positionOfNode } = pattern;
  return (work.positionV[positionOfNode[a]!]! - work.positionV[positionOfNode[b]!]!) / ohm;
}

function addShort(compiled: CompiledNetwork, short: Short): void {
  const { leftoverA } = compiled.work;
  const placeA = compiled.pattern.positionOfNode[short.a]!;
  const placeB = compiled.pattern.positionOfNode[short.b]!;
  const currentA = shortA(compiled, short);
  leftoverA[placeA] = leftoverA[placeA]! + currentA;
  leftoverA[placeB] = leftoverA[placeB]! - currentA;
}
