import type { Job } from "../../job/index.ts";
import type { Routed } from "../../route/index.ts";
import type { BoardPiece } from "./boardLayout.ts";
import { type LoomEdge, loomEdges } from "./loomEdges.ts";

/** A limb before it is laid: from one end or breakout to the next. */
export interface TreeLimb {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly lengthMm: number;
  readonly pieces: readonly BoardPiece[];
  /** Vertices passed between, with how far along they are. */
  readonly passed: readonly { readonly vertex: string; readonly atMm: number }[];
  /** Vertex its far end would meet where it was taken out of a loop. */
  readonly meets: string | null;
}

/** One connected part of a loom, limbs in order from its root. */
export interface LoomTree {
  readonly root: string;
  readonly limbs: readonly TreeLimb[];
}

export interface LoomTrees {
  readonly trees: readonly LoomTree[];
  readonly brokenLoops: readonly string[];
  readonly unmeasured: readonly string[];
}

/**
 * The stretches of one loom as trees. Loops are opened at the piece with the fewest wires; what nobody has measured is
 * left out and named.
 *
 * @param loom        id of the loom.
 * @param diameterOf  outside diameter of a bundle as laid, mm.
 */
export function loomTrees(
  job: Job,
  routed: Routed,
  loom: string,
  diameterOf: (wires: readonly string[]) => number,
): LoomTrees {
  const own = routed.stretches.filter((stretch) => stretch.loom === loom);
  const edges = loomEdges(job, routed, loom, diameterOf);
  const unmeasured = own.filter(({ lengthMm }) => lengthMm === null).map(({ id }) => id);
  const kept = new Set<string>();
  const trees: LoomTree[] = [];
  const met = new Set<string>();
  const broken: LoomEdge[] = [];
  const vertices = [...new Set(edges.flatMap(({ a, b }) => [a, b]))].sort();
  const rank = rankOf(job, edges);
  const roots = [...vertices].sort((p, q) => rank(p) - rank(q) || (p < q ? -1 : 1));
  for (const root of roots) {
    if (met.has(root)) continue;
    const spanned = spanning(edges, root, met);
    for (const { stretch } of spanned.kept) kept.add(stretch);
    broken.push(...spanned.broken);
    trees.push({ root, limbs: collapsed(job, spanned, root) });
  }
  return { trees, brokenLoops: broken.map(({ run }) => run), unmeasured };
}

/** Front first: the datum is the foremost place, a busy one before a bare end beside it. */
function rankOf(job: Job, edges: readonly LoomEdge[]): (vertex: string) => number {
  const side = job.layout.side ?? {};
  const order = new Map(job.stations.map(({ id }, i) => [id, i]));
  const busy = new Map<string, number>();
  for (const { a, b } of edges) {
    for (const vertex of [a, b]) busy.set(vertex, (busy.get(vertex) ?? 0) + 1);
  }
  return (vertex) => {
    if (!order.has(vertex)) return vertex.includes("@") ? 3e6 : 2e6 + (busy.get(vertex) ?? 0);
    const xMm = side[vertex]?.xMm;
    return xMm === undefined
      ? 1e6 + order.get(vertex)!
      : xMm - BUSY_MM * Math.min(4, busy.get(vertex) ?? 0);
  };
}

/** A breakout is taken as the datum before an end that is so much further forward, each limb of it. */
const BUSY_MM = 40;

interface Spanned {
  readonly kept: readonly LoomEdge[];
  readonly broken: readonly LoomEdge[];
}

/** Thickest first from the root: a loop loses its thinnest piece. */
function spanning(edges: readonly LoomEdge[], root: string, met: Set<string>): Spanned {
  met.add(root);
  const here = new Set([root]);
  const kept: LoomEdge[] = [];
  const inTree = new Set<LoomEdge>();
  for (;;) {
    const next = edges
      .filter((edge) => !inTree.has(edge) && here.has(edge.a) !== here.has(edge.b))
      .sort((p, q) => q.wires.length - p.wires.length || (p.stretch < q.stretch ? -1 : 1))[0];
    if (next === undefined) break;
    inTree.add(next);
    kept.push(next);
    for (const vertex of [next.a, next.b]) {
      here.add(vertex);
      met.add(vertex);
    }
  }
  const broken = edges.filter((edge) => !inTree.has(edge) && here.has(edge.a));
  return { kept, broken };
}

/** Vertices where the loom only passes are threaded onto one limb, unless somebody has given them a place on the board. */
function collapsed(job: Job, { kept, broken }: Spanned, root: string): readonly TreeLimb[] {
  const placed = job.layout.board ?? {};
  const around = new Map<string, LoomEdge[]>();
  for (const edge of kept) {
    for (const vertex of [edge.a, edge.b])
      around.set(vertex, [...(around.get(vertex) ?? []), edge]);
  }
  const isLoopEnd = new Set(broken.map(({ a }) => a));
  const stops = (vertex: string): boolean =>
    around.get(vertex)!.length !== 2 || vertex in placed || isLoopEnd.has(vertex);
  const limbs: TreeLimb[] = [];
  const todo = [{ vertex: root, came: null as LoomEdge | null }];
  for (const { vertex, came } of todo) {
    for (const first of around.get(vertex) ?? []) {
      if (first === came) continue;
      const limb = threaded(vertex, first, around, stops);
      limbs.push(limb.limb);
      todo.push({ vertex: limb.limb.to, came: limb.last });
    }
    for (const edge of broken.filter(({ a }) => a === vertex)) {
      const { a, b, lengthMm, ...piece } = edge;
      const to = `${b}~${edge.stretch}`;
      limbs.push({
        id: edge.stretch,
        from: a,
        to,
        lengthMm,
        pieces: [piece],
        passed: [],
        meets: b,
      });
    }
  }
  return limbs;
}

function threaded(
  start: string,
  first: LoomEdge,
  around: ReadonlyMap<string, readonly LoomEdge[]>,
  stops: (vertex: string) => boolean,
): { readonly limb: TreeLimb; readonly last: LoomEdge } {
  const pieces: BoardPiece[] = [];
  const passed: { vertex: string; atMm: number }[] = [];
  let edge = first;
  let vertex = start;
  let atMm = 0;
  for (;;) {
    const { a, b, lengthMm, ...piece } = edge;
    const isForward = a === vertex;
    pieces.push({
      ...piece,
      fromMm: atMm,
      toMm: atMm + lengthMm,
      runFromMm: isForward ? piece.runFromMm : piece.runToMm,
      runToMm: isForward ? piece.runToMm : piece.runFromMm,
    });
    atMm += lengthMm;
    vertex = isForward ? b : a;
    if (stops(vertex)) break;
    passed.push({ vertex, atMm });
    edge = around.get(vertex)!.find((one) => one !== edge)!;
  }
  const limb = { id: first.stretch, from: start, to: vertex, lengthMm: atMm, pieces, passed };
  return { limb: { ...limb, meets: null }, last: edge };
}
