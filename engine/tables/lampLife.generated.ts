// Generated from data/lampLife.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "iec60810": "IEC 60810 table 3 (GOST R IEC 60810-2015)",
} as const;

export interface LampLifeRow {
  readonly id: string;
  readonly testV: number;
  readonly b3H: number;
  readonly characteristicH: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "h1", testV: 13.2, b3H: 150, characteristicH: 400, source: from["iec60810"], place: "table 3", confidence: "seen" },
  { id: "h3", testV: 13.2, b3H: 150, characteristicH: 400, source: from["iec60810"], place: "table 3", confidence: "seen" },
  { id: "h4-main", testV: 13.2, b3H: 125, characteristicH: 250, source: from["iec60810"], place: "table 3", confidence: "seen" },
  { id: "h4-dip", testV: 13.2, b3H: 250, characteristicH: 500, source: from["iec60810"], place: "table 3", confidence: "seen" },
  { id: "h7", testV: 13.2, b3H: 300, characteristicH: 500, source: from["iec60810"], place: "table 3", confidence: "seen" },
  { id: "h8", testV: 13.2, b3H: 400, characteristicH: 800, source: from["iec60810"], place: "table 3", confidence: "seen" },
  { id: "h11", testV: 13.2, b3H: 350, characteristicH: 600, source: from["iec60810"], place: "table 3", confidence: "seen" },
] as const satisfies readonly LampLifeRow[];

export const lampLife: readonly LampLifeRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const lampLifeUnits = {
  testV: "V",
  b3H: "h",
  characteristicH: "h",
} as const;
