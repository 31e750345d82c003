import type { Wire } from "../job/index.ts";
import type { Figure } from "../tables/index.ts";
import type { LoomGraph } from "./loomGraph.ts";
import type { LengthUnknown, PathStep, Place, WireRoute } from "./routed.ts";
import type { Way, WayFinder } from "./shortestWay.ts";
import { weakestBasis } from "./weakestBasis.ts";

export interface LoomMap {
  readonly graph: LoomGraph;
  readonly finder: WayFinder;
  readonly places: ReadonlyMap<string, Place>;
  /** What a wire between two pins at one place is taken to be, mm. */
  readonly stub: Figure;
  /** Another way whose length is within this share of the shortest is reported, %. */
  readonly tie: Figure;
}

/**
 * The way of one wire: as typed, or the shortest over the measured runs through every station of `via`.
 * A typed length stands even where the runs say otherwise; the way is still found, because the wire lies in the bundle.
 */
export function routeWire(wire: Wire, map: LoomMap): WireRoute {
  const found = findWay(wire, map);
  const edges = found.way.map(({ edge }) => map.graph.edges[edge]!);
  const common = {
    wire: wire.id,
    status: wire.status,
    loom: wire.loom ?? null,
    steps: found.way.map((step) => pathStep(map.graph, step)),
    stations: found.stations,
    flexRuns: [...new Set(edges.filter((edge) => edge.flex).map((edge) => edge.run))],
    otherWay: found.otherWay,
  };
  if (wire.lengthMm !== undefined) {
    const { value: lengthMm, basis } = wire.lengthMm;
    return { ...common, how: "typed", lengthMm, basis, unknown: null };
  }
  if (found.unknown !== null) {
    return { ...common, how: "unknown", lengthMm: null, basis: null, unknown: found.unknown };
  }
  if (found.way.length === 0) {
    const lengthMm = map.stub.value;
    return { ...common, how: "stub", lengthMm, basis: "estimated", unknown: null };
  }
  const lengthMm = edges.reduce((sum, edge) => sum + (edge.lengthMm ?? Number.NaN), 0);
  const basis = weakestBasis(edges.map((edge) => edge.basis ?? "estimated"));
  return { ...common, how: "routed", lengthMm, basis, unknown: null };
}

interface FoundWay {
  readonly way: Way;
  readonly stations: readonly string[];
  readonly unknown: LengthUnknown | null;
  readonly otherWay: WireRoute["otherWay"];
}

function findWay(wire: Wire, map: LoomMap): FoundWay {
  const nowhere = { way: [], stations: [], otherWay: null };
  const unplaced = [wire.from, wire.to].filter((pin) => !map.places.has(pin));
  if (unplaced.length > 0) {
    return { ...nowhere, unknown: { reason: "no-station", pins: unplaced } };
  }
  const stops: readonly Place[] = [
    map.places.get(wire.from)!,
    ...(wire.via ?? []).map((station): Place => ({ kind: "station", station })),
    map.places.get(wire.to)!,
  ];
  const vertices = stops.map((place) => map.graph.vertexOf(place));
  const legs: Way[] = [];
  for (const [i, to] of vertices.entries()) {
    if (i === 0) continue;
    const from = vertices[i - 1] ?? null;
    const leg = from === null || to === null ? null : map.finder.way(from, to);
    if (leg === null) {
      const ends: [string, string] = [placeName(stops[i - 1]!), placeName(stops[i]!)];
      return { ...nowhere, unknown: { reason: "no-way", stations: ends } };
    }
    legs.push(leg);
  }
  const way = legs.flat();
  const first = vertices[0] as number;
  return {
    way,
    stations: stationsAlong(map.graph, first, way),
    unknown: unmeasured(map.graph, way),
    otherWay: stops.length > 2 ? null : closeOtherWay(map, first, vertices[1] as number, way),
  };
}

const placeName = (place: Place): string =>
  place.kind === "station" ? place.station : `${place.run} at ${place.offsetMm} mm`;

function unmeasured(graph: LoomGraph, way: Way): LengthUnknown | null {
  const runs = way
    .map(({ edge }) => graph.edges[edge]!)
    .filter((edge) => edge.lengthMm === null)
    .map((edge) => edge.run);
  return runs.length === 0 ? null : { reason: "run-not-measured", runs: [...new Set(runs)].sort() };
}

function stationsAlong(graph: LoomGraph, first: number, way: Way): readonly string[] {
  const vertices = [first];
  for (const { edge, forward } of way) {
    const { a, b } = graph.edges[edge]!;
    vertices.push(forward ? b : a);
  }
  return vertices.map((vertex) => graph.stationOf[vertex] ?? null).filter((one) => one !== null);
}

/** Null unless both ways are measured throughout and differ by no more than the stated share. */
function closeOtherWay(map: LoomMap, from: number, to: number, way: Way): WireRoute["otherWay"] {
  const other = map.finder.otherWay(from, to);
  if (other === null) return null;
  const lengthMm = knownLengthMm(map.graph, other);
  const shortestMm = knownLengthMm(map.graph, way);
  if (lengthMm === null || shortestMm === null) return null;
  if (lengthMm > shortestMm * (1 + map.tie.value / 100)) return null;
  return { lengthMm, runs: other.map(({ edge }) => map.graph.edges[edge]!.run) };
}

function knownLengthMm(graph: LoomGraph, way: Way): number | null {
  let sumMm = 0;
  for (const { edge } of way) {
    const lengthMm = graph.edges[edge]?.lengthMm ?? null;
    if (lengthMm === null) return null;
    sumMm += lengthMm;
  }
  return sumMm;
}

function pathStep(graph: LoomGraph, { edge, forward }: Way[number]): PathStep {
  const { run, enterMm, leaveMm, lengthMm } = graph.edges[edge]!;
  return forward
    ? { run, enterMm, leaveMm, lengthMm }
    : { run, enterMm: leaveMm, leaveMm: enterMm, lengthMm };
}
