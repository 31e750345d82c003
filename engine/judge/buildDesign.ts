import { type Job, pinsOf, presentWires, type Wire } from "../job/index.ts";
import { compileJob, conditionsOf } from "../operate/index.ts";
import { endFittings } from "../size/index.ts";
import { declaredResults } from "./declaredResults.ts";
import { fuseFacts } from "./fuseFacts.ts";
import type { Design } from "./judge.ts";
import { loadRowsOf } from "./loadRowsOf.ts";
import { placedRatings } from "./placedRatings.ts";
import type { Plan } from "./planJob.ts";
import { worstCaseOf } from "./worstCaseOf.ts";

/** Everything the judges read, computed once: worst currents and drops, declared states, ratings in place. */
export function buildDesign({ job, routed, conductors, sizing, protection }: Plan): Design {
  const compiled = compileJob(job, conductors, { conditions: conditionsOf(job, {}) });
  const worst = worstCaseOf(job, conductors, compiled);
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
    compiled,
    worst,
    declared: declaredResults(compiled),
    protection,
    ratings: placedRatings(job, routed, conductors, worst),
    loads: loadRowsOf(job, worst, wiresAt, isMeasured),
    pins: pinsOf(job),
    fittings: endFittings(job, conductors),
    wiresAt,
  };
  return { ...design, fuses: fuseFacts(design) };
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
