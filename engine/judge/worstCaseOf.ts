import { type Job, presentParts } from "../job/index.ts";
import { type CompiledJob, compileJob, independentJobs } from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import { type CurrentTally, currentsOf } from "./currentTally.ts";
import { fuseLoads } from "./fuseLoads.ts";
import { type GroupSearch, groupSearch } from "./groupSearch.ts";
import { joinedGroups } from "./joinedGroups.ts";
import type { Currents, WorstCase } from "./worstCase.ts";

/**
 * The largest currents and drops of a job. Circuits that only the battery joins are searched by themselves, the others at
 * rest, so that the work grows with the machine and not with the product of its switches; then all of them at once, in states
 * made of their worst ones.
 */
export function worstCaseOf(job: Job, conductors: Conductors, compiled: CompiledJob): WorstCase {
  const volts = chargingV(job);
  const { jobs } = independentJobs(job);
  if (jobs.length === 1) {
    return named(job, compiled, groupSearch(compiled, volts));
  }
  const { conditions } = compiled;
  const groups = jobs.map((one) => {
    const own = compileJob(one, conductors, { conditions });
    return { compiled: own, found: groupSearch(own, volts) };
  });
  return named(job, compiled, joinedGroups(compiled, groups, volts));
}

function named(job: Job, compiled: CompiledJob, search: GroupSearch): WorstCase {
  const { lasting, cranking, met, fullA, chargedA, loads, shorted, complete } = search;
  const of = (tally: CurrentTally, kind: string): Currents =>
    currentsOf(tally, compiled.jobNetwork.elements, kind, (index) => met[index]!);
  const stages = { fullA, chargedA, runningA: lasting.mostA };
  const charged = of(lasting, "fuse");
  return {
    conductors: of(lasting, "wire"),
    crankingConductors: of(cranking, "wire"),
    fuses: fuseLoads(job, compiled, stages, { chargedV: chargingV(job), charged }),
    crankingFuses: of(cranking, "fuse"),
    contacts: of(lasting, "contact"),
    crankingContacts: of(cranking, "contact"),
    joints: of(lasting, "joint"),
    loads,
    shorted,
    stateCount: met.length,
    complete,
  };
}

/** What the regulator is set to, V; null where nothing charges the battery. */
export function chargingV(job: Job): number | null {
  const setsV = presentParts(job).flatMap((part) =>
    part.kind === "regulator" && part.type !== "ac-shunt" ? [part.setV.value] : [],
  );
  return setsV.length === 0 ? null : Math.max(...setsV);
}
