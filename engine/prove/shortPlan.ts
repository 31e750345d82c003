import type { CompiledJob } from "../operate/index.ts";
import { allTables } from "../tables/index.ts";
import { fusesOf } from "./allWires.ts";
import type { ProofPlan } from "./proofPlan.ts";

/** Every short that is screened: node pairs, resistances, and the branches watched. */
export interface ShortPlan {
  readonly pairs: readonly (readonly [number, number])[];
  readonly toEarthCount: number;
  readonly toNeighbourCount: number;
  readonly shortOhm: readonly number[];
  /** Elements of fuses and of the battery. */
  readonly watched: readonly number[];
  readonly fuseIds: readonly string[];
}

const DEAD_OHM = 0.001;
/** Multiples of each fuse's rating the resistive shorts are aimed at: the sustained overload, not the dead short, is what burns. */
const MULTIPLES = [1.1, 6] as const;
/** Each resistance is at most this much over the one before: four or more in the range of every fuse. */
const LARGEST_STEP_RATIO = 1.6;

/** Both ends of every conductor (joints' ways and connectors' halves are ends of conductors too) to earth and to its neighbours. */
export function shortPlan({ input, solver }: ProofPlan): ShortPlan {
  const { conductors, routed, job } = input;
  const { jobNetwork } = solver.compiled;
  const node = (name: string): number => jobNetwork.nodes.indexOf.get(name)!;
  const ends = (id: string): readonly number[] => {
    const { from, to } = conductors.get(id)!;
    return [node(from), node(to)];
  };
  const earth = jobNetwork.earth === null ? 0 : node(jobNetwork.earth);
  const pairs = new Map<string, readonly [number, number]>();
  const add = (a: number, b: number): void => {
    if (a !== b) pairs.set(a < b ? `${a} ${b}` : `${b} ${a}`, a < b ? [a, b] : [b, a]);
  };
  for (const id of conductors.keys()) for (const end of ends(id)) add(end, earth);
  const toEarthCount = pairs.size;
  for (const { wires } of routed.stretches) {
    wires.forEach((one, i) => {
      for (const other of wires.slice(i + 1)) {
        for (const a of ends(one)) for (const b of ends(other)) add(a, b);
      }
    });
  }
  const fuses = fusesOf(job);
  const watched = jobNetwork.elements.flatMap(({ kind }, k) =>
    kind === "fuse" || kind === "emf" ? [k] : [],
  );
  const sorted = [...pairs.values()].sort(([a, b], [c, d]) => a - c || b - d);
  return {
    pairs: sorted,
    toEarthCount,
    toNeighbourCount: sorted.length - toEarthCount,
    shortOhm: resistances(
      solver.compiled,
      [...fuses.values()].map(({ ratingA }) => ratingA),
    ),
    watched,
    fuseIds: watched.map((k) =>
      jobNetwork.elements[k]!.kind === "fuse" ? jobNetwork.elements[k]!.of : "",
    ),
  };
}

/** Dead, and a row of resistances, each so much over the one before, from what lets the largest multiple of the largest rating flow at nominal volts to the smallest of the smallest. */
function resistances({ job }: CompiledJob, ratingsA: readonly number[]): readonly number[] {
  const known =
    ratingsA.length > 0 ? ratingsA : allTables.fuseStandardRatings.rows.map((row) => row.ratedA);
  const { nominalV } = job.supply;
  const leastOhm = nominalV / (Math.max(...MULTIPLES) * Math.max(...known));
  const mostOhm = nominalV / (Math.min(...MULTIPLES) * Math.min(...known));
  const stepCount = Math.ceil(Math.log(mostOhm / leastOhm) / Math.log(LARGEST_STEP_RATIO));
  const rising = Array.from(
    { length: stepCount + 1 },
    (_, k) => leastOhm * (mostOhm / leastOhm) ** (k / stepCount),
  );
  return [DEAD_OHM, ...rising];
}
