import type { CompiledNetwork } from "./compileNetwork.ts";
import { eliminate } from "./starMesh.ts";

/**
 * Eliminates everything that does not change within a solve (columns before splitColumn), unless it already stands so.
 */
export function reduceLinearPart(compiled: CompiledNetwork): void {
  const { work, pattern } = compiled;
  if (work.factored[1] === 1 && work.factored[0] === 0) return;
  const { splitColumn } = pattern;
  const { mesh, injectedA, reducedS, reducedA } = work;
  const { value } = mesh;
  value.fill(0);
  injectedA.fill(0);
  addLeaks(compiled, 1 / compiled.network.leakOhm);
  addLinearBranches(compiled);
  eliminate(mesh, 0, splitColumn, injectedA);
  reducedS.set(work.lateValue);
  reducedA.set(work.lateInjectedA);
  work.factoredS.set(work.linearS);
  work.factoredEmfV.set(work.linearEmfV);
  work.factored[0] = 0;
  work.factored[1] = 1;
}

/** Says that the mesh was used for something else: the next solve starts from the beginning. */
export function forgetLinearPart(compiled: CompiledNetwork): void {
  compiled.work.factored[1] = 0;
}

/** Copies the reduced late columns back into the mesh, ready for the nonlinear branches. */
export function restoreReduced(compiled: CompiledNetwork): void {
  const { work } = compiled;
  work.lateValue.set(work.reducedS);
  work.lateInjectedA.set(work.reducedA);
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
