import type { Law } from "./network.ts";

/** For one solve, the branch obeys this law instead of its own: a contact opened, a wire broken, an ohm changed. */
export interface BranchOverride {
  readonly branchIndex: number;
  readonly law: Law;
}

/** For one solve, an extra resistance between any two nodes; the pair need not be a branch of the network. ohm > 0. */
export interface Short {
  readonly a: number;
  readonly b: number;
  readonly ohm: number;
}

/** What differs from the compiled network in this one solve. */
export interface SolveOptions {
  readonly overrides?: readonly BranchOverride[];
  readonly shorts?: readonly Short[];
  /** Node volts to start from (warm start), one per node; the answer does not depend on it beyond the acceptance bound. */
  readonly initialV?: ArrayLike<number>;
  /** One Newton step more than acceptance asks for: a start near the answer is accepted early, and then as exact as any other. */
  readonly isRefined?: boolean;
  /** Newton steps before giving up, plain and safeguarded together. Default 200. */
  readonly maxIterationCount?: number;
  /** Whether `branchSlopeS` is wanted; it stays empty otherwise. Default true. */
  readonly slopes?: boolean;
  /** Room the solution is laid into, where it fits: whoever gives it reads the solution before giving it again. Default: fresh. */
  readonly into?: Float64Array;
}

/** How a solve ended. */
export interface SolveStatus {
  /** True only if kclResidualA ≤ 1e-9 A + 1e-12 · the largest |branch current|, measured on the nonlinear laws. */
  readonly converged: boolean;
  /** Newton steps, one factorisation each. */
  readonly iterationCount: number;
  /** Largest |sum of currents leaving a node|, A, leaks and shorts included; laws evaluated at the node volts given. */
  readonly kclResidualA: number;
}

/** A solved network: plain copies, safe to keep. */
export interface Solution extends SolveStatus {
  /** Volts of each node against node 0. */
  readonly nodeV: Float64Array;
  /** Current of each branch, A, positive from a to b. */
  readonly branchA: Float64Array;
  /** Slope di/dv of each branch's law at the solution, S. */
  readonly branchSlopeS: Float64Array;
  /** Current of each short, A, positive from a to b, in the order of `shorts`. */
  readonly shortA: Float64Array;
  /** The shorts this solution contains. */
  readonly shorts: readonly Short[];
}
