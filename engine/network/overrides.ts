import { checkLaw } from "./checkNetwork.ts";
import { type CompiledNetwork, setLaw, setLinear } from "./compileNetwork.ts";
import type { BranchOverride } from "./solution.ts";

/** Brings the workspace back to the compiled network, then applies the overrides of this solve. */
export function applyOverrides(
  compiled: CompiledNetwork,
  overrides: readonly BranchOverride[],
): void {
  const { now, network } = compiled;
  const { overridden, overriddenIn } = now;
  now.solveIndex++;
  for (let k = 0; k < overrides.length; k++) {
    const { branchIndex, law } = overrides[k]!;
    checkLaw(law, branchIndex);
    setLaw(compiled, branchIndex, law);
    overriddenIn[branchIndex] = now.solveIndex;
  }
  // Those of the last solve that are wanted again stay as they are, and with them what was factored.
  for (let k = 0; k < overridden.length; k++) {
    const branch = overridden[k]!;
    if (overriddenIn[branch] !== now.solveIndex)
      setLaw(compiled, branch, network.branches[branch]!.law);
  }
  overridden.length = 0;
  for (let k = 0; k < overrides.length; k++) overridden.push(overrides[k]!.branchIndex);
}

/** Gives one more branch a plain resistance until the next `applyOverrides`. */
export function overrideOhm(compiled: CompiledNetwork, branchIndex: number, ohm: number): void {
  if (compiled.slotOfBranch[branchIndex]! < 0) setLinear(compiled, branchIndex, 1 / ohm, 0);
  else setLaw(compiled, branchIndex, { kind: "ohm", ohm });
  compiled.now.overridden.push(branchIndex);
}
