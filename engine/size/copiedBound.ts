import { budgetFront, type Front, lessened } from "./front.ts";
import { laminarBest, type Nest } from "./laminarBest.ts";
import type { WireGroup } from "./wireGroups.ts";

/** Groups of which some nest like a tree and some cross it, as shared earths cross shared feeds. */
export interface Crossed {
  readonly groups: readonly WireGroup[];
  readonly nest: Nest;
  /** Groups outside the nest. */
  readonly crossing: readonly number[];
  /** Budgets of these groups, V by index. */
  readonly budgetsV: ReadonlyMap<number, number>;
}

/** Sizes still allowed of a crossing group, by place in its options. */
export interface SizeRange {
  readonly low: number;
  readonly high: number;
}

/** For each crossing group, each of its copies and each of its sizes: that copy's share of the cost. */
export type CostShares = readonly (readonly Float64Array[])[];

/** Cost shared evenly among the copies. */
export function evenShares({ groups, crossing }: Crossed): CostShares {
  return crossing.map((g) => {
    const { budgets, options } = groups[g]!;
    return budgets.map(() => Float64Array.from(options, ({ cost }) => cost / budgets.length));
  });
}

export interface Copied {
  readonly bound: number;
  /** Size each copy of each crossing group chose. */
  readonly chosen: readonly (readonly number[])[];
}

/**
 * Lower bound with every crossing group copied once a budget, the copies free to differ: the rest then nests.
 * A copy is known among the picks by `groups.length` + its number in order.
 *
 * @param most  bounds above it are of no interest.
 * @returns null where no choice, even so, meets the budgets and costs no more than `most`.
 */
export function copiedBest(
  crossed: Crossed,
  ranges: readonly SizeRange[],
  shares: CostShares,
  most: number,
): Copied | null {
  const { groups, crossing, nest, budgetsV } = crossed;
  const copies = crossing.flatMap((g, c) => {
    const allowed = groups[g]!.options.slice(ranges[c]!.low, ranges[c]!.high + 1);
    return groups[g]!.budgets.map((budget, j) => {
      const share = shares[c]![j]!;
      const least = Math.min(...allowed.map(({ option }) => share[option]!));
      const sizes = allowed.map(({ option, dropV }) => ({
        option,
        dropV,
        cost: share[option]! - least,
      }));
      return { budget, least, sizes };
    });
  });
  const copiesLeast = copies.reduce((sum, { least }) => sum + least, 0);
  const mostOver = most - copiesLeast - nestLeast(crossed);
  const leaves = new Map<number, Front>(
    [...budgetsV].map(([budget, slackV]) => [budget, budgetFront(slackV)]),
  );
  for (const [pick, { budget, sizes }] of copies.entries()) {
    leaves.set(budget, lessened(leaves.get(budget)!, groups.length + pick, sizes, mostOver));
  }
  const best = laminarBest(groups, nest, leaves, mostOver);
  if (best === null) return null;
  let pick = groups.length;
  const chosen = crossing.map((g) => groups[g]!.budgets.map(() => best.picks.get(pick++)!));
  return { bound: best.cost + copiesLeast, chosen };
}

/** What the nest costs in its cheapest sizes. */
const nestLeast = ({ groups, nest }: Crossed): number =>
  nest.order.reduce((sum, g) => sum + groups[g]!.options[0]!.cost, 0);

/**
 * A whole choice from what the copies chose: of each crossing group the thickest any copy took, which suits them all,
 * and the nested rest the cheapest for that.
 *
 * @returns null where it costs more than `most`.
 */
export function agreedBest(
  crossed: Crossed,
  chosen: readonly (readonly number[])[],
  most: number,
): { readonly cost: number; readonly picks: ReadonlyMap<number, number> } | null {
  const { groups, crossing, nest, budgetsV } = crossed;
  const left = new Map(budgetsV);
  const agreed = crossing.map((g, c) => [g, Math.max(...chosen[c]!)] as const);
  let cost = 0;
  for (const [g, size] of agreed) {
    const { budgets, options } = groups[g]!;
    cost += options[size]!.cost;
    for (const i of budgets) left.set(i, left.get(i)! - options[size]!.dropV);
  }
  const leaves = new Map<number, Front>(
    [...left].map(([budget, slackV]) => [budget, budgetFront(slackV)]),
  );
  const rest = laminarBest(groups, nest, leaves, most - cost - nestLeast(crossed));
  if (rest === null) return null;
  return { cost: cost + rest.cost, picks: new Map([...rest.picks, ...agreed]) };
}

/** True where all copies of every crossing group chose one size: the bound is then a whole choice. */
export const copiesAgree = (chosen: readonly (readonly number[])[]): boolean =>
  chosen.every((sizes) => sizes.every((size) => size === sizes[0]));

/**
 * Moves the shares against the copies that stand out: a size costs the copies that chose it more and the others less.
 *
 *   share_j(s) += step · ( [s_j = s] − mean over copies of [s = s_j] ),   step = gap / ‖direction‖²
 */
export function movedShares(
  shares: CostShares,
  chosen: readonly (readonly number[])[],
  gap: number,
): CostShares {
  const meanOf = chosen.map((sizes) => {
    const mean = new Map<number, number>();
    for (const size of sizes) mean.set(size, (mean.get(size) ?? 0) + 1 / sizes.length);
    return mean;
  });
  let squares = 0;
  for (const [c, sizes] of chosen.entries()) {
    for (const share of meanOf[c]!.values()) squares += sizes.length * share * (1 - share);
  }
  const step = gap / squares;
  return shares.map((copies, c) =>
    copies.map((share, j) => {
      const moved = Float64Array.from(share);
      for (const [size, mean] of meanOf[c]!) {
        moved[size]! += step * ((chosen[c]![j] === size ? 1 : 0) - mean);
      }
      return moved;
    }),
  );
}
