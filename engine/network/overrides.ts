import { checkLaw } from "./checkNetwork.ts";
import { type CompiledNetwork, setLaw } from "./compileNetwork.ts";
import type { Law } from "./network.ts";
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

/** Overrides one more branch until the next `applyOverrides`. */
export function overrideLaw(compiled: CompiledNetwork, branchIndex: number, law: Law): void {
  setLaw(compiled, branchIndex, law);
  compiled.now.overridden.push(branchIndex);
}
