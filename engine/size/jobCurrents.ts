import type { Job } from "../job/index.ts";
import { independentJobs, type JobNetwork } from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import {
  type DesignCurrent,
  type DesignCurrents,
  type DrawnByGroup,
  designCurrents,
} from "./designCurrents.ts";
import type { DesignState } from "./designStates.ts";

type Found = ReadonlyMap<string, DesignCurrent>;

/**
 * Design currents of a whole job, group by group where only the supply joins them: design volts hardly depend on what other
 * groups draw, and without the others they are if anything higher. What the groups have in common carries the sum of the
 * most each of them draws through it.
 *
 * @param before     what was found group by group of the same switches, states and joins.
 * @param networkOf  the network of the whole, where there is one: see withCopper.
 */
export function jobCurrents(
  job: Job,
  conductors: Conductors,
  before: readonly DrawnByGroup[] = [],
  networkOf: (() => JobNetwork) | null = null,
): DesignCurrents {
  const { jobs, common } = independentJobs(job);
  if (jobs.length === 1) {
    return designCurrents(job, conductors, before[0], networkOf?.());
  }
  const found = jobs.map((one, i) => designCurrents(one, conductors, before[i]));
  const largest = (mapOf: (one: DesignCurrents) => Found): Map<string, DesignCurrent> => {
    const all = new Map<string, DesignCurrent>();
    for (const [wire, current] of found.flatMap((one) => [...mapOf(one)])) {
      if ((all.get(wire)?.currentA ?? -1) < current.currentA) all.set(wire, current);
    }
    return all;
  };
  const continuous = largest((one) => one.continuous);
  for (const wire of common) {
    const shares = found.flatMap((one) => one.continuous.get(wire) ?? []);
    if (shares.length > 0) continuous.set(wire, together(shares));
  }
  return {
    continuous,
    calm: largest((one) => one.calm),
    cranking: largest((one) => one.cranking),
    ways: found.flatMap((one) => one.ways),
    drawn: found.flatMap((one) => one.drawn),
  };
}

/** Every group in its own worst state at once. */
function together(shares: readonly DesignCurrent[]): DesignCurrent {
  const currentA = shares.reduce((sum, one) => sum + one.currentA, 0);
  const states = shares.flatMap(({ state }) => state ?? []);
  const first = states[0];
  if (first === undefined) return { currentA, state: null };
  const state: DesignState = {
    ...first,
    positions: Object.assign({}, ...states.map(({ positions }) => positions)),
    flash: states.some(({ flash }) => flash === "on") ? "on" : "off",
  };
  return { currentA, state };
}
