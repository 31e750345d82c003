import type { CompiledNetwork } from "./compileNetwork.ts";
import { type ShortColumns, takeShorts } from "./shortColumns.ts";

/** Where the first step linearises: at the warm volts if given, else the rated chord of a filament and 0 V of anything else. */
export function startLines(compiled: CompiledNetwork, initialV: ArrayLike<number> | null): void {
  const { pattern, work, kernel } = compiled;
  const { slotV, slotAtV, slotA, slotS, lineV, lineA, lineS, isFilament, chordS } = work;
  const { branchOfSlot, positionA, positionB } = work;
  const { nodeAtPosition } = pattern;
  for (let s = 0; s < branchOfSlot.length; s++) {
    // Nothing of the solve before may show in this one, not even in the last bit.
    slotAtV[s] = Number.NaN;
    if (initialV === null) slotV[s] = 0;
    else {
      const k = branchOfSlot[s]!;
      const a = nodeAtPosition[positionA[k]!]!;
      slotV[s] = initialV[a]! - initialV[nodeAtPosition[positionB[k]!]!]!;
    }
  }
  kernel.run.evaluateAll();
  for (let s = 0; s < branchOfSlot.length; s++) {
    lineV[s] = slotAtV[s]!;
    lineA[s] = slotA[s]!;
    lineS[s] = initialV === null && isFilament[s] === 1 ? chordS[s]! : slotS[s]!;
  }
}

/**
 * Plain Newton steps from the lines that stand, with the linear part reduced once; leaves the volts of all positions in
 * work.positionV. The loop itself is `newtonCode`.
 * @returns the number of steps
 */
export function newtonSteps(compiled: CompiledNetwork, shorts: ShortColumns, most: number): number {
  const { kernel, pattern, now, work } = compiled;
  const { addresses, run } = kernel;
  const { splitColumn } = pattern;
  now.shorts = shorts;
  const count = run.newton(most, shorts.count);
  if (shorts.count === 0) {
    run.backward(0, splitColumn, addresses.injectedA, addresses.positionV);
    return count;
  }
  if (shorts.count === 1) shorts.currentA[0] = work.oneShort[2]!;
  // The early currents themselves are kept for the next solve of the same linear part.
  work.spareA.set(work.injectedA);
  takeShorts(compiled, shorts, [0, splitColumn], addresses.spareA);
  run.backward(0, splitColumn, addresses.spareA, addresses.positionV);
  return count;
}

/** Eliminates everything that does not change within a solve, unless it already stands so. */
export function reduceLinearPart(compiled: CompiledNetwork): void {
  if (compiled.now.reduced) return;
  compiled.kernel.run.reduce(1 / compiled.network.leakOhm);
  compiled.now.reduced = true;
}
