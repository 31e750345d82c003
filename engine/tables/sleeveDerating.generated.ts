// Generated from data/sleeveDerating.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "own-rule": "own rule of this program",
} as const;

export interface SleeveDeratingRow {
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
  { id: "in-sleeve-largest", meaning: "largest loom factor allowed inside a sleeve", value: 0.8, unit: "ratio", source: from["own-rule"], place: "loom practice", confidence: "own", note: null },
  { id: "gap-least", meaning: "still-air gap under a sleeve, least", value: 0.2, unit: "mm", source: from["own-rule"], place: "sleeve heat model", confidence: "own", note: null },
  { id: "gap-most", meaning: "still-air gap under a sleeve, most", value: 0.5, unit: "mm", source: from["own-rule"], place: "sleeve heat model", confidence: "own", note: null },
] as const satisfies readonly SleeveDeratingRow[];

export const sleeveDerating: readonly SleeveDeratingRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const sleeveDeratingUnits = {
  value: null,
} as const;
