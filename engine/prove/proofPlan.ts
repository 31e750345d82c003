import { presentParts } from "../job/index.ts";
import { type CompiledJob, compileJob, conditionsOf } from "../operate/index.ts";
import {
  type Grouping,
  type GroupState,
  groupingOf,
  groupStates,
  heaviestRest,
} from "./groupStates.ts";
import type { ProofInput } from "./proofInput.ts";
import { type ProofSolver, proofSolver } from "./proofSolver.ts";
import { type Assignment, type StateSpace, stateSpace } from "./stateSpace.ts";
import { splitVariables } from "./switchGroups.ts";
import { type Exposure, wireExposures } from "./wireExposures.ts";

/** Everything the parts of a proof share, made once in each worker: the same from the same input. */
export interface ProofPlan {
  readonly input: ProofInput;
  readonly solver: ProofSolver;
  /** What can drive a fault current through each conductor; reckoned when first asked. */
  readonly exposuresOf: (conductor: string) => readonly Exposure[];
  /** The battery held at the regulator's volts; null where nothing charges it. */
  readonly charged: { readonly solver: ProofSolver; readonly batteryV: number } | null;
  readonly space: StateSpace;
  readonly still: Grouping;
  readonly turning: Grouping;
  readonly heaviest: Assignment;
  /** Combinations of all groups with the engine still, then those of the groups a generator works inside, running. */
  readonly states: readonly GroupState[];
  /** Elements whose group holds a generator while the engine runs: what they do standing still says nothing of that. */
  readonly generated: ReadonlySet<number>;
}

export function proofPlan(input: ProofInput): ProofPlan {
  const { job, conductors } = input;
  const solver = proofSolver(input);
  const space = stateSpace(job);
  const still = groupingOf(solver, space, { running: false });
  const turning = groupingOf(solver, space, {
    running: true,
    splitFirst: splitVariables(still.trees),
  });
  const [stopped, , ...running] = space.engines;
  const heaviest = heaviestRest(solver, space, stopped!);
  const chargingV = chargingVolts(input);
  const conditions = conditionsOf(job, chargingV === null ? {} : { battery: { emfV: chargingV } });
  const generating = { ...turning, groups: turning.groups.filter(({ generates }) => generates) };
  return {
    input,
    solver,
    exposuresOf: exposuresIn(input, solver.compiled),
    charged:
      chargingV === null
        ? null
        : {
            batteryV: chargingV,
            solver: proofSolver(
              { ...input, job, conductors },
              { conditions, tally: solver.tally, like: solver },
            ),
          },
    space,
    still,
    turning,
    heaviest,
    generated: new Set(generating.groups.flatMap(({ elements }) => [...elements])),
    states: [
      ...groupStates(space, still, stopped!, heaviest),
      ...running.flatMap((engine) => groupStates(space, generating, engine, heaviest)),
    ],
  };
}

/** Exposures of a machine, laid out when the first is asked for. */
export function exposuresIn(
  { routed, protection }: ProofInput,
  compiled: CompiledJob,
): ProofPlan["exposuresOf"] {
  let made: ProofPlan["exposuresOf"] | null = null;
  return (conductor) => {
    made ??= wireExposures(compiled, routed, protection);
    return made(conductor);
  };
}

/** What the highest-set regulator holds the battery at, V. */
export function chargingVolts({ job }: ProofInput): number | null {
  const setsV = presentParts(job).flatMap((part) =>
    part.kind === "regulator" && part.type !== "ac-shunt" ? [part.setV.value] : [],
  );
  return setsV.length === 0 ? null : Math.max(...setsV);
}

/** The same machine with other conditions, laid out anew. */
export function compiledAt(plan: ProofPlan, request: Parameters<typeof conditionsOf>[1]) {
  const { job, conductors } = plan.input;
  return compileJob(job, conductors, { conditions: conditionsOf(job, request) });
}
