/** What becomes of a part when the machine's volts or earth change. */
export type ConvertAction = "keep" | "replace" | "rewind" | "adjust";

/** One part of a conversion, with the reason and what it draws before and after. */
export interface ConvertRow {
  readonly part: string;
  readonly name: string;
  readonly action: ConvertAction;
  readonly reason: string;
  /** At rated volts, A; null where a part has no current of its own. */
  readonly beforeA: number | null;
  readonly afterA: number | null;
}
