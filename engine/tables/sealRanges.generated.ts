// Generated from data/sealRanges.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "connector-spec": "connector application specification, size-16 round contacts",
} as const;

export interface SealRangesRow {
  readonly id: string;
  readonly contact: string;
  readonly insulationFromMm: number;
  readonly insulationToMm: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "sealed-16-standard", contact: "sealed-16", insulationFromMm: 2.18, insulationToMm: 3.67, source: from["connector-spec"], place: "14 to 18 AWG seal", confidence: "seen" },
  { id: "sealed-16-reduced", contact: "sealed-16", insulationFromMm: 1.3, insulationToMm: 2.54, source: from["connector-spec"], place: "18 to 20 AWG seal", confidence: "seen" },
] as const satisfies readonly SealRangesRow[];

export const sealRanges: readonly SealRangesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const sealRangesUnits = {
  insulationFromMm: "mm",
  insulationToMm: "mm",
} as const;
