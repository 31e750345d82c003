import { batteriesOf, pinRef, presentParts } from "../job/index.ts";
import { operateArguments } from "./operateArguments.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { ChargeFault } from "./proveResult.ts";

/**
 * What a charging machine does to its own loads when the battery goes: the battery's live post parted, and each fuse blown, with the
 * engine fast and as much as can be switched on: with nothing on there is nothing to harm. The largest volts across any load are solved with the source as it is modelled: a regulated
 * one holds its set volts at its own terminals, an unregulated one climbs to what its line gives.
 */
export function chargeFaults({
  input,
  solver,
  space,
  heaviest,
}: ProofPlan): readonly ChargeFault[] {
  const { job } = input;
  const fast = space.engines.find(({ name }) => name === "fast");
  const full = fast && space.completed({}, fast, heaviest);
  const generates = presentParts(job).some(({ kind }) => kind === "generator");
  if (fast === undefined || full == null || !generates) return [];
  const state = space.quick(full, fast);
  const fuses = presentParts(job).filter(({ kind }) => kind === "fuse");
  const faults = [
    ...batteriesOf(job).map(({ livePost }) => ({
      fault: `battery parted at ${livePost}`,
      open: [livePost],
    })),
    ...fuses.map(({ id, pins }) => ({
      fault: `fuse ${id} blown`,
      open: pins.length > 0 ? [pinRef(id, pins[0]!.id)] : [],
    })),
  ];
  return faults.map(({ fault, open }): ChargeFault => {
    const faulted = { ...state, open };
    // It was running when it happened, so it goes on exciting itself; `operate` begins from standstill.
    const solution = solver.solve({ ...faulted, excited: true });
    const isIdle = solution.supplies.rows.some(({ why }) => why !== null);
    const solved = solution.converged && !isIdle;
    const volts = solver.loads.flatMap(({ element, alternating }) => {
      const [a, b] = solver.compiled.jobNetwork.elements[element]!.nodes;
      return alternating ? [] : [Math.abs(solution.nodeV[a]! - solution.nodeV[b]!)];
    });
    return {
      fault,
      speedRpm: fast.speedRpm,
      largestV: solved && volts.length > 0 ? Math.max(...volts) : null,
      solved,
      reproduce: operateArguments(job, faulted),
    };
  });
}
