import type { StarMeshPattern } from "./starMeshPattern.ts";

/**
 * Numbers laid over a StarMeshPattern. Before a column is eliminated its entries are conductances g, S; afterwards they are
 * weights w = g / Σg, which are the entries of −L in LDL'. All are ≥ 0 and only ever added, so every pivot keeps full relative
 * precision, even 1e-9 S islands behind 1e3 S branches (Grassmann, Taksar & Heyman 1985, Operations Research 33(5): *memory*).
 */
export interface StarMesh {
  readonly pattern: StarMeshPattern;
  /** Conductances, then weights (size of pattern.rowIndex). */
  readonly value: Float64Array;
  /** 1 / Σg of each eliminated column (size n). */
  readonly pivotOhm: Float64Array;
}

export function starMesh(pattern: StarMeshPattern): StarMesh {
  return {
    pattern,
    value: new Float64Array(pattern.rowIndex.length),
    pivotOhm: new Float64Array(pattern.unknownCount),
  };
}

/**
 * Eliminates columns from .. to − 1: d = Σ g_j, w_i = g_ij / d, g_ik += w_i · g_kj, and carries the injected currents along:
 * s_i += w_i · s_j. `injectedA` has size n + 1. Columns joined to two others (the middle of a chain) are nearly all there is
 * and are written out.
 */
export function eliminate(mesh: StarMesh, from: number, to: number, injectedA: Float64Array): void {
  const { value, pivotOhm } = mesh;
  const { columnStart, rowIndex, updateStart, updateTarget } = mesh.pattern;
  let start = columnStart[from]!;
  for (let j = from; j < to; j++) {
    const end = columnStart[j + 1]!;
    const sourceA = injectedA[j]!;
    if (end - start !== 3) {
      eliminateColumn(mesh, j, injectedA);
    } else {
      const t = updateStart[j]!;
      const g1 = value[start]!;
      const g2 = value[start + 1]!;
      const g0 = value[start + 2]!;
      const ohm = 1 / (g1 + g2 + g0);
      const w1 = g1 * ohm;
      const w2 = g2 * ohm;
      pivotOhm[j] = ohm;
      value[start] = w1;
      value[start + 1] = w2;
      const row1 = rowIndex[start]!;
      const row2 = rowIndex[start + 1]!;
      const between = updateTarget[t]!;
      const ground1 = updateTarget[t + 1]!;
      const ground2 = updateTarget[t + 2]!;
      value[between] = value[between]! + w1 * g2;
      value[ground1] = value[ground1]! + w1 * g0;
      value[ground2] = value[ground2]! + w2 * g0;
      injectedA[row1] = injectedA[row1]! + w1 * sourceA;
      injectedA[row2] = injectedA[row2]! + w2 * sourceA;
    }
    start = end;
  }
}

function eliminateColumn(mesh: StarMesh, j: number, injectedA: Float64Array): void {
  const { value } = mesh;
  const { columnStart, rowIndex, updateStart, updateTarget } = mesh.pattern;
  const start = columnStart[j]!;
  const end = columnStart[j + 1]!;
  let t = updateStart[j]!;
  let sumS = 0;
  for (let p = start; p < end; p++) sumS += value[p]!;
  const ohm = 1 / sumS;
  mesh.pivotOhm[j] = ohm;
  const sourceA = injectedA[j]!;
  for (let p = start; p < end - 1; p++) {
    const w = value[p]! * ohm;
    for (let q = p + 1; q < end; q++) {
      const target = updateTarget[t++]!;
      value[target] = value[target]! + w * value[q]!;
    }
    const row = rowIndex[p]!;
    injectedA[row] = injectedA[row]! + w * sourceA;
    value[p] = w;
  }
}

/** Carries injected currents (size n + 1) through columns already eliminated: s := L⁻¹ s. Columns without current cost nothing. */
export function forward(mesh: StarMesh, from: number, to: number, injectedA: Float64Array): void {
  const { value } = mesh;
  const { columnStart, rowIndex } = mesh.pattern;
  for (let j = from; j < to; j++) {
    const sourceA = injectedA[j]!;
    if (sourceA === 0) continue;
    const end = columnStart[j + 1]! - 1;
    for (let p = columnStart[j]!; p < end; p++) {
      const row = rowIndex[p]!;
      injectedA[row] = injectedA[row]! + value[p]! * sourceA;
    }
  }
}

/** Volts of columns to − 1 down to from: v_j = s_j / d_j + Σ w_i v_i. `volts` has size n + 1 and holds the later columns already. */
export function backward(
  mesh: StarMesh,
  from: number,
  to: number,
  injectedA: Float64Array,
  volts: Float64Array,
): void {
  const { value, pivotOhm } = mesh;
  const { columnStart, rowIndex } = mesh.pattern;
  for (let j = to - 1; j >= from; j--) {
    const start = columnStart[j]!;
    const end = columnStart[j + 1]! - 1;
    const own = injectedA[j]! * pivotOhm[j]!;
    if (end - start === 2) {
      volts[j] =
        own +
        value[start]! * volts[rowIndex[start]!]! +
        value[start + 1]! * volts[rowIndex[start + 1]!]!;
      continue;
    }
    let v = own;
    for (let p = start; p < end; p++) v += value[p]! * volts[rowIndex[p]!]!;
    volts[j] = v;
  }
}
