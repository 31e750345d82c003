import { type NumberedTree, numberedTree } from "./columnNumbers.ts";
import { type JoinCosts, joinCosts } from "./joinCosts.ts";
import type { LadderLevels } from "./ladderLevels.ts";
import type { LadderTree } from "./ladderTree.ts";

/** Orders looked at before the search ends, whatever it has found. */
const STEP_MAX = 4000;

/**
 * Seeks an order of the ways at every node that lets joins cross little: each way is tried in every place beside its neighbours, and each node on every
 * path that comes down to it, until nothing helps any more. What somebody has put keeps its order. Changes the lists of the tree; counted steps, no chance.
 *
 * @returns  orders looked at
 */
export function orderColumns(tree: LadderTree, levels: LadderLevels): number {
  const numbered = numberedTree(tree, levels);
  const straight = straightWays(tree, numbered);
  const costs = joinCosts(numbered, straight);
  const search = { stepCount: 0, best: costs() };
  const cost = (): number => {
    search.stepCount++;
    return costs();
  };
  let hasChanged = true;
  while (hasChanged && search.stepCount < STEP_MAX) {
    hasChanged = false;
    for (const list of numbered.lists) {
      if (exchange(numbered, list, search, cost)) hasChanged = true;
    }
    if (rehang(numbered, search, cost)) hasChanged = true;
  }
  numbered.writeBack();
  return search.stepCount;
}

interface Search {
  stepCount: number;
  best: number;
}

const straightWays = ({ straight, segments, ways }: LadderTree, tree: NumberedTree): Int32Array => {
  const numberOf = new Map([...segments.keys()].map((id, i) => [id, i]));
  return Int32Array.from(
    tree.waysOf,
    (_, i) => numberOf.get(straight.get([...ways.keys()][i]!) ?? "") ?? -1,
  );
};

/** Every member of a list in every place; a change that does not help is taken back. */
function exchange(tree: NumberedTree, list: number[], search: Search, costs: JoinCosts): boolean {
  let hasChanged = false;
  for (const member of [...list]) {
    for (let to = 0; to < list.length && search.stepCount < STEP_MAX; to++) {
      const from = list.indexOf(member);
      if (from === to) continue;
      list.splice(from, 1);
      list.splice(to, 0, member);
      const cost = keepsPut(tree, list) ? costs() : Number.POSITIVE_INFINITY;
      if (cost < search.best - 1e-9) {
        search.best = cost;
        hasChanged = true;
      } else {
        list.splice(to, 1);
        list.splice(from, 0, member);
      }
    }
  }
  return hasChanged;
}

function keepsPut({ isPut, rank }: NumberedTree, list: readonly number[]): boolean {
  const put = list.filter((one) => isPut[one]);
  return put.every((one, i) => i === 0 || rank[put[i - 1]!]! <= rank[one]!);
}

/** Each node on each path that comes down to it. */
function rehang({ meetings, hangsOn }: NumberedTree, search: Search, costs: JoinCosts): boolean {
  let hasChanged = false;
  for (const { node, into } of meetings) {
    for (const segment of into) {
      const before = hangsOn[node]!;
      if (segment === before) continue;
      hangsOn[node] = segment;
      const cost = costs();
      if (cost < search.best - 1e-9) {
        search.best = cost;
        hasChanged = true;
      } else hangsOn[node] = before;
    }
  }
  return hasChanged;
}
