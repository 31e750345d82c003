import { columnPlaces, type Fullness, type PlacedItem, placedItem } from "./columnPlaces.ts";
import { columnReaches } from "./columnReaches.ts";
import { foldLadder, type LadderFold } from "./foldLadder.ts";
import type { Ladder, LadderPins, LadderSegment, LadderWords } from "./ladder.ts";
import { ladderLevels } from "./ladderLevels.ts";
import { columnsOfTree, ladderTree } from "./ladderTree.ts";
import { leanItem, leanLadder } from "./leanLadder.ts";
import { orderColumns } from "./orderColumns.ts";
import { stretchLadder } from "./stretchLadder.ts";
import { type ToldLadder, tellJoins } from "./tellJoins.ts";

export interface DiagramRoom {
  readonly widthMm: number;
  /** From the upper rail to the feet of the paths. */
  readonly heightMm: number;
  /** Least distance of columns at the foot. */
  readonly footPitchMm: number;
  /** Columns are spread to the width by no more than this; absent: twice. */
  readonly spreadMostRatio?: number | undefined;
}

export interface PlacedSegment {
  /** As drawn: with the words where it is cut. */
  readonly segment: LadderSegment;
  /** Column it stands in, from 0 at the left. */
  readonly column: number;
  readonly xMm: number;
  readonly topMm: number;
  readonly bottomMm: number;
  /** In the order of the segment's items. */
  readonly items: readonly PlacedItem[];
  /** Node it leads to in words; null where it is drawn to its end. */
  readonly told: string | null;
}

export interface PlacedNode {
  readonly id: string;
  /** Line of the column it hangs on. */
  readonly xMm: number;
  readonly column: number;
  readonly yMm: number;
  /** Where ways meet it, from left to right: the bus runs from the first to the last. */
  readonly meetsXMm: readonly number[];
  /** Columns that lead to it in words. */
  readonly toldColumns: readonly number[];
}

/** A diagram as positions: nothing is drawn and nothing is worded yet. */
export interface DiagramLayout {
  readonly columnXsMm: readonly number[];
  readonly segments: readonly PlacedSegment[];
  readonly nodes: readonly PlacedNode[];
  readonly folds: readonly LadderFold[];
  readonly widthMm: number;
  /** Orders looked at. */
  readonly stepCount: number;
  /** False where it is wider than its room or a path cannot be cut to its height: larger paper is needed. */
  readonly fits: boolean;
}

/** From the fullest lettering to the least. */
const FULLNESS: readonly Fullness[] = ["full", "short", "narrow"];
/** Columns are spread by no more than this. */
const SPREAD_MAX = 2;

/**
 * A network as a ladder: current paths in columns from the upper rail down, level buses where ways part or meet. An order of columns is sought so that no
 * line crosses another; a join that would cross is told in words at both ends, and so is a path longer than the paper. Same input, same positions: the
 * search is counted.
 *
 * @param pins  where somebody has put things: they keep their order from left to right and stand no higher than they were put
 */
export function layoutDiagram(
  input: Ladder,
  room: DiagramRoom,
  pins: LadderPins,
  words: LadderWords,
): DiagramLayout {
  const { folded, told } = foldedLean(input, room.heightMm, pins, words);
  const levels = ladderLevels(folded.ladder, pins, room.heightMm);
  const tree = ladderTree(folded.ladder, levels, pins);
  const stepCount = orderColumns(tree, levels);
  const drawn = tellJoins(folded.ladder, tree, levels, pins, told, room.heightMm);
  const columns = columnsOfTree(drawn.tree);
  const { items, xsMm, widthMm } = lettered(drawn, columns, room);
  const most = room.spreadMostRatio ?? SPREAD_MAX;
  const spread = Math.min(most, Math.max(1, room.widthMm / widthMm));
  const columnXsMm = xsMm.map((xMm) => xMm * spread);
  const columnOf = new Map(columns.flatMap((chain, i) => chain.map((id) => [id, i] as const)));
  const tallestMm = Math.max(0, ...drawn.levels.endMm.values());
  return {
    columnXsMm,
    segments: placedSegments(drawn, columnOf, columnXsMm, items, room.heightMm),
    nodes: placedNodes(drawn, columnOf, columnXsMm),
    folds: folded.folds,
    widthMm: widthMm * spread,
    stepCount,
    fits: folded.fits && widthMm <= room.widthMm && tallestMm <= room.heightMm + 1e-6,
  };
}

/** Narrow lettering where the height allows it without a fold; else the lowest. */
function foldedLean(input: Ladder, heightMm: number, pins: LadderPins, words: LadderWords) {
  const leanWords: LadderWords = {
    to: (what) => leanItem(words.to(what)),
    from: (what) => leanItem(words.from(what)),
  };
  const lean = foldLadder(leanLadder(input), heightMm, pins, leanWords);
  if (lean.fits && lean.folds.length === 0) return { folded: lean, told: leanWords };
  return { folded: foldLadder(input, heightMm, pins, words), told: words };
}

/** The fullest lettering whose columns stand within the width; the least where none does. */
function lettered(drawn: ToldLadder, columns: readonly (readonly string[])[], room: DiagramRoom) {
  const { ladder, levels } = drawn;
  const spans = stretchLadder(ladder, levels, room.heightMm);
  const nodes = new Map(ladder.nodes.map((node) => [node.id, node]));
  const tried = (fullness: Fullness) => {
    const items = new Map(
      ladder.segments.map(({ id, items: all }) => [
        id,
        all.map((item, i) => placedItem(item, spans.get(id)![i]!, fullness)),
      ]),
    );
    const reaches = columns.map((chain) => columnReaches(chain, drawn, nodes, items));
    return { items, ...columnPlaces(reaches, room) };
  };
  let one = tried("full");
  for (const fullness of FULLNESS.slice(1)) {
    if (one.widthMm <= room.widthMm) return one;
    one = tried(fullness);
  }
  return one;
}

function placedSegments(
  { ladder, levels, told }: ToldLadder,
  columnOf: ReadonlyMap<string, number>,
  xsMm: readonly number[],
  items: ReadonlyMap<string, readonly PlacedItem[]>,
  heightMm: number,
): readonly PlacedSegment[] {
  return ladder.segments.map((segment) => {
    const { id, from, to } = segment;
    const column = columnOf.get(id)!;
    return {
      segment,
      column,
      xMm: xsMm[column]!,
      topMm: from === null ? 0 : levels.nodeMm.get(from)!,
      bottomMm: to === null ? heightMm : levels.nodeMm.get(to)!,
      items: items.get(id)!,
      told: told.get(id) ?? null,
    };
  });
}

function placedNodes(
  { ladder, tree, levels, told }: ToldLadder,
  columnOf: ReadonlyMap<string, number>,
  xsMm: readonly number[],
): readonly PlacedNode[] {
  const columnsTo = (node: string): number[] =>
    [...told].flatMap(([segment, to]) => (to === node ? [columnOf.get(segment)!] : []));
  return ladder.nodes.map(({ id }) => {
    const straight = tree.hangsOn.get(id) ?? tree.straight.get(id)!;
    const column = columnOf.get(straight)!;
    const meets = [straight, ...tree.into.get(id)!, ...tree.ways.get(id)!];
    const meetsXMm = [...new Set(meets.map((one) => xsMm[columnOf.get(one)!]!))];
    return {
      id,
      xMm: xsMm[column]!,
      column,
      yMm: levels.nodeMm.get(id)!,
      meetsXMm: meetsXMm.sort((a, b) => a - b),
      toldColumns: columnsTo(id).sort((a, b) => a - b),
    };
  });
}
