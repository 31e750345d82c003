// Generated from data/bulletRanges.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "magazine-tool-column": "magazine tool column, 2020",
  "remembered-trade": "remembered, common trade listing; not found in a text",
  "terminal-seller-page": "terminal seller's comparison page",
} as const;

export interface BulletRangesRow {
  readonly id: string;
  readonly pinMm: number;
  readonly boreFor: string;
  readonly wireFromMm2: number;
  readonly wireToMm2: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "4.7-9", pinMm: 4.7, boreFor: "9/0.30", wireFromMm2: 0.5, wireToMm2: 0.7, source: from["remembered-trade"], place: "British bores", confidence: "memory" },
  { id: "4.7-14", pinMm: 4.7, boreFor: "14/0.30", wireFromMm2: 0.75, wireToMm2: 1.1, source: from["remembered-trade"], place: "British bores", confidence: "memory" },
  { id: "4.7-28", pinMm: 4.7, boreFor: "28/0.30", wireFromMm2: 1.5, wireToMm2: 2.1, source: from["remembered-trade"], place: "British bores", confidence: "memory" },
  { id: "4.7-44", pinMm: 4.7, boreFor: "44/0.30", wireFromMm2: 2.5, wireToMm2: 3.3, source: from["remembered-trade"], place: "British bores", confidence: "memory" },
  { id: "3.9", pinMm: 3.9, boreFor: "crimp", wireFromMm2: 0.5, wireToMm2: 2, source: from["magazine-tool-column"], place: "Japanese", confidence: "memory" },
  { id: "3.5", pinMm: 3.5, boreFor: "crimp", wireFromMm2: 0.5, wireToMm2: 1.5, source: from["terminal-seller-page"], place: "sellers disagree", confidence: "memory" },
] as const satisfies readonly BulletRangesRow[];

export const bulletRanges: readonly BulletRangesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const bulletRangesUnits = {
  pinMm: "mm",
  wireFromMm2: "mm2",
  wireToMm2: "mm2",
} as const;
