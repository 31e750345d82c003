import type { CompiledNetwork } from "./compileNetwork.ts";
import { factorSlopes } from "./factorSlopes.ts";
import type { Solution } from "./solution.ts";
import { withShorts } from "./withShorts.ts";

/** Stands for 'nothing': keeps a node that nothing holds from a division by zero, 1e12 times below any bound we ask about. */
const NOTHING_S = 1e-18;
/** A node held by less than this floats: its volts are not reported. */
export const FLOATING_BELOW_S = 1e-6;

/**
 * Thevenin conductance, S, from each node to the reference in the network linearised at a solution, leaks left out.
 * Node 0 is Infinity. The diagonal of G⁻¹ by the sparse-inverse recurrence Z_jj = 1/d_j + Σ w_i·Z_ij, Z_ij = Σ w_k·Z_ik,
 * all of it sums of positive numbers (Takahashi, Fagan & Chen 1973, *memory*).
 */
export function theveninConductancesS(compiled: CompiledNetwork, solution: Solution): Float64Array {
  // Shorts become branches of a network compiled for the occasion: adding them afterwards would subtract large numbers.
  const { shorts, branchSlopeS } = solution;
  const joined = shorts.length === 0 ? compiled : withShorts(compiled, shorts);
  factorSlopes(joined, [...branchSlopeS, ...shorts.map(({ ohm }) => 1 / ohm)], NOTHING_S);
  const diagonalOhm = new Float64Array(joined.pattern.unknownCount);
  inverseDiagonal(joined, diagonalOhm);
  const conductances = new Float64Array(compiled.network.nodeCount).fill(Number.POSITIVE_INFINITY);
  diagonalOhm.forEach((ohm, j) => {
    conductances[joined.pattern.nodeAtPosition[j]!] = 1 / ohm;
  });
  return conductances;
}

/** One entry of `theveninConductancesS`. */
export function theveninConductanceS(
  compiled: CompiledNetwork,
  solution: Solution,
  node: number,
): number {
  return theveninConductancesS(compiled, solution)[node]!;
}

/** Nodes, rising, whose Thevenin conductance to the reference is below 1e-6 S at the solution. */
export function floatingNodes(compiled: CompiledNetwork, solution: Solution): number[] {
  const floating: number[] = [];
  theveninConductancesS(compiled, solution).forEach((conductanceS, node) => {
    if (conductanceS < FLOATING_BELOW_S) floating.push(node);
  });
  return floating;
}

/** Diagonal of G⁻¹, ohm, by position, of the network factored in the mesh. */
export function inverseDiagonal(compiled: CompiledNetwork, diagonalOhm: Float64Array): void {
  const { columnStart, rowIndex, updateStart, updateTarget, unknownCount } = compiled.pattern;
  const { value, pivotOhm } = compiled.work;
  const inverse = new Float64Array(value.length);
  for (let j = unknownCount - 1; j >= 0; j--) {
    const start = columnStart[j]!;
    const last = columnStart[j + 1]! - 1;
    for (let p = start; p < last; p++) inverse[p] = value[p]! * diagonalOhm[rowIndex[p]!]!;
    let t = updateStart[j]!;
    for (let p = start; p < last; p++) {
      for (let q = p + 1; q < last; q++) {
        const ohm = inverse[updateTarget[t++]!]!;
        inverse[p] = inverse[p]! + value[q]! * ohm;
        inverse[q] = inverse[q]! + value[p]! * ohm;
      }
      t++;
    }
    let sum = pivotOhm[j]!;
    for (let p = start; p < last; p++) sum += value[p]! * inverse[p]!;
    diagonalOhm[j] = sum;
  }
}
