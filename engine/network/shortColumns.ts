import type { CompiledNetwork } from "./compileNetwork.ts";
import { MOST_SHORTS } from "./kernelMemory.ts";
import type { Short } from "./solution.ts";

/**
 * Shorts outside the pattern, as extra unknowns eliminated last: G·v + A·α = s, Aᵀ·v − R·α = 0, where α is the current of each
 * short. With y = L⁻¹·A this is (R + yᵀ·D⁻¹·y)·α = yᵀ·D⁻¹·(L⁻¹·s): exact, and as cheap as one more right-hand side each.
 * (Woodbury 1950; the bordered form is the same algebra.) The columns y lie in the kernel's memory.
 */
export interface ShortColumns {
  readonly count: number;
  /** First column that is eliminated anew in each step; the sums over the earlier ones are kept here. */
  readonly firstLate: number;
  readonly earlyMatrixOhm: Float64Array;
  readonly earlyV: Float64Array;
  /** Current of each short, A. */
  readonly currentA: Float64Array;
  readonly matrixOhm: Float64Array;
}

export const NO_SHORTS: ShortColumns = layOut(0, 0);

/** Lays out at most MOST_SHORTS shorts and carries them through the columns before `firstLate`, eliminated already. */
export function shortColumns(
  compiled: CompiledNetwork,
  shorts: readonly Short[],
  firstLate: number,
): ShortColumns {
  const { pattern, work, kernel } = compiled;
  if (shorts.length > MOST_SHORTS) throw new Error(`${shorts.length} shorts; ${MOST_SHORTS} fit`);
  const n = pattern.unknownCount;
  const made = roomFor(compiled, shorts.length, firstLate);
  for (let k = 0; k < shorts.length; k++) checkShort(compiled, shorts[k]!);
  if (shorts.length === 1 && firstLate === pattern.splitColumn) {
    const { a, b, ohm } = shorts[0]!;
    kernel.run.startOneShort(pattern.positionOfNode[a]!, pattern.positionOfNode[b]!, ohm);
    made.earlyMatrixOhm[0] = work.oneShort[0]!;
    made.earlyV[0] = work.oneShort[1]!;
    return made;
  }
  const { shortColumn, shortLate } = work;
  shortColumn.fill(0, 0, shorts.length * (n + 1));
  for (let k = 0; k < shorts.length; k++) {
    const { a, b, ohm } = shorts[k]!;
    const base = k * (n + 1);
    const placeA = base + pattern.positionOfNode[a]!;
    const placeB = base + pattern.positionOfNode[b]!;
    shortColumn[placeA] = shortColumn[placeA]! + 1;
    shortColumn[placeB] = shortColumn[placeB]! - 1;
    // Nothing happens before the first of its two nodes.
    const first = Math.min(placeA, placeB) - base;
    kernel.run.forward(Math.min(first, firstLate), firstLate, columnAddress(compiled, k));
    made.earlyMatrixOhm[k * shorts.length + k] = ohm;
    if (firstLate !== pattern.splitColumn) continue;
    const lateCount = n + 1 - firstLate;
    for (let j = 0; j < lateCount; j++) {
      shortLate[k * lateCount + j] = shortColumn[base + firstLate + j]!;
    }
  }
  accumulate(compiled, made, 0, firstLate, made.earlyMatrixOhm, made.earlyV);
  return made;
}

/** The room of the solve before where it fits. */
function roomFor(compiled: CompiledNetwork, count: number, firstLate: number): ShortColumns {
  const { shorts } = compiled.now;
  if (shorts.count !== count || shorts.firstLate !== firstLate) return layOut(count, firstLate);
  shorts.earlyMatrixOhm.fill(0);
  shorts.earlyV.fill(0);
  return shorts;
}

function layOut(count: number, firstLate: number): ShortColumns {
  return {
    count,
    firstLate,
    earlyMatrixOhm: new Float64Array(count * count),
    earlyV: new Float64Array(count),
    currentA: new Float64Array(count),
    matrixOhm: new Float64Array(count * count),
  };
}

function columnAddress({ kernel, pattern }: CompiledNetwork, k: number): number {
  return kernel.addresses.shortColumn + 8 * k * (pattern.unknownCount + 1);
}

function checkShort(compiled: CompiledNetwork, { a, b, ohm }: Short): void {
  const { nodeCount } = compiled.network;
  const inside = (node: number): boolean => Number.isInteger(node) && node >= 0 && node < nodeCount;
  if (!inside(a) || !inside(b)) throw new Error(`Short from node ${a} to ${b}: no such nodes`);
  if (!(ohm > 0 && Number.isFinite(ohm))) throw new Error(`Short of ${ohm} ohm`);
}

/**
 * With all columns eliminated and the sources carried forward, finds the currents of the shorts and takes them from the
 * late injected currents.
 */
export function applyShorts(compiled: CompiledNetwork, columns: ShortColumns): void {
  const { pattern, work, kernel } = compiled;
  const { count, firstLate, matrixOhm, currentA } = columns;
  const n = pattern.unknownCount;
  const lateCount = n + 1 - pattern.splitColumn;
  for (let k = 0; k < count && firstLate === pattern.splitColumn; k++) {
    const start = k * (n + 1) + firstLate;
    for (let j = 0; j < lateCount; j++) {
      work.shortColumn[start + j] = work.shortLate[k * lateCount + j]!;
    }
  }
  for (let k = 0; k < count; k++) kernel.run.forward(firstLate, n, columnAddress(compiled, k));
  matrixOhm.set(columns.earlyMatrixOhm);
  currentA.set(columns.earlyV);
  accumulate(compiled, columns, firstLate, n, matrixOhm, currentA);
  solveSymmetric(matrixOhm, currentA);
  takeShorts(compiled, columns, [firstLate, n], kernel.addresses.injectedA);
}

/** s := s − Σ α·y over positions from .. to − 1 of the currents at `source`. */
export function takeShorts(
  compiled: CompiledNetwork,
  { count, currentA }: ShortColumns,
  [from, to]: readonly [number, number],
  source: number,
): void {
  for (let k = 0; k < count; k++) {
    compiled.kernel.run.addScaled(from, to, source, columnAddress(compiled, k), -currentA[k]!);
  }
}

/** Adds Σ y_k·y_l / d and Σ y_k·s / d over positions from .. to − 1. */
function accumulate(
  compiled: CompiledNetwork,
  { count }: ShortColumns,
  from: number,
  to: number,
  matrixOhm: Float64Array,
  volts: Float64Array,
): void {
  const { addresses, run } = compiled.kernel;
  for (let k = 0; k < count; k++) {
    const y = columnAddress(compiled, k);
    volts[k] = volts[k]! + run.weighed(from, to, y, addresses.injectedA);
    for (let l = 0; l <= k; l++) {
      const ohm = run.weighed(from, to, y, columnAddress(compiled, l));
      matrixOhm[k * count + l] = matrixOhm[k * count + l]! + ohm;
      if (l < k) matrixOhm[l * count + k] = matrixOhm[k * count + l]!;
    }
  }
}

/** x := M⁻¹·x for a small symmetric positive definite M, which is overwritten (Gauss without exchanges). */
function solveSymmetric(matrix: Float64Array, x: Float64Array): void {
  const n = x.length;
  for (let j = 0; j < n; j++) {
    const pivot = matrix[j * n + j]!;
    for (let i = j + 1; i < n; i++) {
      const factor = matrix[i * n + j]! / pivot;
      if (factor === 0) continue;
      for (let k = j; k < n; k++) matrix[i * n + k]! -= factor * matrix[j * n + k]!;
      x[i]! -= factor * x[j]!;
    }
  }
  for (let j = n - 1; j >= 0; j--) {
    let sum = x[j]!;
    for (let k = j + 1; k < n; k++) sum -= matrix[j * n + k]! * x[k]!;
    x[j] = sum / matrix[j * n + j]!;
  }
}
