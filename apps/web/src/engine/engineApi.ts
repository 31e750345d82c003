import type { CheckResult, Job, Operation, OperationApplied, Refusal } from "@copperwright/engine";
import type { AnswerName } from "./answers.ts";

export type Opened =
  | { readonly ok: true; readonly job: Job; readonly text: string }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** What an edit would lead to, tried on a copy: the counts before and after, or why it cannot be done. */
export type Consequence =
  | { readonly ok: true; readonly before: Counts; readonly after: Counts; readonly verdict: string }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

export type Counts = CheckResult["counts"];

/** What the interface may ask of an engine worker. Everything that crosses is plain data. */
export interface EngineApi {
  /** Reads a document and holds it. */
  open(text: string): Opened;
  /** Does one operation to the job held. Nothing changes where it is refused. */
  apply(operation: Operation): OperationApplied;
  /** The check of the job held. */
  check(): CheckResult;
  consequence(operation: Operation): Consequence;
  /** The canonical text of the job held. */
  text(): string;
  answer(
    name: AnswerName,
    question: unknown,
    /** Told how far a long answer has come; absent: nobody listens. */
    progress: ((doneRatio: number, word: string) => void) | undefined,
  ): unknown;
}
