import type { Job } from "../job/index.ts";
import type { JobNetwork } from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import { feedGraph } from "./feedGraph.ts";
import { returnLoads } from "./returnLoads.ts";
import { unfusedLengths } from "./unfusedLengths.ts";
import { type Guard, type Protection, unfusedOfEdge, wireGuards } from "./wireGuards.ts";

type Reached = readonly (number | null | undefined)[];

/**
 * The guards of a job whose lengths alone differ from those of `before`: which fuses cut what is a matter of the joins, so only the wire
 * before the first fuse is measured again.
 */
export function guardsAtLengths(
  job: Job,
  network: JobNetwork,
  conductors: Conductors,
  before: Protection,
): Protection {
  const { sources } = before;
  const nodeOf = new Map(sources.map(({ id, pin }) => [id, network.nodes.indexOf.get(pin)]));
  if (nodeOf.size !== sources.length) return wireGuards(job, network, conductors);
  const graph = feedGraph(job, network, conductors);
  const edges = new Map(graph.edges.map((edge) => [edge.conductor, edge]));
  const loads = returnLoads(graph);
  const known = new Map<string, Reached>();
  const reachedFrom = (source: string): Reached => {
    const reached = known.get(source) ?? unfusedLengths(graph, nodeOf.get(source)!).beforeFuseMm;
    known.set(source, reached);
    return reached;
  };
  const feedNodes = (conductor: string, { via }: Guard): ReadonlySet<number> =>
    new Set(loads.get(conductor)!.flatMap(({ ref, feedNode }) => (ref === via ? [feedNode] : [])));
  const isOfOneFeed = (conductor: string, guard: Guard): boolean =>
    guard.via === null || feedNodes(conductor, guard).size === 1;
  if (![...before.guards].every(([id, list]) => list.every((guard) => isOfOneFeed(id, guard)))) {
    return wireGuards(job, network, conductors);
  }
  const unfusedMm = (conductor: string, guard: Guard): number | null => {
    const reached = reachedFrom(guard.source);
    if (guard.via === null) {
      const totalA = guard.sumA ?? Number.POSITIVE_INFINITY;
      return unfusedOfEdge(edges.get(conductor)!, { totalA }, reached);
    }
    const [feedNode] = feedNodes(conductor, guard);
    return reached[feedNode!] ?? null;
  };
  const guards = new Map(
    [...before.guards].map(([conductor, list]) => [
      conductor,
      list.map((guard) => ({ ...guard, unfusedMm: unfusedMm(conductor, guard) })),
    ]),
  );
  return { ...before, guards };
}
