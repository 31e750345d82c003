import { asPlanned, type Job } from "../job/index.ts";
import { buildJobNetwork, conditionsOf } from "../operate/index.ts";
import { type Guard, type Protection, wireGuards } from "../protect/index.ts";
import { type Conductors, conductorsOf, type Routed, routeJob } from "../route/index.ts";
import { type SizedJob, sizeJob } from "../size/index.ts";

/** A job with its loom laid out and every wire given a make: what any state of it is solved with. */
export interface Plan {
  /** What will be on the machine. */
  readonly job: Job;
  readonly routed: Routed;
  readonly conductors: Conductors;
  readonly sizing: SizedJob;
  /** Which fuses guard which wire: a matter of what joins what, so that sizing cannot change it. */
  readonly protection: Protection;
}

/**
 * Lays the loom out and sizes what the person left open. Which fuse guards a wire depends on the joins alone and what a
 * wire carries is reckoned from above, so one pass over each settles: route, guards, sizes.
 */
export function planJob(job: Job): Plan {
  const planned = asPlanned(job);
  const routed = routeJob(planned);
  const unsized = conductorsOf(planned, routed);
  const network = buildJobNetwork(planned, unsized, { conditions: conditionsOf(planned, {}) });
  const protection = wireGuards(planned, network, unsized);
  const sizing = sizeJob(planned, routed, fuseSums(protection));
  return { job: planned, routed, conductors: sizing.conductors, sizing, protection };
}

/** The dearest set of fuses that guards each wire, A; wires that some source reaches without a fuse are left to the judge. */
function fuseSums({ guards }: Protection): ReadonlyMap<string, { readonly sumA: number }> {
  const sums = new Map<string, { readonly sumA: number }>();
  for (const [wire, list] of guards) {
    const cut = list.filter(
      (guard: Guard) => guard.sumA !== null && guard.sourceKind === "battery",
    );
    if (cut.length === 0) continue;
    sums.set(wire, { sumA: Math.max(...cut.map((guard) => guard.sumA ?? 0)) });
  }
  return sums;
}
