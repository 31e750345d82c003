import { type Job, loadsOf, pinsOf, presentWires, type Wire } from "../job/index.ts";
import { compileJob, conditionsOf, onSameNetwork, remembering } from "../operate/index.ts";
import { endFittings } from "../size/index.ts";
import { declaredResults } from "./declaredResults.ts";
import { fuseFacts } from "./fuseFacts.ts";
import type { Design } from "./judge.ts";
import { loadRowsOf } from "./loadRowsOf.ts";
import { placedRatings } from "./placedRatings.ts";
import type { Plan } from "./planJob.ts";
import { sameOhms, sameSwitching, sameWiring } from "./recheck/sameSlices.ts";
import { sharedWith } from "./recheck/sharedWith.ts";
import type { WorstCase } from "./worstCase.ts";
import { worstCaseOf } from "./worstCaseOf.ts";

/**
 * Everything the judges read, computed once: worst currents and drops, declared states, ratings in place.
 *
 * @param before  an earlier design, of this job before an edit: what its inputs do not change is taken from it.
 */
export function buildDesign(plan: Plan, before: Design | null = null): Design {
  const { job, routed, conductors, sizing, protection } = plan;
  const solved = solvedFor(plan, before);
  const { compiled, worst } = solved;
  const wiresAt = wiresByPin(job);
  const { elements } = compiled.jobNetwork;
  const isMeasured = (elementIndex: number): boolean => {
    const { kind, of } = elements[elementIndex]!;
    return kind !== "wire" || conductors.get(of)?.lengthMm !== null;
  };
  const design = {
    job,
    routed,
    conductors,
    sizing,
    ...solved,
    protection,
    ratings: ratingsFor(plan, worst, before),
    loads: loadRowsOf(job, worst, wiresAt, isMeasured),
    pins: pinsOf(job),
    fittings: endFittings(job, conductors),
    wiresAt,
  };
  return { ...design, fuses: fuseFacts(design) };
}

/** True where both designs stand on one network: no solve can tell them apart. */
export const onOneNetwork = (before: Design, after: Design): boolean =>
  before.compiled.compiledNetwork === after.compiled.compiledNetwork;

type Solved = Pick<Design, "compiled" | "worst" | "declared">;

function solvedFor({ job, conductors, sizing, networkOf }: Plan, before: Design | null): Solved {
  const isAlike =
    before !== null && sameWiring(before.job, job) && sameOhms(before.conductors, conductors);
  if (isAlike) {
    const compiled = onSameNetwork(before.compiled, job, conductors);
    return { compiled, worst: worstOfLoads(job, before.worst), declared: before.declared };
  }
  const like = sizing.currents.drawn[0]?.charging.order ?? null;
  const conditions = conditionsOf(job, {});
  const known = before !== null && sameSwitching(before.job, job) ? before.compiled : null;
  const compiled = remembering(
    compileJob(job, conductors, { conditions, like, base: networkOf() }),
    known,
  );
  const worst = worstCaseOf(job, conductors, compiled);
  return { compiled, worst, declared: declaredResults(compiled) };
}

/** What was found of the loads, told of the same loads as the job now describes them. */
function worstOfLoads(job: Job, worst: WorstCase): WorstCase {
  const loadOf = new Map(loadsOf(job).map((load) => [load.ref, load]));
  const loads = new Map(
    [...worst.loads].map(([ref, seen]) => [ref, { ...seen, load: loadOf.get(ref)! }]),
  );
  return sharedWith(worst, { ...worst, loads });
}

function ratingsFor(
  { job, routed, conductors, sizing }: Plan,
  worst: WorstCase,
  before: Design | null,
): Design["ratings"] {
  const isAlike =
    before !== null &&
    routed === before.routed &&
    conductors === before.conductors &&
    worst.conductors === before.worst.conductors &&
    job.looms === before.job.looms &&
    job.runs === before.job.runs;
  return isAlike ? before.ratings : placedRatings(job, routed, conductors, worst, sizing.rate);
}

function wiresByPin(job: Job): ReadonlyMap<string, readonly Wire[]> {
  const found = new Map<string, Wire[]>();
  for (const wire of presentWires(job)) {
    for (const pin of new Set([wire.from, wire.to])) {
      const wires = found.get(pin) ?? [];
      wires.push(wire);
      found.set(pin, wires);
    }
  }
  return found;
}
