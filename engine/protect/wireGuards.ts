import { type BlockCutTree, blockCutTree } from "../geometry/index.ts";
import type { Job } from "../job/index.ts";
import { currentNets, type JobNetwork } from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import { type BlockCut, blockCut, blocksAbove } from "./blockCuts.ts";
import { diesWith } from "./diesWith.ts";
import { type FeedEdge, type FeedGraph, feedGraph } from "./feedGraph.ts";
import { type FeedSource, feedSources } from "./feedSources.ts";
import { returnLoads } from "./returnLoads.ts";
import { unfusedLengths } from "./unfusedLengths.ts";

/** One source that can feed a wire, in the position in which the least stands between them. */
export interface Guard {
  readonly source: string;
  readonly sourceKind: FeedSource["kind"];
  readonly ceilingA: number | null;
  /** Smallest set of fuses that cuts every path; empty where none does. */
  readonly cut: readonly string[];
  /** What the set carries together, A (highest reading of each mark); null where nothing cuts. */
  readonly sumA: number | null;
  readonly positions: Readonly<Record<string, string>>;
  readonly pathCount: number;
  readonly unfusedMm: number | null;
  /** For a return wire: the load that would have to fail short for the source to reach it. Null: it is fed directly. */
  readonly via: string | null;
}

/** Guards of every wire and fly lead, and what dies with each fuse. */
export interface Protection {
  readonly guards: ReadonlyMap<string, readonly Guard[]>;
  /** Loads that cannot work without a fuse, by fuse id: it stands on every way from the battery to them. */
  readonly dies: ReadonlyMap<string, readonly string[]>;
  /** What can feed a short: live posts, live ends of windings, outputs, capacitors. */
  /** Fuses that every feed of a fuse has passed before it, by fuse id: what stands in series with it towards the battery. */
  readonly behind: ReadonlyMap<string, readonly string[]>;
  readonly sources: readonly FeedSource[];
}

type NodeCut = Pick<BlockCut, "totalA" | "fuses" | "positions" | "pathCount">;

/**
 * For every wire and every source: the minimum cut of fuses over all paths, in the worst position of the switches on those paths.
 * Every path runs through the same chain of blocks (parts of the graph no single node separates), so the cut of the whole is the
 * cheapest cut of any block of the chain; the dearest position is taken block by block, which can only overstate the sum.
 *
 * @source cut sets: minimum cut with the fuse rating as weight; diodes directed, open contacts absent, loads no path.
 */
export function wireGuards(job: Job, network: JobNetwork, conductors: Conductors): Protection {
  const graph = feedGraph(job, network, conductors);
  // The earthed end of a winding feeds nothing: it is where the current comes home. Earthed is what copper alone joins to the
  // bodies: a winding that a switch can earth feeds what it reaches while that switch is open.
  const { earthed } = currentNets(network);
  const sources = feedSources(job).filter(
    ({ kind, pin }) => kind !== "generator" || !earthed.has(pin),
  );
  const nodeOf = (name: string): number => network.nodes.indexOf.get(name) ?? -1;
  const reaches = sources
    .map((source) => ({ source, root: nodeOf(source.pin) }))
    .filter(({ root }) => root >= 0)
    .map(({ source, root }) => reach(job, graph, source, root));
  const guards = new Map<string, Guard[]>();
  for (const edge of graph.edges) {
    if (edge.conductor === null) continue;
    guards.set(
      edge.conductor,
      reaches.flatMap((one) => one.guardOfEdge(edge) ?? []),
    );
  }
  for (const [conductor, loads] of returnLoads(graph)) {
    const list = guards.get(conductor);
    if (list === undefined || list.some((guard) => guard.sourceKind === "battery")) continue;
    list.push(...reaches.flatMap((one) => worstThroughLoad(one, loads) ?? []));
  }
  return {
    guards,
    dies: diesWith(graph, reaches, (left, source, root) => reach(job, left, source, root)),
    behind: fusesBehind(graph, reaches),
    sources,
  };
}

export interface Reach {
  readonly root: number;
  readonly source: FeedSource;
  guardOfEdge(edge: FeedEdge): Guard | null;
  guardOfNode(node: number, via: string | null): Guard | null;
  /** Fuses without which nothing reaches a node in any position. */
  fusesOnEveryWay(node: number): readonly string[];
}

function reach(job: Job, graph: FeedGraph, source: FeedSource, root: number): Reach {
  const tree = blockCutTree(graph, root);
  const lengths = unfusedLengths(graph, root);
  const indexOf = new Map(graph.edges.map((edge, index) => [edge, index]));
  const known = new Map<string, NodeCut>();
  const alone = new Map<string, readonly string[]>();
  const crossing = (block: number, exit: number): NodeCut => {
    const key = `${block} ${exit}`;
    const cut =
      known.get(key) ??
      blockCut(job, graph, tree.blocks[block]!, tree.entryOfBlock[block]!, [exit], null);
    known.set(key, cut);
    return cut;
  };
  const cutOfNode = (node: number, first: NodeCut | null): NodeCut | null => {
    let best = first;
    for (const { block, exit } of blocksAbove(tree, node)) {
      const cut = crossing(block, exit);
      if (best === null || cut.totalA < best.totalA)
        best = { ...cut, pathCount: best?.pathCount ?? cut.pathCount };
    }
    return best;
  };
  return {
    source,
    root,
    guardOfEdge: (edge) => {
      const index = indexOf.get(edge)!;
      const block = tree.blockOfEdge[index]!;
      if (block === -1) return null;
      const entry = tree.entryOfBlock[block]!;
      const own = blockCut(job, graph, tree.blocks[block]!, entry, [edge.from, edge.to], index);
      const cut = own.totalA === 0 ? null : cutOfNode(entry, own);
      return guardFrom(source, cut, unfusedOfEdge(edge, cut, lengths.beforeFuseMm), null);
    },
    guardOfNode: (node, via) =>
      node === root || tree.blockAboveNode[node] === -1
        ? null
        : guardFrom(source, cutOfNode(node, null), lengths.beforeFuseMm[node] ?? null, via),
    fusesOnEveryWay: (node) =>
      blocksAbove(tree, node).flatMap(({ block, exit }) => {
        const key = `${block} ${exit}`;
        const found = alone.get(key) ?? fusesAlone(job, graph, tree, block, exit);
        alone.set(key, found);
        return found;
      }),
  };
}

/** Fuses of a block whose loss parts entry from exit in every position. */
function fusesAlone(
  job: Job,
  graph: FeedGraph,
  tree: BlockCutTree,
  block: number,
  exit: number,
): readonly string[] {
  const edges = tree.blocks[block]!;
  return edges.flatMap((edge) => {
    const { fuse } = graph.edges[edge]!;
    if (fuse === null) return [];
    const left = blockCut(job, graph, edges, tree.entryOfBlock[block]!, [exit], edge);
    return left.totalA === 0 ? [fuse.id] : [];
  });
}

function guardFrom(
  source: FeedSource,
  cut: NodeCut | null,
  unfusedMm: number | null,
  via: string | null,
): Guard | null {
  if (cut === null || cut.totalA === 0) return null;
  const isCut = cut.totalA !== Infinity;
  return {
    source: source.id,
    sourceKind: source.kind,
    ceilingA: source.ceilingA,
    cut: isCut ? cut.fuses : [],
    sumA: isCut ? cut.totalA : null,
    positions: cut.positions,
    pathCount: Math.max(1, cut.pathCount),
    unfusedMm,
    via,
  };
}

/** Wire before the first fuse; for an unfused wire, its own length with what leads to it. */
export function unfusedOfEdge(
  edge: FeedEdge,
  cut: Pick<NodeCut, "totalA"> | null,
  beforeFuseMm: readonly (number | null | undefined)[],
): number | null {
  const ends = [beforeFuseMm[edge.from], beforeFuseMm[edge.to]].filter((mm) => mm !== undefined);
  if (ends.length === 0 || ends.some((mm) => mm === null)) return null;
  const nearestMm = Math.min(...(ends as number[]));
  if (cut?.totalA !== Infinity) return nearestMm;
  return edge.lengthMm === null ? null : nearestMm + edge.lengthMm;
}

/** One load failing short at a time: the one whose feed lets the most through. */
function worstThroughLoad(
  reachOf: Reach,
  loads: readonly { readonly ref: string; readonly feedNode: number }[],
): Guard | null {
  if (reachOf.source.kind !== "battery") return null;
  let worst: Guard | null = null;
  for (const { ref, feedNode } of loads) {
    const guard = reachOf.guardOfNode(feedNode, ref);
    if (guard !== null && (worst === null || (guard.sumA ?? Infinity) > (worst.sumA ?? Infinity)))
      worst = guard;
  }
  return worst;
}

/** For each fuse the fuses on every way from the battery to its nearer end. */
function fusesBehind(
  graph: FeedGraph,
  reaches: readonly Reach[],
): ReadonlyMap<string, readonly string[]> {
  const battery = reaches.find((one) => one.source.kind === "battery");
  if (battery === undefined) return new Map();
  return new Map(
    graph.edges.flatMap(({ fuse, from, to }): [string, readonly string[]][] => {
      if (fuse === null) return [];
      const ends = [from, to].map((node) => battery.fusesOnEveryWay(node));
      const behind = ends[0]!.filter((id) => id !== fuse.id && ends[1]!.includes(id));
      return [[fuse.id, [...new Set(behind)].sort()]];
    }),
  );
}
