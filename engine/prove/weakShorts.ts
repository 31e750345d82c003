import { conditionsOf, DEAD_SHORT_OHM, fuseOpensS } from "../operate/index.ts";
import { fusesOf } from "./allWires.ts";
import type { ProofPlan } from "./proofPlan.ts";
import { type ProofSolver, proofSolver } from "./proofSolver.ts";
import type { WorstShort } from "./proveResult.ts";

/** A winter morning, °C: our own case for the cold. */
export const COLD_C = -10;

/** The machine on a weak and cold battery. */
export function weakSolver({ input, solver }: ProofPlan): ProofSolver {
  const conditions = conditionsOf(input.job, { battery: "weak", ambientC: COLD_C });
  return proofSolver(input, { conditions, tally: solver.tally, like: solver });
}

/** The same short, dead, with the battery weak and cold: does it still open the fuse, and how late at most? */
export function weakestShort(
  plan: ProofPlan,
  weak: ProofSolver,
  wire: string,
  { place, to, state, cut }: WorstShort,
): { readonly currentA: number; readonly opensMaxS: number | null } {
  const element = plan.solver.compiled.elementOfConductor.get(wire)!;
  const solution = weak.glance({ ...state, short: [{ a: place, b: to, ohm: DEAD_SHORT_OHM }] });
  const currentA = Math.abs(solution.elementA[element]!);
  const fuses = fusesOf(plan.input.job);
  const times = cut.map((id) => fuseOpensS(fuses.get(id)!, currentA / cut.length).maxS);
  const open = times.length === 0 || times.includes(null);
  return { currentA, opensMaxS: open ? null : Math.max(...times.map((timeS) => timeS!)) };
}
