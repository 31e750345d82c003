import type { Job, PartOf } from "../job/index.ts";
import { pinRef } from "../job/index.ts";
import {
  type CompiledJob,
  compileJob,
  conditionsOf,
  DEAD_SHORT_OHM,
  EARTH,
  type QuickState,
} from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import type { ProspectiveCurrent, ProspectiveKind } from "./timeCurrent.ts";
import { COLD_C } from "./weakShorts.ts";

/** A wire behind the fuse with a state that feeds it. */
export interface FedWire {
  readonly wire: string;
  readonly state: QuickState;
}

/** Solves dead shorts to earth of one job, battery full and battery weak and cold. */
export interface ShortBench {
  readonly job: Job;
  readonly conductors: Conductors;
  readonly full: CompiledJob;
  readonly weak: CompiledJob;
}

export function shortBench(job: Job, conductors: Conductors): ShortBench {
  const at = (request: Parameters<typeof conditionsOf>[1]): CompiledJob =>
    compileJob(job, conductors, { conditions: conditionsOf(job, request) });
  return {
    job,
    conductors,
    full: at({}),
    weak: at({ battery: "weak", ambientC: COLD_C }),
  };
}

/** A short that leaves less than this share of the largest in the fuse is fed past it: it says nothing of the fuse. */
const LEAST_SHARE = 0.05;

/** Largest lasting load, the short at the fuse itself, and the least short among the ends of its wires. */
export function prospectiveCurrents(
  bench: ShortBench,
  fuse: PartOf<"fuse">,
  fed: readonly FedWire[],
  loadA: number,
): readonly ProspectiveCurrent[] {
  const { full, weak, job, conductors } = bench;
  const element = full.jobNetwork.elements.findIndex(
    ({ kind, of }) => kind === "fuse" && of === fuse.id,
  );
  const isKnown = (pin: string): boolean =>
    !pin.endsWith("~") && full.jobNetwork.nodes.indexOf.has(pin);
  const ends = fed.flatMap(({ wire, state }) => {
    const { from, to } = conductors.get(wire)!;
    return [from, to].filter(isKnown).map((pin) => ({ pin, state }));
  });
  const own = fuse.pins.map(({ id }) => pinRef(fuse.id, id)).filter(isKnown);
  const places = [
    ...ends,
    ...own.flatMap((pin) => fed.slice(0, 1).map(({ state }) => ({ pin, state }))),
  ];
  const load: ProspectiveCurrent = { kind: "largest load", currentA: loadA, pin: null };
  if (job.bodies.length === 0 || element < 0) return [load];
  // A machine that comes to no rest under the short (a relay that chases its own coil) shows no current.
  const shortedA = (compiled: CompiledJob, { pin, state }: (typeof places)[number]): number => {
    const solution = compiled.solve({
      ...state,
      short: [{ a: pin, b: EARTH, ohm: DEAD_SHORT_OHM }],
    });
    return solution.converged ? Math.abs(solution.elementA[element]!) : 0;
  };
  const strong = places.map((place) => ({ place, currentA: shortedA(full, place) }));
  const mostA = Math.max(0, ...strong.map(({ currentA }) => currentA));
  const through = strong.filter(({ currentA }) => currentA > LEAST_SHARE * mostA);
  if (through.length === 0) return [load];
  const most = through.reduce((best, one) => (one.currentA > best.currentA ? one : best));
  const least = leastOf(through);
  const weakened = leastOf(
    through
      .map(({ place }) => ({ place, currentA: shortedA(weak, place) }))
      .filter(({ currentA }) => currentA > 0),
  );
  return [
    load,
    ...rowOf("short at the fuse", most),
    ...rowOf("least short, battery full", least),
    ...rowOf("least short, battery weak and cold", weakened),
  ].sort((a, b) => a.currentA - b.currentA);
}

interface Shorted {
  readonly place: { readonly pin: string };
  readonly currentA: number;
}

const leastOf = (list: readonly Shorted[]): Shorted | null =>
  list.reduce<Shorted | null>(
    (best, one) => (best === null || one.currentA < best.currentA ? one : best),
    null,
  );

const rowOf = (kind: ProspectiveKind, shorted: Shorted | null): readonly ProspectiveCurrent[] =>
  shorted === null ? [] : [{ kind, currentA: shorted.currentA, pin: shorted.place.pin }];
