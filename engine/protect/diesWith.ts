import type { FeedEdge, FeedGraph } from "./feedGraph.ts";
import type { FeedSource } from "./feedSources.ts";
import type { Reach } from "./wireGuards.ts";

/**
 * Loads that cannot work without a fuse: in no position of any switch does the battery reach them. A relay whose coil dies with the
 * fuse can no longer pull, so what only its contact feeds dies too.
 */
export function diesWith(
  graph: FeedGraph,
  reaches: readonly Reach[],
  reachIn: (graph: FeedGraph, source: FeedSource, root: number) => Reach,
): ReadonlyMap<string, readonly string[]> {
  const battery = reaches.find((one) => one.source.kind === "battery");
  if (battery === undefined) return new Map();
  const direct = new Map<string, Set<string>>();
  for (const { ref, from, to } of graph.loads) {
    for (const fuse of [...battery.fusesOnEveryWay(from), ...battery.fusesOnEveryWay(to)]) {
      direct.set(fuse, (direct.get(fuse) ?? new Set()).add(ref));
    }
  }
  const coils = new Set(graph.loads.flatMap(({ ref, isCoil }) => (isCoil ? [ref] : [])));
  const worked = new Map(
    graph.loads.flatMap(({ ref, relay }) => (relay === null ? [] : [[ref, relay] as const])),
  );
  const dies = new Map<string, readonly string[]>();
  for (const [fuse, refs] of direct) {
    const relays = new Set([...refs].flatMap((ref) => worked.get(ref) ?? []));
    const through =
      relays.size === 0 ? [] : lostThroughRelays(graph, battery, fuse, relays, reachIn);
    const loads = [...refs, ...through].filter((ref) => !coils.has(ref));
    dies.set(fuse, [...new Set(loads)].sort());
  }
  return dies;
}

/** Loads the battery no longer reaches with the fuse gone and its relays released. */
function lostThroughRelays(
  graph: FeedGraph,
  battery: Reach,
  fuse: string,
  relays: ReadonlySet<string>,
  reachIn: (graph: FeedGraph, source: FeedSource, root: number) => Reach,
): readonly string[] {
  const stays = ({ fuse: own, contact }: FeedEdge): boolean =>
    own?.id !== fuse &&
    !(contact !== null && relays.has(contact.controller) && contact.closedIn[0] === "pulled");
  const edges = graph.edges.filter(stays);
  const left: FeedGraph = {
    ...graph,
    edges,
    from: edges.map((edge) => edge.from),
    to: edges.map((edge) => edge.to),
  };
  const after = reachIn(left, battery.source, battery.root);
  const isFed = (one: Reach, node: number): boolean => one.guardOfNode(node, null) !== null;
  return graph.loads
    .filter(({ from, to }) => isFed(battery, from) || isFed(battery, to))
    .filter(({ from, to }) => !isFed(after, from) && !isFed(after, to))
    .map((load) => load.ref);
}
