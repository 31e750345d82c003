import {
  type Job,
  type OperateRequest,
  operateJob,
  planJob,
  type Refusal,
  type SetFault,
  withFaults,
} from "@copperwright/engine";

type Conductors = ReturnType<typeof planJob>["conductors"];
type Solution = Extract<ReturnType<typeof operateJob>, { ok: true }>["solution"];

/** A machine with a hidden fault, ready to be asked. Stays in the server. */
export interface ExerciseMachine {
  readonly job: Job;
  readonly conductors: Conductors;
  readonly request: OperateRequest;
  readonly faults: readonly SetFault[];
}

export type MachineOperated =
  | {
      readonly ok: true;
      /** The machine with its fault, and the state after every fuse that goes has gone. */
      readonly job: Job;
      readonly request: OperateRequest;
      readonly solution: Omit<Solution, "afterFuses" | "afterFusesByMin">;
      readonly fusesGone: readonly string[];
    }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

export function exerciseMachine(
  job: Job,
  request: OperateRequest,
  faults: readonly SetFault[],
): ExerciseMachine {
  const { job: planned, conductors } = planJob(job);
  return { job: planned, conductors, request, faults };
}

/** The machine as it stands, solved with its fault; fuses that have to open have opened in the answer. */
export function operateMachine(
  machine: ExerciseMachine,
  standing: OperateRequest,
  pulled: readonly string[],
): MachineOperated {
  const asked = { ...machine.request, ...standing, open: pulled };
  const faulted = withFaults(machine.job, asked, machine.faults);
  if (!faulted.ok) return soundRefusals(machine, asked);
  const operated = operateJob(faulted.job, machine.conductors, faulted.request);
  if (!operated.ok) return soundRefusals(machine, asked);
  const { job } = faulted;
  const last = operated.solution.afterFuses.at(-1);
  if (last === undefined) {
    return { ok: true, job, request: faulted.request, solution: operated.solution, fusesGone: [] };
  }
  const fuses = new Set(job.parts.filter(({ kind }) => kind === "fuse").map(({ id }) => id));
  const fusesGone = operated.solution.afterFuses
    .flatMap(({ opened }) => opened)
    .filter((id, k, all) => fuses.has(id) && all.indexOf(id) === k);
  const request = { ...faulted.request, open: [...(faulted.request.open ?? []), ...fusesGone] };
  return { ok: true, job, request, solution: last.solution, fusesGone };
}

/** What is wrong with a fault on this machine, for whoever sets it; null where it can be solved. */
export function triedMachine(machine: ExerciseMachine): readonly Refusal[] | null {
  const faulted = withFaults(machine.job, machine.request, machine.faults);
  if (!faulted.ok) return faulted.refusals;
  const operated = operateJob(faulted.job, machine.conductors, faulted.request);
  return operated.ok ? null : operated.refusals;
}

/** What is refused is said of the machine without its fault, so that no refusal names it. */
function soundRefusals(machine: ExerciseMachine, asked: OperateRequest): MachineOperated {
  const sound = operateJob(machine.job, machine.conductors, asked);
  return { ok: false, refusals: sound.ok ? [] : sound.refusals };
}
