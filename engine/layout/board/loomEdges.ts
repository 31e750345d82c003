import type { Job } from "../../job/index.ts";
import { placesOfPins, type Routed, type Stretch } from "../../route/index.ts";
import type { BoardPiece } from "./boardLayout.ts";

/** A piece of loom between two places. */
export interface LoomEdge extends BoardPiece {
  readonly a: string;
  readonly b: string;
  readonly lengthMm: number;
}

/** Everything of one loom that has a length: its stretches of run, and wires somebody typed a length for that lie in no run. */
export function loomEdges(
  job: Job,
  routed: Routed,
  loom: string,
  diameterOf: (wires: readonly string[]) => number,
): readonly LoomEdge[] {
  return [
    ...routed.stretches
      .filter((stretch) => stretch.loom === loom)
      .flatMap((stretch) => edgeOf(job, stretch, diameterOf)),
    ...typedEdges(job, routed, loom, diameterOf),
  ];
}

function edgeOf(
  job: Job,
  stretch: Stretch,
  diameterOf: (wires: readonly string[]) => number,
): LoomEdge[] {
  const { lengthMm, leaveMm, enterMm, wires } = stretch;
  const run = job.runs.find(({ id }) => id === stretch.run)!;
  if (lengthMm === null || leaveMm === null || lengthMm === 0) return [];
  const vertex = (mm: number): string => {
    if (mm === 0) return run.from;
    return mm === run.lengthMm?.value ? run.to : `${run.id}@${mm}`;
  };
  return [
    {
      stretch: stretch.id,
      run: run.id,
      a: vertex(enterMm),
      b: vertex(leaveMm),
      lengthMm,
      fromMm: 0,
      toMm: lengthMm,
      runFromMm: enterMm,
      runToMm: leaveMm,
      diameterMm: diameterOf(wires),
      flex: stretch.flex,
      wires,
    },
  ];
}

/**
 * Wires with a typed length that lie in no run: straight from what holds one end to what holds the other. Those of one
 * length between the same two lie together.
 */
function typedEdges(
  job: Job,
  routed: Routed,
  loom: string,
  diameterOf: (wires: readonly string[]) => number,
): readonly LoomEdge[] {
  const places = placesOfPins(job);
  const vertexOf = (pin: string): string => {
    const place = places.get(pin);
    if (place?.kind === "station") return place.station;
    const owner = pin.slice(0, pin.indexOf("."));
    return job.bodies.some(({ id }) => id === owner) ? pin : owner;
  };
  const groups = new Map<string, { a: string; b: string; lengthMm: number; wires: string[] }>();
  for (const { id, from, to } of job.wires) {
    const route = routed.wires.get(id);
    if (route?.loom !== loom || route.status === "remove" || route.how !== "typed") continue;
    const [a, b] = [vertexOf(from), vertexOf(to)].sort() as [string, string];
    if (route.steps.length > 0 || route.lengthMm === null || a === b) continue;
    const key = `${a} ${b} ${route.lengthMm}`;
    const group = groups.get(key) ?? { a, b, lengthMm: route.lengthMm, wires: [] };
    group.wires.push(id);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ a, b, lengthMm, wires }) => ({
    stretch: `${loom}/${wires[0]}`,
    run: `${loom}/${wires[0]}`,
    a,
    b,
    lengthMm,
    fromMm: 0,
    toMm: lengthMm,
    runFromMm: 0,
    runToMm: lengthMm,
    diameterMm: diameterOf(wires),
    flex: false,
    wires,
  }));
}
