import { type Job, pinRef } from "../job/index.ts";
import type { Conductors } from "./conductor.ts";
import { type LoomGraph, loomGraph } from "./loomGraph.ts";
import { placesOfPins } from "./placesOfPins.ts";
import type { Place, Routed } from "./routed.ts";
import { wayFinder } from "./shortestWay.ts";

/** A joint where it lies in the loom, with what is next to it and what it holds. */
export interface JointMark {
  readonly joint: string;
  readonly place: Place | null;
  /** It lies along a run that moves, or at a station where such a run ends. */
  readonly inFlex: boolean;
  /** Nearest other joint, branch or connector along the loom; null where there is none or a length is missing. */
  readonly nearest: {
    readonly kind: "joint" | "branch" | "connector";
    readonly id: string;
    readonly distanceMm: number;
  } | null;
  /** Wires that end on it, sorted. */
  readonly wires: readonly string[];
  /** Copper of all of them together, counted strand by strand, mm². */
  readonly copperMm2: number;
}

/**
 * Every joint with its place, its neighbours along the loom and its copper. A branch is a station where three or more
 * runs with wires in them meet.
 */
export function jointMarks(job: Job, routed: Routed, conductors: Conductors): readonly JointMark[] {
  const graph = loomGraph(job);
  const finder = wayFinder(graph);
  const places = placesOfPins(job);
  const flexRuns = new Set(job.runs.filter(({ flex }) => flex === true).map(({ id }) => id));
  const flexStations = new Set(
    job.runs.filter(({ flex }) => flex === true).flatMap(({ from, to }) => [from, to]),
  );
  const marks = [...jointsOf(job, places), ...connectorsOf(job), ...branchesOf(job, routed)];
  const distance = (a: Place, b: Place): number | null => distanceMm(graph, finder, a, b);
  const nearest = nearestAt(marks, distance);
  const wiresOf = wiresByOwner(job);
  return jointsOf(job, places).map(({ id, place }) => {
    const wires = wiresOf.get(id) ?? [];
    return {
      joint: id,
      place,
      inFlex:
        place !== null &&
        (place.kind === "run" ? flexRuns.has(place.run) : flexStations.has(place.station)),
      nearest: place === null ? null : nearest({ id, place }),
      wires,
      copperMm2: wires.reduce((sum, wire) => sum + (conductors.get(wire)?.areaMm2 ?? 0), 0),
    };
  });
}

interface Mark {
  readonly kind: "joint" | "branch" | "connector";
  readonly id: string;
  readonly place: Place | null;
}

function jointsOf(job: Job, places: ReadonlyMap<string, Place>): readonly Mark[] {
  return job.joints
    .filter(({ status }) => status !== "remove")
    .map(({ id, ways }) => ({
      kind: "joint" as const,
      id,
      place: places.get(pinRef(id, ways[0] ?? "")) ?? null,
    }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

function connectorsOf(job: Job): readonly Mark[] {
  return job.connectors
    .filter(({ status }) => status !== "remove")
    .map(({ id, station }) => ({
      kind: "connector" as const,
      id,
      place: station === undefined ? null : { kind: "station" as const, station },
    }));
}

function branchesOf(job: Job, routed: Routed): readonly Mark[] {
  const used = new Set(routed.stretches.map(({ run }) => run));
  const counts = new Map<string, number>();
  for (const { id, from, to } of job.runs) {
    if (!used.has(id)) continue;
    for (const station of [from, to]) counts.set(station, (counts.get(station) ?? 0) + 1);
  }
  return [...counts]
    .filter(([, count]) => count >= 3)
    .map(([id]) => ({ kind: "branch", id, place: { kind: "station", station: id } }));
}

/** Wires that end on each owner of a pin, sorted. */
function wiresByOwner(job: Job): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  const ownerOf = (pin: string): string => pin.slice(0, pin.indexOf("."));
  for (const { status, id, from, to } of job.wires) {
    if (status === "remove") continue;
    for (const owner of new Set([ownerOf(from), ownerOf(to)])) {
      const wires = found.get(owner) ?? [];
      wires.push(id);
      found.set(owner, wires);
    }
  }
  for (const wires of found.values()) wires.sort();
  return found;
}

/**
 * The nearest other mark of a joint; of equally near ones the first of the list. Places are compared once a pair, not once a
 * pair of marks: many joints lie at one place.
 */
function nearestAt(
  marks: readonly Mark[],
  distance: (a: Place, b: Place) => number | null,
): (joint: { readonly id: string; readonly place: Place }) => JointMark["nearest"] {
  const byPlace = new Map<string, { readonly place: Place; readonly first: Placed[] }>();
  for (const [orderIndex, { kind, id, place }] of marks.entries()) {
    if (place === null) continue;
    const known = byPlace.get(placeKey(place)) ?? { place, first: [] };
    byPlace.set(placeKey(place), known);
    // One of the two is another than the joint asked about.
    if (known.first.length < 2) known.first.push({ kind, id, orderIndex });
  }
  const kept = new Map<string, readonly Near[]>();
  const nearTo = (place: Place): readonly Near[] =>
    [...byPlace.values()].flatMap(({ place: other, first }) => {
      const distanceMm = distance(place, other);
      return distanceMm === null ? [] : first.map((one) => ({ ...one, distanceMm }));
    });
  return ({ id, place }) => {
    const key = placeKey(place);
    const near = kept.get(key) ?? nearTo(place).toSorted(nearer);
    kept.set(key, near);
    const found = near.find((one) => one.kind !== "joint" || one.id !== id);
    return found === undefined
      ? null
      : { kind: found.kind, id: found.id, distanceMm: found.distanceMm };
  };
}

interface Placed extends Pick<Mark, "kind" | "id"> {
  readonly orderIndex: number;
}

interface Near extends Placed {
  readonly distanceMm: number;
}

const nearer = (a: Near, b: Near): number =>
  a.distanceMm - b.distanceMm || a.orderIndex - b.orderIndex;

const placeKey = (place: Place): string =>
  place.kind === "station" ? place.station : `${place.run} ${place.offsetMm}`;

function distanceMm(
  graph: LoomGraph,
  finder: ReturnType<typeof wayFinder>,
  a: Place,
  b: Place,
): number | null {
  const from = graph.vertexOf(a);
  const to = graph.vertexOf(b);
  const way = from === null || to === null ? null : finder.way(from, to);
  if (way === null) return null;
  let sumMm = 0;
  for (const { edge } of way) {
    const lengthMm = graph.edges[edge]?.lengthMm ?? null;
    if (lengthMm === null) return null;
    sumMm += lengthMm;
  }
  return sumMm;
}
