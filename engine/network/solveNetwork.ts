import { type CompiledNetwork, compileNetwork, isLinear } from "./compileNetwork.ts";
import { descendContent } from "./descendContent.ts";
import { branchSlopesS } from "./factorSlopes.ts";
import { MOST_SHORTS } from "./kernelMemory.ts";
import { measureKirchhoff } from "./measureKirchhoff.ts";
import type { Network } from "./network.ts";
import { newtonSteps, reduceLinearPart, startLines } from "./newtonSteps.ts";
import { applyOverrides } from "./overrides.ts";
import { NO_SHORTS, shortColumns } from "./shortColumns.ts";
import type { Short, Solution, SolveOptions, SolveStatus } from "./solution.ts";
import { withShorts } from "./withShorts.ts";

const MOST_ITERATIONS = 200;
/** Plain Newton steps before the safeguarded descent takes over. */
const MOST_PLAIN_ITERATIONS = 30;

/**
 * Node volts and branch currents of a network in one state: Kirchhoff's current law at every node, Σ i(v) = 0, by Newton.
 * Double precision holds 12 V to 2e-15 V, so a branch under about 1e-5 Ω at such volts cannot be shown to meet the bound of
 * 1e-9 A and is reported as not converged: join its nodes instead.
 * Never silent: `converged` is false when the acceptance test was not met, and the numbers are then only the last attempt.
 */
export function solveNetwork(compiled: CompiledNetwork, options: SolveOptions = {}): Solution {
  const fitting = fitted(compiled, options);
  const status = solveInPlace(fitting.compiled, fitting.options);
  return readSolution(fitting, status, compiled.network, options.shorts ?? []);
}

/**
 * As `solveNetwork`, but leaves the result in the workspace (`work.positionV`, `work.branchA`) and allocates next to nothing:
 * for callers that solve hundreds of thousands of states. A nonlinear law may not override a branch compiled linear.
 */
export function solveInPlace(compiled: CompiledNetwork, options: SolveOptions = {}): SolveStatus {
  applyOverrides(compiled, options.overrides ?? []);
  startLines(compiled, options.initialV ?? null);
  return solveAsSet(compiled, options);
}

/** Solves with the overrides and lines that stand in the workspace. */
export function solveAsSet(compiled: CompiledNetwork, options: SolveOptions): SolveStatus {
  const shorts = options.shorts ?? [];
  const most = options.maxIterationCount ?? MOST_ITERATIONS;
  reduceLinearPart(compiled);
  const columns =
    shorts.length === 0 ? NO_SHORTS : shortColumns(compiled, shorts, compiled.pattern.splitColumn);
  const steps = newtonSteps(compiled, columns, Math.min(most, MOST_PLAIN_ITERATIONS));
  const plainCount = options.isRefined ? steps + newtonSteps(compiled, columns, 1) : steps;
  const check = measureKirchhoff(compiled, shorts);
  if (check.accepted) {
    return { converged: true, iterationCount: plainCount, kclResidualA: check.residualA };
  }
  const descent = descendContent(compiled, shorts, most - plainCount);
  return {
    converged: descent.accepted,
    iterationCount: plainCount + descent.stepCount,
    kclResidualA: descent.residualA,
  };
}

/**
 * Copies the result of the last in-place solve out of the workspace, for the branches of `network`. All in one piece of memory: many small
 * pieces cost more to get and to give back than the solve they hold.
 */
export function readSolution(
  { compiled, options }: { readonly compiled: CompiledNetwork; readonly options: SolveOptions },
  status: SolveStatus,
  network: Network,
  shorts: readonly Short[],
): Solution {
  const { pattern, work } = compiled;
  const { nodeCount } = network;
  const branchCount = network.branches.length;
  const slopeCount = (options.slopes ?? true) ? branchCount : 0;
  const count = nodeCount + branchCount + slopeCount + shorts.length;
  const { into } = options;
  const part = piecesOf(
    into !== undefined && into.length >= count ? into : new Float64Array(count),
  );
  const nodeV = part(nodeCount).fill(0);
  for (let j = 0; j < pattern.unknownCount; j++) {
    nodeV[pattern.nodeAtPosition[j]!] = work.positionV[j]!;
  }
  const branchA = part(branchCount);
  for (let k = 0; k < branchCount; k++) branchA[k] = work.branchA[k]!;
  const branchSlopeS = branchSlopesS(compiled, part(slopeCount));
  const shortA = part(shorts.length);
  shorts.forEach(({ a, b, ohm }, k) => {
    shortA[k] = (nodeV[a]! - nodeV[b]!) / ohm;
  });
  return { ...status, nodeV, branchA, branchSlopeS, shortA, shorts };
}

/** Hands out an array piece by piece. */
function piecesOf(all: Float64Array): (count: number) => Float64Array {
  let from = 0;
  return (count) => {
    from += count;
    return all.subarray(from - count, from);
  };
}

/**
 * Compiles anew when an override puts a nonlinear law where the pattern expects a linear one, or when there are more shorts
 * than fit beside the pattern: slower, never wrong.
 */
export function fitted<Options extends SolveOptions>(
  compiled: CompiledNetwork,
  options: Options,
): { readonly compiled: CompiledNetwork; readonly options: Options } {
  const { network, slotOfBranch } = compiled;
  const { shorts = [], overrides = [] } = options;
  if (shorts.length > MOST_SHORTS) {
    return fitted(withShorts(compiled, shorts), { ...options, shorts: [] });
  }
  const odd = overrides.filter(
    ({ branchIndex, law }) => !isLinear(law) && slotOfBranch[branchIndex]! < 0,
  );
  if (odd.length === 0) return { compiled, options };
  const laws = new Map(odd.map(({ branchIndex, law }) => [branchIndex, law]));
  const changed: Network = {
    ...network,
    branches: network.branches.map((branch, k) => ({ ...branch, law: laws.get(k) ?? branch.law })),
  };
  return { compiled: compileNetwork(changed), options };
}
