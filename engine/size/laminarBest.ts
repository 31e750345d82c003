import { type Front, type GroupSize, joined, lessened, picked } from "./front.ts";
import { BUDGET_ROUNDING_V } from "./sizeProblem.ts";
import type { WireGroup } from "./wireGroups.ts";

/** Groups whose budget sets are nested or apart, as the wires of a tree are: smallest first. */
export interface Nest {
  /** Indices into the groups. */
  readonly order: readonly number[];
  /** For each place in `order`: the places of the groups nested directly in it. */
  readonly inside: readonly (readonly number[])[];
  /** For each place: budgets in the group and in none of those inside it. */
  readonly ownBudgets: readonly (readonly number[])[];
  /** Places no other group holds. */
  readonly roots: readonly number[];
}

/** True where one budget set holds the other or they share nothing. */
export function areNested(a: WireGroup, b: WireGroup): boolean {
  const [small, large] = a.budgets.length <= b.budgets.length ? [a, b] : [b, a];
  const within = new Set(large.budgets);
  const sharedCount = small.budgets.filter((i) => within.has(i)).length;
  return sharedCount === 0 || sharedCount === small.budgets.length;
}

/** Lays nested groups out as a forest. Groups with equal budget sets do not occur: they were one group. */
export function nestOf(groups: readonly WireGroup[], members: readonly number[]): Nest {
  const order = [...members].sort(
    (a, b) => groups[a]!.budgets.length - groups[b]!.budgets.length || a - b,
  );
  const inside: number[][] = order.map(() => []);
  const ownBudgets = order.map((g) => [...groups[g]!.budgets]);
  /** The largest place so far that holds each budget. */
  const holder = new Map<number, number>();
  const isRoot = order.map(() => true);
  for (const [place, g] of order.entries()) {
    for (const budget of groups[g]!.budgets) {
      const held = holder.get(budget);
      holder.set(budget, place);
      if (held === undefined) continue;
      if (isRoot[held]) inside[place]!.push(held);
      isRoot[held] = false;
    }
    const held = new Set(inside[place]!.flatMap((child) => groups[order[child]!]!.budgets));
    ownBudgets[place] = ownBudgets[place]!.filter((budget) => !held.has(budget));
  }
  const roots = order.map((_, place) => place).filter((place) => isRoot[place]);
  return { order, inside, ownBudgets, roots };
}

export interface LaminarBest {
  readonly cost: number;
  /** Group → option. */
  readonly picks: ReadonlyMap<number, number>;
}

/**
 * Cheapest sizes of nested groups, exactly: from the twigs inward each group keeps, for every slack it could leave
 * upstream, the least cost. A group's option takes its drop from the slack and adds its cost; branches that meet leave
 * the least of their slacks and cost their sum. Costs are counted above each group's cheapest size, so that no part may
 * cost more than the whole.
 *
 * @param leaves    what each budget still allows, as a front; a budget in no group of the nest counts by itself.
 * @param mostOver  costs above the cheapest sizes that are of no interest.
 * @returns null where no choice within `mostOver` meets the budgets.
 */
export function laminarBest(
  groups: readonly WireGroup[],
  nest: Nest,
  leaves: ReadonlyMap<number, Front>,
  mostOver: number,
): LaminarBest | null {
  const fronts: Front[] = [];
  const free = new Set(leaves.keys());
  let cost = 0;
  for (const [place, g] of nest.order.entries()) {
    const own = nest.ownBudgets[place]!.map((budget) => leaves.get(budget)!);
    const met = [...nest.inside[place]!.map((child) => fronts[child]!), ...own].reduce((a, b) =>
      joined(a, b, mostOver),
    );
    const { budgets, options } = groups[g]!;
    for (const budget of budgets) free.delete(budget);
    const front = lessened(met, g, overCheapest(options), mostOver);
    if (front.length === 0) return null;
    cost += options[0]!.cost;
    fronts.push(front);
  }
  const ends = [
    ...nest.roots.map((root) => fronts[root]!),
    ...[...free].map((i) => leaves.get(i)!),
  ];
  const picks = new Map<number, number>();
  for (const end of ends) {
    const cheapest = end.find(({ slackV }) => slackV >= -BUDGET_ROUNDING_V);
    if (cheapest === undefined) return null;
    cost += cheapest.cost;
    for (const [group, option] of picked(cheapest)) picks.set(group, option);
  }
  return { cost, picks };
}

/** Sizes of a group, their costs above the cheapest. */
function overCheapest(options: readonly GroupSize[]): readonly GroupSize[] {
  const least = options[0]!.cost;
  return options.map(({ option, cost, dropV }) => ({ option, cost: cost - least, dropV }));
}
