import type {
  ChangeOutcome,
  CheckResult,
  Job,
  Operation,
  OperationApplied,
  Refusal,
} from "@copperwright/engine";
import type { AnswerName } from "./answers.ts";

export type Opened =
  | { readonly ok: true; readonly job: Job; readonly text: string }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** What an edit would lead to, tried on a copy: counts, sizes, fuses and price, or why it cannot be done. */
export type Consequence =
  | ({ readonly ok: true } & ChangeOutcome)
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
  /** @param priceList  text of a shop's list; null: none is at hand */
  consequence(operation: Operation, priceList: string | null): Consequence;
  /** The canonical text of the job held. */
  text(): string;
  answer(
    name: AnswerName,
    question: unknown,
    /** Told how far a long answer has come; absent: nobody listens. */
    progress: ((doneRatio: number, word: string) => void) | undefined,
  ): unknown;
}
