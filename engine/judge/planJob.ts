import { asPlanned, type Job } from "../job/index.ts";
import {
  buildJobNetwork,
  type CompiledJob,
  conditionsOf,
  type JobNetwork,
  withCopper,
} from "../operate/index.ts";
import { type Guard, guardsAtLengths, type Protection, wireGuards } from "../protect/index.ts";
import { type Conductors, conductorsOf, type Routed, routeJob } from "../route/index.ts";
import { type SizedJob, sizeJob } from "../size/index.ts";
import {
  sameLengths,
  sameLoom,
  sameLoomMap,
  samelyLaid,
  sameOhms,
  sameSizingRules,
  sameSwitching,
  sameWiring,
} from "./recheck/sameSlices.ts";
import { sharedWith } from "./recheck/sharedWith.ts";

/** A job with its loom laid out and every wire given a make: what any state of it is solved with. */
export interface Plan {
  /** What will be on the machine. */
  readonly job: Job;
  readonly routed: Routed;
  readonly conductors: Conductors;
  readonly sizing: SizedJob;
  /** Which fuses guard which wire: a matter of what joins what, so that sizing cannot change it. */
  readonly protection: Protection;
  /** Its network, made when first asked for: others of the same joins are made from it. */
  readonly networkOf: () => JobNetwork;
}

/** What of an earlier check a plan is made from. */
export type PlanBefore = Omit<Plan, "networkOf"> & { readonly compiled: CompiledJob };

/**
 * Lays the loom out and sizes what the person left open. Which fuse guards a wire depends on the joins alone and what a
 * wire carries is reckoned from above, so one pass over each settles: route, guards, sizes.
 *
 * @param before  an earlier plan, of this job before an edit: a stage whose inputs did not change is taken from it.
 */
export function planJob(job: Job, before: PlanBefore | null = null): Plan {
  if (before === null) return firstPlan(asPlanned(job));
  const planned = sharedWith(before.job, asPlanned(job));
  const isLaidAlike = sameLoom(before.job, planned);
  const routed = isLaidAlike ? before.routed : routedAfter(before, planned);
  const trial = sharedWith(before.sizing.trial, conductorsOf(planned, routed));
  const isWiredAlike = sameWiring(before.job, planned);
  const isGuardedAlike = isWiredAlike && sameLengths(before.sizing.trial, trial);
  const networkOf = once(() =>
    isWiredAlike
      ? withCopper(before.compiled.jobNetwork, planned, trial, conditionsOf(planned, {}))
      : networkFor(planned, trial),
  );
  const protection = isGuardedAlike
    ? before.protection
    : sharedWith(
        before.protection,
        isWiredAlike
          ? guardsAtLengths(planned, networkOf(), trial, before.protection)
          : wireGuards(planned, networkOf(), trial),
      );
  const isSizedAlike =
    isGuardedAlike &&
    protection === before.protection &&
    routed === before.routed &&
    trial === before.sizing.trial &&
    sameSizingRules(before.job, planned);
  const { rate, currents, asked, sizing: sized } = before.sizing;
  const drawsAlike = isWiredAlike && sameOhms(before.sizing.trial, trial);
  const switchesAlike = sameSwitching(before.job, planned);
  const drawn = switchesAlike ? currents.drawn : [];
  const known = {
    ...{ trial, rate, drawn, asked, networkOf, sizing: sized },
    ...(drawsAlike && { currents }),
  };
  const sizing = isSizedAlike
    ? before.sizing
    : sizeJob(planned, routed, fuseSums(protection), known);
  // Where the sizes come out as they were, ratings in place need not be taken again.
  const conductors = sharedWith(before.conductors, sizing.conductors);
  return { job: planned, routed, conductors, sizing, protection, networkOf };
}

function routedAfter({ job, routed }: PlanBefore, planned: Job): Routed {
  const kept = sameLoomMap(job, planned) ? samelyLaid(job, planned) : [];
  const routes = new Map(kept.map((id) => [id, routed.wires.get(id)!]));
  return sharedWith(routed, routeJob(planned, routes));
}

function firstPlan(job: Job): Plan {
  const routed = routeJob(job);
  const trial = conductorsOf(job, routed);
  const networkOf = once(() => networkFor(job, trial));
  const protection = wireGuards(job, networkOf(), trial);
  const sizing = sizeJob(job, routed, fuseSums(protection), { trial, networkOf });
  return { job, routed, conductors: sizing.conductors, sizing, protection, networkOf };
}

const networkFor = (job: Job, trial: Conductors): JobNetwork =>
  buildJobNetwork(job, trial, { conditions: conditionsOf(job, {}) });

function once<T>(make: () => T): () => T {
  let made: { readonly it: T } | null = null;
  return () => {
    made ??= { it: make() };
    return made.it;
  };
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
