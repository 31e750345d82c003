import type { Ladder, LadderPins, LadderSegment } from "./ladder.ts";
import type { LadderLevels } from "./ladderLevels.ts";

/** A ladder as a forest: every node hangs on one of the paths that come down to it, the others join it. */
export interface LadderTree {
  /** Segments that begin at the top, and nodes nothing comes down to. */
  readonly roots: string[];
  /** Ways down from a node in the order they stand; the lists are exchanged in place while an order is sought. */
  readonly ways: ReadonlyMap<string, string[]>;
  /** The segment a node hangs on; absent for roots. */
  readonly hangsOn: Map<string, string>;
  /** The way in which the path straight above a node goes on. */
  readonly straight: ReadonlyMap<string, string>;
  /** All that come down to a node. */
  readonly into: ReadonlyMap<string, readonly string[]>;
  readonly segments: ReadonlyMap<string, LadderSegment>;
  /** Wished place of everything that hangs on a root or a way, and whether somebody has put it there. */
  readonly rankOf: (id: string) => number;
  readonly isPut: (id: string) => boolean;
}

/** A node hangs on the path that reaches it lowest, so that the longest path runs straight down. */
export function ladderTree(ladder: Ladder, levels: LadderLevels, pins: LadderPins): LadderTree {
  const segments = new Map(ladder.segments.map((segment) => [segment.id, segment]));
  const into = new Map<string, string[]>(ladder.nodes.map(({ id }) => [id, []]));
  const ways = new Map<string, string[]>(ladder.nodes.map(({ id }) => [id, []]));
  for (const { id, from, to } of ladder.segments) {
    if (to !== null) into.get(to)!.push(id);
    if (from !== null) ways.get(from)!.push(id);
  }
  const hangsOn = new Map<string, string>();
  for (const [node, coming] of into) {
    const lowest = longest(coming, levels);
    if (lowest !== undefined) hangsOn.set(node, lowest);
  }
  const roots = [
    ...ladder.segments.filter(({ from }) => from === null).map(({ id }) => id),
    ...ladder.nodes.filter(({ id }) => into.get(id)!.length === 0).map(({ id }) => id),
  ];
  const straight = new Map(
    [...ways].flatMap(([node, list]) => {
      const way = longest(list, levels);
      return way === undefined ? [] : [[node, way] as const];
    }),
  );
  const { rankOf, isPut } = ranks(segments, ways, pins);
  const byRank = (a: string, b: string): number => rankOf(a) - rankOf(b) || (a < b ? -1 : 1);
  for (const list of [roots, ...ways.values()]) list.sort(byRank);
  return { roots, ways, hangsOn, straight, into, segments, rankOf, isPut };
}

/** Place of a whole branch: where somebody has put the first of its things, else its own wish. */
function ranks(
  segments: ReadonlyMap<string, LadderSegment>,
  ways: ReadonlyMap<string, readonly string[]>,
  pins: LadderPins,
): Pick<LadderTree, "rankOf" | "isPut"> {
  const putAt = (id: string): number | undefined =>
    segments
      .get(id)
      ?.items.map((item) => pins[item.id]?.xMm)
      .find((xMm) => xMm !== undefined);
  const least = new Map<string, number>();
  const wish = (id: string): number => {
    const known = least.get(id);
    if (known !== undefined) return known;
    const segment = segments.get(id);
    const under = ways.get(segment === undefined ? id : (segment.to ?? "")) ?? [];
    least.set(id, segment?.rank ?? Number.POSITIVE_INFINITY);
    const rank = Math.min(segment?.rank ?? Number.POSITIVE_INFINITY, ...under.map(wish));
    least.set(id, rank);
    return rank;
  };
  return { rankOf: (id) => putAt(id) ?? wish(id), isPut: (id) => putAt(id) !== undefined };
}

/** Segments from left to right, column by column. A path goes on below a node in the way that leads furthest down. */
export function columnsOfTree(tree: LadderTree): readonly string[][] {
  const columns: string[][] = [];
  const nodeUnder = (segment: string): string | null => {
    const to = tree.segments.get(segment)!.to;
    return to !== null && tree.hangsOn.get(to) === segment ? to : null;
  };
  const layNode = (node: string, above: readonly string[]): void => {
    const ways = tree.ways.get(node)!;
    const straight = tree.straight.get(node);
    if (straight === undefined) columns.push([...above]);
    for (const way of ways) lay(way, way === straight ? above : []);
  };
  const lay = (segment: string, above: readonly string[]): void => {
    const chain = [...above, segment];
    const node = nodeUnder(segment);
    if (node === null) columns.push(chain);
    else layNode(node, chain);
  };
  for (const root of tree.roots) {
    if (tree.segments.has(root)) lay(root, []);
    else layNode(root, []);
  }
  return columns;
}

/** The one that ends lowest. */
const longest = (ids: readonly string[], { endMm }: LadderLevels): string | undefined =>
  [...ids].sort((a, b) => endMm.get(b)! - endMm.get(a)! || (a < b ? -1 : 1))[0];
