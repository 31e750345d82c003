import { BUDGET_ROUNDING_V } from "./sizeProblem.ts";
import type { WireGroup } from "./wireGroups.ts";

/**
 * A good whole choice, fast: the step to a larger size that takes most excess drop from the missed budgets for its cost, again
 * and again until none is missed; then every group back down as far as the budgets allow.
 *
 * @param members    groups to choose for; together they can meet the budgets.
 * @param budgetsV   V by index of budget.
 * @returns size of each group.
 */
export function greedyBest(
  groups: readonly WireGroup[],
  members: readonly number[],
  budgetsV: ReadonlyMap<number, number>,
): ReadonlyMap<number, number> {
  const chosen = new Map(members.map((g) => [g, 0]));
  const overV = new Map([...budgetsV].map(([i, budgetV]) => [i, -budgetV]));
  const move = (g: number, size: number): void => {
    const { budgets, options } = groups[g]!;
    const changeV = options[size]!.dropV - options[chosen.get(g)!]!.dropV;
    for (const i of budgets) overV.set(i, overV.get(i)! + changeV);
    chosen.set(g, size);
  };
  for (const g of members) {
    for (const i of groups[g]!.budgets) overV.set(i, overV.get(i)! + groups[g]!.options[0]!.dropV);
  }
  while ([...overV.values()].some((volts) => volts > BUDGET_ROUNDING_V)) {
    const step = bestStep(groups, chosen, overV);
    if (step === null) throw new Error("sizing: budgets that can be met were not");
    move(step.group, step.size);
  }
  for (const g of [...members].sort(
    (a, b) => costAt(groups, chosen, b) - costAt(groups, chosen, a),
  )) {
    for (let size = 0; size < chosen.get(g)!; size++) {
      const { budgets, options } = groups[g]!;
      const changeV = options[size]!.dropV - options[chosen.get(g)!]!.dropV;
      if (budgets.every((i) => overV.get(i)! + changeV <= BUDGET_ROUNDING_V)) move(g, size);
    }
  }
  return chosen;
}

const costAt = (
  groups: readonly WireGroup[],
  chosen: ReadonlyMap<number, number>,
  g: number,
): number => groups[g]!.options[chosen.get(g)!]!.cost;

function bestStep(
  groups: readonly WireGroup[],
  chosen: ReadonlyMap<number, number>,
  overV: ReadonlyMap<number, number>,
): { readonly group: number; readonly size: number } | null {
  let best: { group: number; size: number } | null = null;
  let bestRatio = 0;
  for (const [g, now] of chosen) {
    const { budgets, options } = groups[g]!;
    for (let size = now + 1; size < options.length; size++) {
      const lessV = options[now]!.dropV - options[size]!.dropV;
      const moreCost = options[size]!.cost - options[now]!.cost;
      let gainV = 0;
      for (const i of budgets) gainV += Math.min(lessV, Math.max(0, overV.get(i)!));
      const ratio = moreCost > 0 ? gainV / moreCost : gainV * Number.MAX_SAFE_INTEGER;
      if (ratio > bestRatio) {
        best = { group: g, size };
        bestRatio = ratio;
      }
    }
  }
  return best;
}
