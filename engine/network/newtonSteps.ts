import type { CompiledNetwork } from "./compileNetwork.ts";
import { DIODE, evaluateSlots, FILAMENT, PARAMETER_COUNT } from "./lawSlots.ts";
import { restoreReduced } from "./linearPart.ts";
import { applyShorts, type ShortColumns, takeShorts } from "./shortColumns.ts";
import { backward, eliminate } from "./starMesh.ts";

/** The laws and their lines agree to this, A, summed over all branches, before Kirchhoff's law is measured in full. */
const AGREEMENT_A = 5e-10;

/** Where the first step linearises: at the warm volts if given, else the rated chord of a filament and 0 V of anything else. */
export function startLines(compiled: CompiledNetwork, initialV: ArrayLike<number> | null): void {
  const { network, work, branchOfSlot } = compiled;
  const { slots } = work;
  for (let s = 0; s < branchOfSlot.length; s++) {
    const { a, b } = network.branches[branchOfSlot[s]!]!;
    slots.v[s] = initialV === null ? 0 : initialV[a]! - initialV[b]!;
  }
  evaluateSlots(slots);
  takeLines(compiled);
  if (initialV !== null) return;
  for (let s = 0; s < branchOfSlot.length; s++) {
    if (slots.kind[s] === FILAMENT) work.lineS[s] = slots.parameter[s * PARAMETER_COUNT + 4]!;
  }
}

function takeLines(compiled: CompiledNetwork): void {
  const { slots, lineV, lineA, lineS } = compiled.work;
  for (let s = 0; s < lineV.length; s++) {
    lineV[s] = slots.v[s]!;
    lineA[s] = slots.currentA[s]!;
    lineS[s] = slots.slopeS[s]!;
  }
}

/**
 * Plain Newton steps on the late columns: solve with every nonlinear branch replaced by its line, move the lines, repeat.
 * A filament whose volts changed sign is next taken at 0 V: plain steps across its steep origin swing from side to side.
 * Ends when laws and lines agree or after `most` steps; leaves the volts of all positions in work.positionV.
 * @returns the number of steps
 */
export function newtonSteps(compiled: CompiledNetwork, shorts: ShortColumns, most: number): number {
  const { work, pattern } = compiled;
  const { splitColumn, unknownCount } = pattern;
  let count = 0;
  let agreed = false;
  while (!agreed && count < most) {
    count++;
    restoreReduced(compiled);
    addLines(compiled);
    eliminate(work.mesh, splitColumn, unknownCount, work.injectedA);
    if (shorts.column.length > 0) applyShorts(compiled, shorts, splitColumn);
    backward(work.mesh, splitColumn, unknownCount, work.injectedA, work.positionV);
    agreed = moveLines(compiled) <= AGREEMENT_A;
  }
  if (shorts.column.length > 0) takeShorts(shorts, 0, splitColumn, work.injectedA);
  backward(work.mesh, 0, splitColumn, work.injectedA, work.positionV);
  // The early currents are kept for the next solve of the same linear part.
  if (shorts.column.length > 0) giveBack(shorts, splitColumn, work.injectedA);
  return count;
}

function giveBack(shorts: ShortColumns, splitColumn: number, injectedA: Float64Array): void {
  injectedA.set(shorts.earlyInjectedA.subarray(0, splitColumn));
}

/** Adds the line of each slot to the mesh: conductance lineS and current lineS · lineV − lineA into a. */
function addLines(compiled: CompiledNetwork): void {
  const { positionA, positionB, entry, branchOfSlot, work } = compiled;
  const { value } = work.mesh;
  const { injectedA, lineV, lineA, lineS } = work;
  for (let s = 0; s < branchOfSlot.length; s++) {
    const k = branchOfSlot[s]!;
    const place = entry[k]!;
    if (place < 0) continue;
    const g = lineS[s]!;
    value[place] = value[place]! + g;
    const sourceA = g * lineV[s]! - lineA[s]!;
    const a = positionA[k]!;
    const b = positionB[k]!;
    injectedA[a] = injectedA[a]! + sourceA;
    injectedA[b] = injectedA[b]! - sourceA;
  }
}

/** Evaluates each law at the new volts and moves its line there. Returns Σ |law − line|, A. */
function moveLines(compiled: CompiledNetwork): number {
  const { positionA, positionB, branchOfSlot, work } = compiled;
  const { positionV, slots, lineV, lineA, lineS } = work;
  for (let s = 0; s < branchOfSlot.length; s++) {
    const k = branchOfSlot[s]!;
    slots.v[s] = positionV[positionA[k]!]! - positionV[positionB[k]!]!;
  }
  evaluateSlots(slots);
  let sumA = 0;
  let guarded = false;
  for (let s = 0; s < branchOfSlot.length; s++) {
    const v = slots.v[s]!;
    sumA += Math.abs(slots.currentA[s]! - (lineA[s]! + lineS[s]! * (v - lineV[s]!)));
    if (slots.kind[s] === FILAMENT) {
      if (v * lineV[s]! < 0) slots.v[s] = 0;
    } else if (slots.kind[s] === DIODE) limitJunction(compiled, s);
    if (slots.v[s] !== v) guarded = true;
  }
  if (guarded && sumA > AGREEMENT_A) evaluateSlots(slots);
  takeLines(compiled);
  return sumA;
}

/**
 * A junction without resistance climbs by the logarithm of the step wanted (the limiting of SPICE 2, Nagel 1975, *memory*).
 * With resistance its current is solved exactly and needs no limit.
 */
function limitJunction(compiled: CompiledNetwork, s: number): void {
  const { slots, lineV } = compiled.work;
  const p = s * PARAMETER_COUNT;
  if (slots.parameter[p + 2]! > 0) return;
  const v = slots.v[s]!;
  const before = lineV[s]!;
  const scaleV = slots.parameter[p + 1]!;
  const kneeV = slots.parameter[p + 3]!;
  if (v <= kneeV || Math.abs(v - before) <= 2 * scaleV) return;
  const ratio = 1 + (v - before) / scaleV;
  if (before <= 0) slots.v[s] = scaleV * Math.log(v / scaleV);
  else slots.v[s] = ratio > 0 ? before + scaleV * Math.log(ratio) : kneeV;
}
