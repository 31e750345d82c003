import type { CompiledNetwork } from "./compileNetwork.ts";
import type { Short } from "./solution.ts";
import { forward } from "./starMesh.ts";

/**
 * Shorts outside the pattern, as extra unknowns eliminated last: G·v + A·α = s, Aᵀ·v − R·α = 0, where α is the current of each
 * short. With y = L⁻¹·A this is (R + yᵀ·D⁻¹·y)·α = yᵀ·D⁻¹·(L⁻¹·s): exact, and as cheap as one more right-hand side each.
 * (Woodbury 1950; the bordered form is the same algebra.)
 */
export interface ShortColumns {
  readonly shorts: readonly Short[];
  /** y of each short (size n + 1), its late part as left by the early columns, and the sums over the early columns. */
  readonly column: readonly Float64Array[];
  readonly lateStart: readonly Float64Array[];
  readonly earlyMatrixOhm: Float64Array;
  readonly earlyV: Float64Array;
  /** The injected currents of the early columns before any short took its share. */
  readonly earlyInjectedA: Float64Array;
  /** Current of each short, A. */
  readonly currentA: Float64Array;
  readonly matrixOhm: Float64Array;
}

export const NO_SHORTS: ShortColumns = layOut([], 0, 0, 0);

/** Lays out shorts and carries them through the columns before `firstLate`, which must be eliminated already. */
export function shortColumns(
  compiled: CompiledNetwork,
  shorts: readonly Short[],
  firstLate: number,
): ShortColumns {
  const { pattern, work } = compiled;
  const n = pattern.unknownCount;
  const made = layOut(shorts, n + 1, n + 1 - firstLate, firstLate);
  shorts.forEach(({ a, b, ohm }, k) => {
    checkShort(compiled, shorts[k]!);
    const y = made.column[k]!;
    const placeA = pattern.positionOfNode[a]!;
    const placeB = pattern.positionOfNode[b]!;
    y[placeA] = y[placeA]! + 1;
    y[placeB] = y[placeB]! - 1;
    forward(work.mesh, 0, firstLate, y);
    made.lateStart[k]!.set(y.subarray(firstLate));
    made.earlyMatrixOhm[k * shorts.length + k] = ohm;
  });
  made.earlyInjectedA.set(work.injectedA.subarray(0, firstLate));
  accumulate(compiled, made, 0, firstLate, made.earlyMatrixOhm, made.earlyV);
  return made;
}

function layOut(
  shorts: readonly Short[],
  size: number,
  lateSize: number,
  earlySize: number,
): ShortColumns {
  const count = shorts.length;
  return {
    shorts,
    column: shorts.map(() => new Float64Array(size)),
    lateStart: shorts.map(() => new Float64Array(lateSize)),
    earlyMatrixOhm: new Float64Array(count * count),
    earlyV: new Float64Array(count),
    earlyInjectedA: new Float64Array(earlySize),
    currentA: new Float64Array(count),
    matrixOhm: new Float64Array(count * count),
  };
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
export function applyShorts(
  compiled: CompiledNetwork,
  columns: ShortColumns,
  firstLate: number,
): void {
  const { pattern, work } = compiled;
  const n = pattern.unknownCount;
  const { matrixOhm, currentA } = columns;
  columns.column.forEach((y, k) => {
    y.set(columns.lateStart[k]!, firstLate);
    forward(work.mesh, firstLate, n, y);
  });
  matrixOhm.set(columns.earlyMatrixOhm);
  currentA.set(columns.earlyV);
  accumulate(compiled, columns, firstLate, n, matrixOhm, currentA);
  solveSymmetric(matrixOhm, currentA);
  takeShorts(columns, firstLate, n, work.injectedA);
}

/** s := s − Σ α·y over positions from .. to − 1. */
export function takeShorts(
  columns: ShortColumns,
  from: number,
  to: number,
  injectedA: Float64Array,
): void {
  for (let k = 0; k < columns.column.length; k++) {
    const y = columns.column[k]!;
    const alphaA = columns.currentA[k]!;
    for (let j = from; j < to; j++) injectedA[j] = injectedA[j]! - alphaA * y[j]!;
  }
}

/** Adds Σ y_k·y_l / d and Σ y_k·s / d over positions from .. to − 1. */
function accumulate(
  compiled: CompiledNetwork,
  columns: ShortColumns,
  from: number,
  to: number,
  matrixOhm: Float64Array,
  volts: Float64Array,
): void {
  const { injectedA, mesh } = compiled.work;
  const { pivotOhm } = mesh;
  const count = columns.column.length;
  for (let k = 0; k < count; k++) {
    const y = columns.column[k]!;
    let v = 0;
    for (let j = from; j < to; j++) v += y[j]! * pivotOhm[j]! * injectedA[j]!;
    volts[k] = volts[k]! + v;
    for (let l = 0; l <= k; l++) {
      const other = columns.column[l]!;
      let ohm = 0;
      for (let j = from; j < to; j++) ohm += y[j]! * pivotOhm[j]! * other[j]!;
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
      for (let k = j; k < n; k++)
        matrix[i * n + k] = matrix[i * n + k]! - factor * matrix[j * n + k]!;
      x[i] = x[i]! - factor * x[j]!;
    }
  }
  for (let j = n - 1; j >= 0; j--) {
    let sum = x[j]!;
    for (let k = j + 1; k < n; k++) sum -= matrix[j * n + k]! * x[k]!;
    x[j] = sum / matrix[j * n + j]!;
  }
}
