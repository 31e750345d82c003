import type { Basis, Job, Run } from "../job/index.ts";
import type { Place } from "./routed.ts";
import { weakestBasis } from "./weakestBasis.ts";

/** A piece of run between two neighbouring places: whole, or cut where a joint lies along it. */
export interface LoomEdge {
  readonly run: string;
  readonly a: number;
  readonly b: number;
  /** Position of `a` along the run, mm from its `from` station. */
  readonly enterMm: number;
  /** Position of `b`; null at the far end of a run nobody measured. */
  readonly leaveMm: number | null;
  readonly lengthMm: number | null;
  readonly basis: Basis | null;
  readonly flex: boolean;
}

/** The loom's paths as vertices (stations, and places along runs) and edges (pieces of run). */
export interface LoomGraph {
  readonly vertexCount: number;
  readonly edges: readonly LoomEdge[];
  /** Station of a vertex; null for a place along a run. */
  readonly stationOf: readonly (string | null)[];
  /** Null for a place the graph does not have: a joint beyond the end of its run. */
  vertexOf(place: Place): number | null;
}

/** Builds the graph. A joint placed beyond the measured end of its run gets no vertex: what leads to it has no length. */
export function loomGraph(job: Job): LoomGraph {
  const vertices = new Map<string, number>();
  const stationOf: (string | null)[] = [];
  const add = (key: string, station: string | null): number => {
    const known = vertices.get(key);
    if (known !== undefined) return known;
    vertices.set(key, stationOf.length);
    stationOf.push(station);
    return stationOf.length - 1;
  };
  for (const station of job.stations) add(`station ${station.id}`, station.id);
  const offsets = offsetsByRun(job);
  const edges = job.runs.flatMap((run) => edgesOfRun(run, offsets.get(run.id) ?? [], add));
  const runs = new Map(job.runs.map((run) => [run.id, run]));
  const keyOf = (place: Place): string => {
    if (place.kind === "station") return `station ${place.station}`;
    const run = runs.get(place.run);
    return run?.lengthMm?.value === place.offsetMm
      ? `station ${run.to}`
      : placeKey(place.run, place.offsetMm);
  };
  return {
    vertexCount: stationOf.length,
    edges,
    stationOf,
    vertexOf: (place) => vertices.get(keyOf(place)) ?? null,
  };
}

const placeKey = (run: string, offsetMm: number): string => `run ${run} ${offsetMm}`;

interface Mark {
  readonly atMm: number;
  readonly basis: Basis;
}

/** Places of joints along each run, in order, each once. */
function offsetsByRun(job: Job): ReadonlyMap<string, readonly Mark[]> {
  const byRun = new Map<string, Map<number, Mark>>();
  for (const { offset } of job.joints) {
    if (offset === undefined) continue;
    const known = byRun.get(offset.run) ?? new Map<number, Mark>();
    const { value: atMm, basis } = offset.mm;
    known.set(atMm, { atMm, basis: weakestBasis([basis, known.get(atMm)?.basis ?? basis]) });
    byRun.set(offset.run, known);
  }
  return new Map(
    [...byRun].map(([run, marks]) => [run, [...marks.values()].sort((a, b) => a.atMm - b.atMm)]),
  );
}

function edgesOfRun(
  run: Run,
  offsets: readonly Mark[],
  add: (key: string, station: string | null) => number,
): LoomEdge[] {
  const endMm = run.lengthMm?.value ?? null;
  const endBasis = run.lengthMm?.basis ?? null;
  const inside = offsets.filter(({ atMm }) => endMm === null || atMm < endMm);
  const marks = [
    ...inside.map((mark) => ({ ...mark, vertex: add(placeKey(run.id, mark.atMm), null) })),
    { vertex: add(`station ${run.to}`, run.to), atMm: endMm, basis: endBasis },
  ];
  let a = add(`station ${run.from}`, run.from);
  let enterMm = 0;
  let enterBasis: Basis = "measured";
  const edges: LoomEdge[] = [];
  for (const { vertex: b, atMm: leaveMm, basis } of marks) {
    edges.push({
      run: run.id,
      a,
      b,
      enterMm,
      leaveMm,
      lengthMm: leaveMm === null ? null : leaveMm - enterMm,
      basis: basis === null ? null : weakestBasis([enterBasis, basis]),
      flex: run.flex ?? false,
    });
    if (leaveMm === null || basis === null) break;
    a = b;
    enterMm = leaveMm;
    enterBasis = basis;
  }
  return edges;
}
