/** One size a wire may have: what it costs (copper, money) and the volts it then drops. */
export interface SizeOption {
  readonly cost: number;
  readonly dropV: number;
}

/** The drops of some wires together may be no more than so much. */
export interface DropBudget {
  readonly id: string;
  readonly wires: readonly string[];
  readonly budgetV: number;
}

/** Wires with the sizes each may have (none empty), and the budgets they must meet. */
export interface SizeProblem {
  readonly wires: ReadonlyMap<string, readonly SizeOption[]>;
  readonly budgets: readonly DropBudget[];
  /** Bounds the search where shared feeds and shared returns cross; absent: 4,000. */
  readonly maxStepCount?: number;
}

export interface SizeSolution {
  /** Place of the chosen option in each wire's list. */
  readonly chosen: ReadonlyMap<string, number>;
  readonly cost: number;
  /** No choice of these options can cost less. Equal to `cost` where `exact`. */
  readonly lowerBound: number;
  readonly exact: boolean;
  /** Budgets that even the largest sizes miss: their wires are sized as if the budget were not there. */
  readonly unmet: readonly string[];
  readonly stepCount: number;
}

/** A sum of drops may miss its budget by the rounding of a double. */
export const BUDGET_ROUNDING_V = 1e-12;
