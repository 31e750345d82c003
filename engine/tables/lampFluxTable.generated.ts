// Generated from data/lampFluxTable.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "lighting-maker-table": "lighting maker's page of light against operating volts at 13.5 V",
  "relay-article-table": "relay-upgrade article quoted on a forum, 12.8 V lamp",
} as const;

export interface LampFluxTableRow {
  readonly id: string;
  readonly referenceV: number;
  readonly atV: number;
  readonly lightPercent: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "at12.8-10.5", referenceV: 12.8, atV: 10.5, lightPercent: 51, source: from["relay-article-table"], place: "light table", confidence: "secondary" },
  { id: "at12.8-11", referenceV: 12.8, atV: 11, lightPercent: 59.7, source: from["relay-article-table"], place: "light table", confidence: "secondary" },
  { id: "at12.8-11.5", referenceV: 12.8, atV: 11.5, lightPercent: 69.5, source: from["relay-article-table"], place: "light table", confidence: "secondary" },
  { id: "at12.8-12", referenceV: 12.8, atV: 12, lightPercent: 80.3, source: from["relay-article-table"], place: "light table", confidence: "secondary" },
  { id: "at12.8-12.5", referenceV: 12.8, atV: 12.5, lightPercent: 92.3, source: from["relay-article-table"], place: "light table", confidence: "secondary" },
  { id: "at12.8-12.8", referenceV: 12.8, atV: 12.8, lightPercent: 100, source: from["relay-article-table"], place: "light table", confidence: "secondary" },
  { id: "at12.8-13", referenceV: 12.8, atV: 13, lightPercent: 105.4, source: from["relay-article-table"], place: "light table", confidence: "secondary" },
  { id: "at12.8-13.5", referenceV: 12.8, atV: 13.5, lightPercent: 119.8, source: from["relay-article-table"], place: "light table", confidence: "secondary" },
  { id: "at12.8-14", referenceV: 12.8, atV: 14, lightPercent: 135.6, source: from["relay-article-table"], place: "light table", confidence: "secondary" },
  { id: "at12.8-14.5", referenceV: 12.8, atV: 14.5, lightPercent: 152.8, source: from["relay-article-table"], place: "light table", confidence: "secondary" },
  { id: "at13.5-11.475", referenceV: 13.5, atV: 11.475, lightPercent: 53, source: from["lighting-maker-table"], place: "light table", confidence: "seen" },
  { id: "at13.5-12.15", referenceV: 13.5, atV: 12.15, lightPercent: 67, source: from["lighting-maker-table"], place: "light table", confidence: "seen" },
  { id: "at13.5-12.825", referenceV: 13.5, atV: 12.825, lightPercent: 83, source: from["lighting-maker-table"], place: "light table", confidence: "seen" },
  { id: "at13.5-13.5", referenceV: 13.5, atV: 13.5, lightPercent: 100, source: from["lighting-maker-table"], place: "light table", confidence: "seen" },
] as const satisfies readonly LampFluxTableRow[];

export const lampFluxTable: readonly LampFluxTableRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const lampFluxTableUnits = {
  referenceV: "V",
  atV: "V",
  lightPercent: "%",
} as const;
