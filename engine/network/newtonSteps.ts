import type { CompiledNetwork } from "./compileNetwork.ts";
import { DIODE, evaluateSlot, FILAMENT, PARAMETER_COUNT } from "./lawSlots.ts";
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
    if (initialV !== null) lineAt(compiled, s, initialV[a]! - initialV[b]!);
    else if (slots.kind[s] === FILAMENT) {
      work.lineV[s] = 0;
      work.lineA[s] = 0;
      work.lineS[s] = slots.parameter[s * PARAMETER_COUNT + 4]!;
    } else lineAt(compiled, s, 0);
  }
}

/**
 * Plain Newton steps on the late columns: solve with every nonlinear branch replaced by its line, move the lines, repeat.
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
  let sumA = 0;
  for (let s = 0; s < branchOfSlot.length; s++) {
    const k = branchOfSlot[s]!;
    const v = positionV[positionA[k]!]! - positionV[positionB[k]!]!;
    evaluateSlot(slots, s, v);
    sumA += Math.abs(slots.currentA[s]! - (lineA[s]! + lineS[s]! * (v - lineV[s]!)));
    const next = guardedV(compiled, s, v);
    if (next !== v) evaluateSlot(slots, s, next);
    lineV[s] = next;
    lineA[s] = slots.currentA[s]!;
    lineS[s] = slots.slopeS[s]!;
  }
  return sumA;
}

/**
 * Where to linearise next. A filament whose volts changed sign is taken at 0 V, else steps across the steep origin swing from
 * side to side; a junction without resistance climbs by the logarithm of the step wanted (the limiting of SPICE 2, Nagel 1975,
 * *memory*).
 */
function guardedV(compiled: CompiledNetwork, s: number, v: number): number {
  const { slots, lineV } = compiled.work;
  const before = lineV[s]!;
  if (slots.kind[s] === FILAMENT) return v * before < 0 ? 0 : v;
  const p = s * PARAMETER_COUNT;
  if (slots.kind[s] !== DIODE || slots.parameter[p + 2]! > 0) return v;
  const scaleV = slots.parameter[p + 1]!;
  const kneeV = slots.parameter[p + 3]!;
  if (v <= kneeV || Math.abs(v - before) <= 2 * scaleV) return v;
  if (before <= 0) return scaleV * Math.log(v / scaleV);
  const ratio = 1 + (v - before) / scaleV;
  return ratio > 0 ? before + scaleV * Math.log(ratio) : kneeV;
}

function lineAt(compiled: CompiledNetwork, s: number, v: number): void {
  const { slots, lineV, lineA, lineS } = compiled.work;
  evaluateSlot(slots, s, v);
  lineV[s] = v;
  lineA[s] = slots.currentA[s]!;
  lineS[s] = slots.slopeS[s]!;
}
