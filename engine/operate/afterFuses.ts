import type { CompiledJob } from "./compileJob.ts";
import type { AfterFuse, FuseRow, OperateSolution, OperateState } from "./operateResult.ts";
import { type SolvedState, solveState } from "./solveState.ts";

/**
 * Fuses opening one after the other: the fuse that must open first opens, the state is solved again, and so on until none has
 * to. Once by the longest times (what is promised), once by the shortest (what may happen), where that is another order.
 */
export function afterFuses(
  compiled: CompiledJob,
  first: SolvedState,
): Pick<OperateSolution, "afterFuses" | "afterFusesByMin"> {
  const byMax = sequence(compiled, first, "opensMaxS");
  const byMin = sequence(compiled, first, "opensMinS");
  const order = (steps: readonly AfterFuse[]): string => steps.map((step) => step.opened).join(" ");
  return {
    afterFuses: byMax,
    afterFusesByMin: order(byMin) === order(byMax) ? [] : byMin,
  };
}

function sequence(
  compiled: CompiledJob,
  first: SolvedState,
  by: "opensMinS" | "opensMaxS",
): readonly AfterFuse[] {
  const steps: AfterFuse[] = [];
  let before = first;
  let [atMinS, atMaxS]: [number, number | null] = [0, 0];
  for (;;) {
    const next = earliest(before.fuses, before.state, by);
    if (next === null) return steps;
    atMinS += next.opensMinS ?? 0;
    atMaxS = atMaxS === null || next.opensMaxS === null ? null : atMaxS + next.opensMaxS;
    const state = { ...before.state, open: [...before.state.open, next.part].sort() };
    before = solveState(compiled, state);
    steps.push({ atS: [atMinS, atMaxS], opened: [next.part], state, solution: before });
  }
}

/** The unopened fuse that opens first by one edge of its band; of equals the first by id. */
function earliest(
  fuses: readonly FuseRow[],
  state: OperateState,
  by: "opensMinS" | "opensMaxS",
): FuseRow | null {
  const opening = fuses
    .filter((fuse) => fuse[by] !== null && !state.open.includes(fuse.part))
    .sort((a, b) => a[by]! - b[by]! || (a.part < b.part ? -1 : 1));
  return opening[0] ?? null;
}
