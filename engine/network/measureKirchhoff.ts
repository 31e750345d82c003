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
  evaluateBranches(compiled);
  let largestA = gatherLeftover(compiled);
  for (const short of shorts) largestA = Math.max(largestA, addShort(compiled, short));
  const { leftoverA } = compiled.work;
  let residualA = 0;
  for (let j = 0; j < compiled.pattern.unknownCount; j++) {
    residualA = Math.max(residualA, Math.abs(leftoverA[j]!));
  }
  const boundA = RESIDUAL_FLOOR_A + RESIDUAL_RATIO * largestA;
  return { residualA, accepted: Number.isFinite(residualA) && residualA <= boundA };
}

function evaluateBranches(compiled: CompiledNetwork): void {
  const { work, positionA, positionB, branchOfSlot } = compiled;
  const { linearS, linearEmfV, positionV, branchA, slots } = work;
  const m = linearS.length;
  for (let k = 0; k < m; k++) {
    const v = positionV[positionA[k]!]! - positionV[positionB[k]!]!;
    const currentA = linearS[k]! * (v - linearEmfV[k]!);
    branchA[k] = currentA;
    branchA[m + k] = -currentA;
  }
  for (let s = 0; s < branchOfSlot.length; s++) {
    const k = branchOfSlot[s]!;
    slots.v[s] = positionV[positionA[k]!]! - positionV[positionB[k]!]!;
  }
  evaluateSlots(slots);
  for (let s = 0; s < branchOfSlot.length; s++) {
    const currentA = slots.currentA[s]!;
    branchA[branchOfSlot[s]!] = currentA;
    branchA[m + branchOfSlot[s]!] = -currentA;
  }
}

/** leftover_j = leak + Σ currents leaving − Σ currents arriving. Returns the largest |branch current|. */
function gatherLeftover(compiled: CompiledNetwork): number {
  const { incidentPosition, incidentStart, incident, work } = compiled;
  const { positionV, branchA, leftoverA } = work;
  const leakS = 1 / compiled.network.leakOhm;
  for (let k = 0; k < incidentPosition.length; k++) {
    const j = incidentPosition[k]!;
    let sumA = leakS * positionV[j]!;
    const end = incidentStart[k + 1]!;
    for (let p = incidentStart[k]!; p < end; p++) sumA += branchA[incident[p]!]!;
    leftoverA[j] = sumA;
  }
  let largestA = 0;
  for (let k = 0; k < branchA.length; k++) if (branchA[k]! > largestA) largestA = branchA[k]!;
  return largestA;
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
