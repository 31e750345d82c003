import { BUDGET_ROUNDING_V, type DropBudget, type SizeOption } from "./sizeProblem.ts";

/** Wires that every live budget counts together: they share one list of best combined sizes. */
export interface WireGroup {
  /** Indices of the budgets all its wires are in, rising. */
  readonly budgets: readonly number[];
  /** Best combinations, cost rising and drop falling. */
  readonly options: readonly GroupOption[];
}

export interface GroupOption extends SizeOption {
  /** Place in the list of its group. */
  readonly option: number;
  /** Option of each wire. */
  readonly of: ReadonlyMap<string, number>;
}

/** The options no other of the same wire beats, cost rising and drop falling, with their places in the list. */
export function bestOptions(wire: string, options: readonly SizeOption[]): readonly GroupOption[] {
  const ranked = options
    .map((option, i) => ({ ...option, option: 0, of: new Map([[wire, i]]) }))
    .sort((a, b) => a.cost - b.cost || a.dropV - b.dropV);
  return undominated(ranked);
}

function undominated(ranked: readonly GroupOption[]): readonly GroupOption[] {
  const kept: GroupOption[] = [];
  for (const option of ranked) {
    const last = kept.at(-1);
    if (last === undefined || option.dropV < last.dropV) kept.push(option);
  }
  return numbered(kept);
}

const numbered = (options: readonly GroupOption[]): readonly GroupOption[] =>
  options.map((one, option) => ({ ...one, option }));

/** Groups wires by the live budgets they are in, and combines each group's sizes. Wires in none are left out. */
export function wireGroups(
  best: ReadonlyMap<string, readonly GroupOption[]>,
  live: readonly DropBudget[],
): readonly WireGroup[] {
  const budgetsOf = new Map<string, number[]>();
  for (const [i, budget] of live.entries()) {
    for (const wire of new Set(budget.wires)) {
      const known = budgetsOf.get(wire) ?? [];
      known.push(i);
      budgetsOf.set(wire, known);
    }
  }
  const groups = new Map<string, { budgets: number[]; options: readonly GroupOption[] }>();
  for (const wire of [...budgetsOf.keys()].sort()) {
    const budgets = budgetsOf.get(wire)!;
    const options = best.get(wire);
    if (options === undefined) throw new Error(`budget names wire "${wire}", which has no sizes`);
    const key = budgets.join(" ");
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { budgets, options });
    else group.options = combined(group.options, options, leastBudgetV(live, budgets));
  }
  return [...groups.values()];
}

const leastBudgetV = (live: readonly DropBudget[], budgets: readonly number[]): number =>
  Math.min(...budgets.map((i) => live[i]!.budgetV));

/** Every pair of options, without those that alone break the tightest budget and those another pair beats. */
function combined(
  a: readonly GroupOption[],
  b: readonly GroupOption[],
  budgetV: number,
): readonly GroupOption[] {
  const pairs: { cost: number; dropV: number; a: GroupOption; b: GroupOption }[] = [];
  for (const left of a) {
    for (const right of b) {
      const dropV = left.dropV + right.dropV;
      if (dropV <= budgetV + BUDGET_ROUNDING_V) {
        pairs.push({ cost: left.cost + right.cost, dropV, a: left, b: right });
      }
    }
  }
  pairs.sort((x, y) => x.cost - y.cost || x.dropV - y.dropV);
  const kept: GroupOption[] = [];
  for (const { cost, dropV, a: left, b: right } of pairs) {
    if (kept.length > 0 && dropV >= kept.at(-1)!.dropV) continue;
    kept.push({ cost, dropV, option: kept.length, of: new Map([...left.of, ...right.of]) });
  }
  return kept;
}
