import type { CompiledNetwork } from "./compileNetwork.ts";
import { eliminate } from "./starMesh.ts";

/**
 * Eliminates everything that does not change within a solve (columns before splitColumn), unless it already stands so:
 * the conductances and EMFs it was made from are compared one by one.
 */
export function reduceLinearPart(compiled: CompiledNetwork): void {
  if (standsAlready(compiled)) return;
  const { work, pattern } = compiled;
  const { splitColumn, columnStart, unknownCount } = pattern;
  const { mesh, injectedA, reducedS, reducedA } = work;
  const { value } = mesh;
  value.fill(0);
  injectedA.fill(0);
  addLeaks(compiled, 1 / compiled.network.leakOhm);
  addLinearBranches(compiled);
  eliminate(mesh, 0, splitColumn, injectedA);
  const firstLate = columnStart[splitColumn]!;
  for (let p = firstLate, k = 0; p < value.length; p++, k++) reducedS[k] = value[p]!;
  for (let j = splitColumn, k = 0; j <= unknownCount; j++, k++) reducedA[k] = injectedA[j]!;
  work.factoredS.set(work.linearS);
  work.factoredEmfV.set(work.linearEmfV);
}

/** Says that the mesh was used for something else: the next solve starts from the beginning. */
export function forgetLinearPart(compiled: CompiledNetwork): void {
  compiled.work.factoredS.fill(Number.NaN);
}

/** Copies the reduced late columns back into the mesh, ready for the nonlinear branches. */
export function restoreReduced(compiled: CompiledNetwork): void {
  const { work, pattern } = compiled;
  const { value } = work.mesh;
  const { reducedS, reducedA, injectedA } = work;
  const firstLate = pattern.columnStart[pattern.splitColumn]!;
  for (let k = 0; k < reducedS.length; k++) value[firstLate + k] = reducedS[k]!;
  for (let k = 0; k < reducedA.length; k++) injectedA[pattern.splitColumn + k] = reducedA[k]!;
}

/** Adds a conductance from every unknown node to the reference: the last entry of its column. */
export function addLeaks(compiled: CompiledNetwork, leakS: number): void {
  const { columnStart, unknownCount } = compiled.pattern;
  const { value } = compiled.work.mesh;
  for (let j = 1; j <= unknownCount; j++) {
    const last = columnStart[j]! - 1;
    value[last] = value[last]! + leakS;
  }
}

function standsAlready(compiled: CompiledNetwork): boolean {
  const { linearS, linearEmfV, factoredS, factoredEmfV } = compiled.work;
  if (linearS.length === 0) return false;
  for (let k = 0; k < linearS.length; k++) {
    if (linearS[k] !== factoredS[k] || linearEmfV[k] !== factoredEmfV[k]) return false;
  }
  return true;
}

function addLinearBranches(compiled: CompiledNetwork): void {
  const { positionA, positionB, entry, work } = compiled;
  const { linearS, linearEmfV, injectedA } = work;
  const { value } = work.mesh;
  for (let k = 0; k < linearS.length; k++) {
    const place = entry[k]!;
    const g = linearS[k]!;
    if (g === 0 || place < 0) continue;
    value[place] = value[place]! + g;
    if (linearEmfV[k] === 0) continue;
    const sourceA = g * linearEmfV[k]!;
    injectedA[positionA[k]!] = injectedA[positionA[k]!]! + sourceA;
    injectedA[positionB[k]!] = injectedA[positionB[k]!]! - sourceA;
  }
}
