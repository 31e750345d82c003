import { batteriesOf } from "../job/index.ts";
import type { CompiledJob } from "../operate/index.ts";
import { type FeedEdge, feedGraph } from "../protect/index.ts";

/** Where a wire is fed from, and what it could be moved behind. */
export interface LiveEnd {
  readonly end: "from" | "to";
  readonly pin: string;
  /** Fuses that hang on the same copper with one pin, with the pin on their far side. */
  readonly fuses: readonly { readonly id: string; readonly farPin: string }[];
}

/** The end of a wire the battery reaches without it, contacts closed; null where it reaches neither. */
export function liveEnd(compiled: CompiledJob, wire: string): LiveEnd | null {
  const { job, jobNetwork, conductors } = compiled;
  const { indexOf, names } = jobNetwork.nodes;
  const conductor = conductors.get(wire);
  const { edges } = feedGraph(job, jobNetwork, conductors);
  const own = edges.find((edge) => edge.conductor === wire);
  if (conductor === undefined || own === undefined) return null;
  const posts = batteriesOf(job).map(({ livePost }) => indexOf.get(livePost)!);
  const live = reached(edges, posts, (edge) => edge === own);
  const end = (["from", "to"] as const).find((one) => live.has(indexOf.get(conductor[one])!));
  if (end === undefined) return null;
  const node = indexOf.get(conductor[end])!;
  const copper = reached(
    edges,
    [node],
    (edge) => edge === own || edge.fuse !== null || edge.contact !== null || edge.oneWay,
  );
  const fuses = edges.flatMap(({ fuse, from, to }) => {
    if (fuse === null || copper.has(from) === copper.has(to)) return [];
    return [{ id: fuse.id, farPin: names[copper.has(from) ? to : from]! }];
  });
  return { end, pin: conductor[end], fuses };
}

function reached(
  edges: readonly FeedEdge[],
  roots: readonly number[],
  without: (edge: FeedEdge) => boolean,
): ReadonlySet<number> {
  const seen = new Set(roots);
  for (let before = -1; before !== seen.size; ) {
    before = seen.size;
    for (const edge of edges) {
      if (without(edge)) continue;
      if (seen.has(edge.from)) seen.add(edge.to);
      if (!edge.oneWay && seen.has(edge.to)) seen.add(edge.from);
    }
  }
  return seen;
}
