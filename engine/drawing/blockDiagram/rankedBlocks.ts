import type { BlockDiagramInput, BlockKind } from "./blockDiagramInput.ts";

/** A line with one feed and all it feeds. `key` tells it from the others of a block. */
export interface Net {
  readonly key: string;
  readonly from: string;
  readonly to: readonly string[];
  readonly alwaysLive: boolean;
}

export interface RankedBlocks {
  /** Column of each block, from 0 at the left. */
  readonly rankOf: ReadonlyMap<string, number>;
  readonly nets: readonly Net[];
  /** Links that would run backwards (a loop): told in words in the feeding block. */
  readonly back: readonly { readonly from: string; readonly to: string }[];
}

const KIND_RANK: Readonly<Record<BlockKind, number>> = {
  source: 0,
  battery: 1,
  fuse: 2,
  switch: 3,
  load: 4,
};

/** Columns by kind, pushed right where a block feeds another of its own kind; every line then runs from left to right. */
export function rankedBlocks(input: BlockDiagramInput): RankedBlocks {
  const links = distinctLinks(input);
  const back = backLinks(input, links);
  const forward = links.filter((link) => !back.includes(link));
  const rankOf = new Map(input.blocks.map(({ id, kind }) => [id, KIND_RANK[kind]]));
  for (let round = 0; round < input.blocks.length; round++) {
    for (const { from, to } of forward) {
      rankOf.set(to, Math.max(rankOf.get(to)!, rankOf.get(from)! + 1));
    }
  }
  const used = [...new Set(rankOf.values())].sort((a, b) => a - b);
  for (const [id, rank] of rankOf) rankOf.set(id, used.indexOf(rank));
  const netOf = new Map<string, { from: string; to: string[]; alwaysLive: boolean }>();
  for (const { from, to, alwaysLive } of forward) {
    const key = `${from} ${alwaysLive ? "live" : "switched"}`;
    const net = netOf.get(key) ?? { from, to: [], alwaysLive };
    net.to.push(to);
    netOf.set(key, net);
  }
  return { rankOf, nets: [...netOf].map(([key, net]) => ({ key, ...net })), back };
}

type Link = BlockDiagramInput["links"][number];

function distinctLinks({ blocks, links }: BlockDiagramInput): Link[] {
  const known = new Set(blocks.map(({ id }) => id));
  const seen = new Map<string, Link>();
  for (const link of links) {
    for (const id of [link.from, link.to]) {
      if (!known.has(id))
        throw new Error(`a link of the block diagram names ${id}, which is no block`);
    }
    const key = `${link.from} ${link.to}`;
    const earlier = seen.get(key);
    if (!earlier || link.alwaysLive) seen.set(key, link);
  }
  return [...seen.values()];
}

/** Links that close a loop when blocks are visited in the order given. */
function backLinks(input: BlockDiagramInput, links: readonly Link[]): Link[] {
  const back: Link[] = [];
  const state = new Map<string, "open" | "done">();
  const visit = (id: string): void => {
    state.set(id, "open");
    for (const link of links) {
      if (link.from !== id) continue;
      if (state.get(link.to) === "open") back.push(link);
      else if (!state.has(link.to)) visit(link.to);
    }
    state.set(id, "done");
  };
  for (const { id } of input.blocks) if (!state.has(id)) visit(id);
  return back;
}
