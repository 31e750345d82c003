import { busCrossings } from "./busCrossings.ts";
import type { Ladder, LadderPins, LadderWords } from "./ladder.ts";
import { type LadderLevels, ladderLevels } from "./ladderLevels.ts";
import { columnsOfTree, type LadderTree } from "./ladderTree.ts";

export interface ToldLadder {
  readonly ladder: Ladder;
  readonly tree: LadderTree;
  readonly levels: LadderLevels;
  /** Node each segment told in words leads to. */
  readonly told: ReadonlyMap<string, string>;
}

/** Joins that would cross a column end in words instead. Without them nodes may rise, so the rest is looked at again until nothing crosses. */
export function tellJoins(
  ladder: Ladder,
  tree: LadderTree,
  levels: LadderLevels,
  pins: LadderPins,
  words: LadderWords,
  heightMm: number,
): ToldLadder {
  const told = new Map<string, string>();
  let now = { ladder, tree, levels };
  for (let round = 0; round <= ladder.segments.length; round++) {
    const columns = columnsOfTree(now.tree);
    const crossing = busCrossings(now.tree, columns, now.levels).filter(
      ({ crossedCount }) => crossedCount > 0,
    );
    if (crossing.length === 0) break;
    for (const { segment, node } of crossing) told.set(segment, node);
    now = inWords(
      now,
      new Map(crossing.map(({ segment, node }) => [segment, node])),
      pins,
      words,
      heightMm,
    );
  }
  return { ...now, told };
}

function inWords(
  { ladder, tree }: Pick<ToldLadder, "ladder" | "tree">,
  told: ReadonlyMap<string, string>,
  pins: LadderPins,
  words: LadderWords,
  heightMm: number,
): Pick<ToldLadder, "ladder" | "tree" | "levels"> {
  const segments = ladder.segments.map((segment) => {
    const node = told.get(segment.id);
    if (node === undefined) return segment;
    return { ...segment, to: null, items: [...segment.items, words.to(node)] };
  });
  const next = { ...ladder, segments };
  return {
    ladder: next,
    levels: ladderLevels(next, pins, heightMm),
    tree: {
      ...tree,
      segments: new Map(segments.map((segment) => [segment.id, segment])),
      into: new Map(
        [...tree.into].map(([node, coming]) => [node, coming.filter((id) => !told.has(id))]),
      ),
    },
  };
}
