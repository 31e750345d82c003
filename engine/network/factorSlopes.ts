import type { CompiledNetwork } from "./compileNetwork.ts";

/**
 * Factors the linearised network: every branch by its slope, every node tied to the reference by leakS, with the currents in
 * work.injectedA carried forward. The reduced linear part is lost; the next solve makes it again.
 */
export function factorSlopes(
  compiled: CompiledNetwork,
  branchSlopeS: ArrayLike<number>,
  leakS: number,
): void {
  const { work, pattern, kernel, now } = compiled;
  const { value, entry, columnStart } = work;
  now.reduced = false;
  value.fill(0);
  for (let j = 1; j <= pattern.unknownCount; j++) value[columnStart[j]! - 1] = leakS;
  for (let k = 0; k < entry.length; k++) {
    const place = entry[k]!;
    if (place >= 0) value[place] = value[place]! + branchSlopeS[k]!;
  }
  kernel.run.eliminate(0, pattern.unknownCount);
}

/** Slope of every branch's law where it was last measured, S. */
export function branchSlopesS(compiled: CompiledNetwork, slopeS: Float64Array): Float64Array {
  const { slotOfBranch, work } = compiled;
  for (let k = 0; k < slopeS.length; k++) {
    const slot = slotOfBranch[k]!;
    slopeS[k] = slot < 0 ? work.linearS[k]! : work.slotS[slot]!;
  }
  return slopeS;
}
