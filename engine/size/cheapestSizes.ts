import { type CrossedBest, crossedBest } from "./crossedBest.ts";
import { areNested, nestOf } from "./laminarBest.ts";
import {
  BUDGET_ROUNDING_V,
  type DropBudget,
  type SizeProblem,
  type SizeSolution,
} from "./sizeProblem.ts";
import { bestOptions, type GroupOption, type WireGroup, wireGroups } from "./wireGroups.ts";

const DEFAULT_STEP_COUNT = 4000;

/**
 * Cheapest sizes that meet every budget.
 *
 *   least Σ cost   so that for every budget   Σ drop of its wires ≤ budget
 *
 * Exact: wires that every budget counts together become one group; groups that nest like a tree are solved from the
 * twigs inward (`laminarBest`); where feeds and returns are both shared, `crossedBest` bounds and branches until the best
 * is proven, or until its steps run out, which the answer says.
 */
export function cheapestSizes(problem: SizeProblem): SizeSolution {
  const best = new Map(
    [...problem.wires].map(([wire, options]) => [wire, bestOptions(wire, options)]),
  );
  const unmet = new Set(unmetBudgets(problem));
  const most = (wire: string): number => best.get(wire)![0]!.dropV;
  const live = problem.budgets.filter((one) => !unmet.has(one.id) && isMissed(one, most));
  const groups = wireGroups(best, live);
  const chosen = new Map([...best].map(([wire, options]) => [wire, onlyPlace(options[0]!, wire)]));
  const maxStepCount = problem.maxStepCount ?? DEFAULT_STEP_COUNT;
  let exact = true;
  let shortfall = 0;
  let stepCount = 0;
  for (const members of components(groups)) {
    const found = solveComponent(groups, members, live, maxStepCount);
    exact &&= found.exact;
    shortfall += found.cost - found.lowerBound;
    stepCount += found.stepCount;
    for (const [group, option] of found.picks) {
      for (const [wire, place] of groups[group]!.options[option]!.of) chosen.set(wire, place);
    }
  }
  const cost = [...chosen].reduce(
    (total, [wire, place]) => total + problem.wires.get(wire)![place]!.cost,
    0,
  );
  return {
    chosen,
    cost,
    lowerBound: exact ? cost : cost - shortfall,
    exact,
    unmet: [...unmet].sort(),
    stepCount,
  };
}

/** Budgets that even the sizes of least drop miss. */
export function unmetBudgets({ wires, budgets }: SizeProblem): readonly string[] {
  const least = (wire: string): number => Math.min(...wires.get(wire)!.map(({ dropV }) => dropV));
  return budgets.filter((one) => isMissed(one, least)).map(({ id }) => id);
}

function isMissed(budget: DropBudget, dropV: (wire: string) => number): boolean {
  const sumV = [...new Set(budget.wires)].reduce((sum, wire) => sum + dropV(wire), 0);
  return sumV > budget.budgetV + BUDGET_ROUNDING_V;
}

const onlyPlace = (option: GroupOption, wire: string): number => option.of.get(wire)!;

/** Groups that hang together by their budgets. */
function components(groups: readonly WireGroup[]): readonly (readonly number[])[] {
  const firstOf = new Map<number, number>();
  const parent = groups.map((_, i) => i);
  const rootOf = (i: number): number => {
    let root = i;
    while (parent[root] !== root) root = parent[root]!;
    return root;
  };
  for (const [i, { budgets }] of groups.entries()) {
    for (const budget of budgets) {
      const first = firstOf.get(budget);
      if (first === undefined) firstOf.set(budget, i);
      else parent[rootOf(i)] = rootOf(first);
    }
  }
  const found = new Map<number, number[]>();
  for (const i of groups.keys()) {
    const members = found.get(rootOf(i)) ?? [];
    members.push(i);
    found.set(rootOf(i), members);
  }
  return [...found.values()];
}

function solveComponent(
  groups: readonly WireGroup[],
  members: readonly number[],
  live: readonly DropBudget[],
  maxStepCount: number,
): CrossedBest {
  const crossing = crossingGroups(groups, members);
  const crosses = new Set(crossing);
  const nested = members.filter((g) => !crosses.has(g));
  const nest = nestOf(groups, nested);
  const touched = new Set(members.flatMap((g) => groups[g]!.budgets));
  const budgetsV = new Map([...touched].map((i) => [i, live[i]!.budgetV]));
  return crossedBest({ groups, nest, crossing, budgetsV }, maxStepCount);
}

/** Fewest-first: takes out the group that crosses most others until the rest nest. */
function crossingGroups(
  groups: readonly WireGroup[],
  members: readonly number[],
): readonly number[] {
  const left = new Set(members);
  const out: number[] = [];
  for (;;) {
    let worst = -1;
    let worstCount = 0;
    for (const g of left) {
      let count = 0;
      for (const other of left) {
        if (other !== g && !areNested(groups[g]!, groups[other]!)) count++;
      }
      if (count > worstCount) [worst, worstCount] = [g, count];
    }
    if (worstCount === 0) return out;
    left.delete(worst);
    out.push(worst);
  }
}
