import { applyOperation, type Job, swapWireEnds } from "../job/index.ts";
import type { Refusal } from "../messages/index.ts";
import type { OperateRequest } from "./operateResult.ts";
import { EARTH } from "./readState.ts";
import { stateRefusal } from "./stateRefusal.ts";

/** Something broken on purpose. Places are what `open` takes: a wire, a pin, a cavity, a joint's way, an earth point, a bond or a fuse. */
export type SetFault =
  | { readonly kind: "open"; readonly place: string }
  /** A bad contact or a few strands left: so much more resistance in series. */
  | { readonly kind: "corroded"; readonly place: string; readonly ohm: number }
  /** Pin `a` touches pin `b`, or earth. */
  | {
      readonly kind: "short";
      readonly a: string;
      readonly b?: string | undefined;
      readonly ohm: number;
    }
  | { readonly kind: "swapped"; readonly wires: readonly [string, string] };

export type Faulted =
  | { readonly ok: true; readonly job: Job; readonly request: OperateRequest }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/**
 * A request with faults laid over it, and the job with its swapped wires on each other's pins. The job given is left as it is; the wires stay
 * the pieces of copper they were, so the conductors of the job given go with the answer. Two resistances at one place add.
 */
export function withFaults(
  job: Job,
  request: OperateRequest,
  faults: readonly SetFault[],
): Faulted {
  let changed = job;
  const open = [...(request.open ?? [])];
  const short = [...(request.short ?? [])];
  const extraOhm: Record<string, number> = { ...request.extraOhm };
  for (const fault of faults) {
    if (fault.kind === "open") open.push(fault.place);
    if (fault.kind === "short") {
      short.push({ a: fault.a, b: fault.b ?? EARTH, ohm: fault.ohm });
    }
    if (fault.kind === "corroded") {
      extraOhm[fault.place] = (extraOhm[fault.place] ?? 0) + fault.ohm;
    }
    if (fault.kind === "swapped") {
      const done = swapped(changed, fault.wires);
      if (!done.ok) return done;
      changed = done.job;
    }
  }
  return { ok: true, job: changed, request: { ...request, open, short, extraOhm } };
}

function swapped(
  job: Job,
  [one, other]: readonly [string, string],
):
  | { readonly ok: true; readonly job: Job }
  | { readonly ok: false; readonly refusals: readonly Refusal[] } {
  const operation = swapWireEnds(job, one, other);
  if (operation === null) {
    const place = { pointer: "swapped", found: `${one} and ${other}` };
    const wires = job.wires.map(({ id }) => id);
    return { ok: false, refusals: [stateRefusal("state-unknown-place", place, wires)] };
  }
  return applyOperation(job, operation);
}
