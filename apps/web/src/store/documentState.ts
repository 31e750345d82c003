import type { CheckResult, Job, Operation } from "@copperwright/engine";

/** A change that the server has not confirmed. Kept on the device until it has. */
export interface PendingChange {
  readonly changeId: string;
  /** What was done, in words. */
  readonly what: string;
  readonly operation: Operation;
}

/** One act that can be undone, with the operation that undoes it. */
export interface Act {
  readonly what: string;
  readonly inverse: Operation;
}

/** The job on the bench: what the server last confirmed, and what was done here since. */
export interface DocumentState {
  readonly key: string;
  readonly baseRevision: number;
  /** When the server saved that revision; null: this device kept the job before it was told. */
  readonly baseSavedAt: string | null;
  readonly job: Job;
  readonly pending: readonly PendingChange[];
  readonly undo: readonly Act[];
  readonly redo: readonly Act[];
  readonly isReadOnly: string | null;
}

export interface VerdictState {
  /** Null until the first check is done. */
  readonly result: CheckResult | null;
  /** Count of the edit the result belongs to; less than the present count: still checking. */
  readonly ofEdit: number;
}

/** A thing chosen anywhere: shown everywhere. */
export interface Chosen {
  readonly kind:
    | "wire"
    | "part"
    | "pin"
    | "joint"
    | "connector"
    | "station"
    | "run"
    | "body"
    | "bond"
    | "circuit"
    | "loom"
    | "finding";
  readonly id: string;
}

/** The working of one number as a sentence: what the sum line shows and reads aloud. */
export interface SumSentence {
  readonly name: string;
  readonly result: string;
  /** Equation with the numbers in it. */
  readonly equation: string;
  readonly inputs: readonly {
    readonly text: string;
    readonly from: string;
    readonly goTo?: Chosen;
  }[];
  /** Limit, whose, source and confidence. */
  readonly note: string;
  /** Share of the limit used, where there is one. */
  readonly usedRatio?: number;
  readonly usedText?: string;
}

/** `keeping`: not even on this device yet. `waiting`: on this device only. */
export type SavedMark = "saved" | "keeping" | "waiting" | "two-versions" | "offline";
