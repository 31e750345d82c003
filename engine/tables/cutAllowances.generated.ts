// Generated from data/cutAllowances.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "common-practice": "common practice of the trade",
  "faa-ac43-13-1b": "FAA AC 43.13-1B Change 1 (2001), chapter 11",
  "loom-mock-up-article": "article on mocking up a loom on the machine: 6 in over at every connection",
  "own-rule": "own rule of this program",
} as const;

export interface CutAllowancesRow {
  readonly id: string;
  readonly meaning: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
  readonly note: string | null;
}

const rows = [
  { id: "strip", meaning: "strip at each end, where the terminal does not say", value: 6, unit: "mm", source: from["common-practice"], place: "cut allowances", confidence: "common practice", note: null },
  { id: "retermination", meaning: "length of one re-termination", value: 12, unit: "mm", source: from["common-practice"], place: "cut allowances", confidence: "common practice", note: null },
  { id: "reterminations", meaning: "re-terminations spare at each end", value: 2, unit: "count", source: from["faa-ac43-13-1b"], place: "11-118", confidence: "seen", note: null },
  { id: "flex-slack", meaning: "slack of a wire that crosses the flex zone", value: 40, unit: "mm", source: from["common-practice"], place: "cut allowances", confidence: "common practice", note: null },
  { id: "round-up", meaning: "cut length rounded up to", value: 10, unit: "mm", source: from["own-rule"], place: "cut allowances", confidence: "own", note: null },
  { id: "waste", meaning: "added to the length bought", value: 5, unit: "%", source: from["common-practice"], place: "buying list", confidence: "common practice", note: null },
  { id: "trim", meaning: "first loom of its kind: left over at each end, cut back on the machine", value: 150, unit: "mm", source: from["loom-mock-up-article"], place: "mock-up", confidence: "seen", note: "at least 6 in" },
  { id: "terminal-spares", meaning: "terminals bought beyond those counted, one at least", value: 10, unit: "%", source: from["common-practice"], place: "buying list", confidence: "common practice", note: null },
] as const satisfies readonly CutAllowancesRow[];

export const cutAllowances: readonly CutAllowancesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const cutAllowancesUnits = {
  value: null,
} as const;
