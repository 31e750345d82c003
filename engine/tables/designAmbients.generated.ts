// Generated from data/designAmbients.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "own-rule": "own rule of this program",
} as const;

export interface DesignAmbientsRow {
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
  { id: "open-frame", meaning: "air round a loom in the open frame", value: 40, unit: "C", source: from["own-rule"], place: "design ambients", confidence: "own", note: null },
  { id: "under-tank", meaning: "air under tank or seat", value: 60, unit: "C", source: from["own-rule"], place: "design ambients", confidence: "own", note: null },
  { id: "near-cylinder", meaning: "air near the cylinder or in the headlamp shell, least", value: 80, unit: "C", source: from["own-rule"], place: "design ambients", confidence: "own", note: null },
  { id: "headlamp-shell", meaning: "air near the cylinder or in the headlamp shell, most", value: 90, unit: "C", source: from["own-rule"], place: "design ambients", confidence: "own", note: null },
] as const satisfies readonly DesignAmbientsRow[];

export const designAmbients: readonly DesignAmbientsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const designAmbientsUnits = {
  value: null,
} as const;
