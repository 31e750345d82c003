// Generated from data/connectorClasses.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "contact-listing": "trade listing of the male contact; lower wire limit remembered",
  "remembered-trade": "remembered, common trade listing; not found in a text",
  "ul310-catalogue": "quick-connect terminal catalogue, table based on UL 310; test currents agree with a second terminal maker's page",
} as const;

export interface ConnectorClassesRow {
  readonly id: string;
  readonly kind: string;
  readonly meaning: string;
  readonly maxA: number;
  readonly ways: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "sealed-16", kind: "sealed", meaning: "size-16 round contact, 4.5 mm pitch", maxA: 13, ways: "2 3 4 6 8 12", source: from["remembered-trade"], place: "per cavity", confidence: "memory" },
  { id: "sealed-1.5", kind: "sealed", meaning: "1.5 mm pin, single row", maxA: 14, ways: "1 2 3 4 5 6", source: from["contact-listing"], place: "per cavity", confidence: "secondary" },
  { id: "sealed-2.8", kind: "sealed", meaning: "2.8 mm blade", maxA: 20, ways: "2", source: from["remembered-trade"], place: "per cavity", confidence: "memory" },
  { id: "sealed-20", kind: "sealed", meaning: "size-20 round contact", maxA: 7.5, ways: "2 3 4 6 8 12", source: from["remembered-trade"], place: "per cavity", confidence: "memory" },
  { id: "sealed-12", kind: "sealed", meaning: "size-12 round contact", maxA: 25, ways: "2 4", source: from["remembered-trade"], place: "per cavity", confidence: "memory" },
  { id: "block-2.8", kind: "unsealed", meaning: "2.8 mm latched block", maxA: 5, ways: "2 3 4 6 9", source: from["ul310-catalogue"], place: "16 AWG row", confidence: "seen" },
  { id: "block-6.3", kind: "unsealed", meaning: "6.3 mm latched block", maxA: 20, ways: "1 2 3 4 6 8", source: from["ul310-catalogue"], place: "12 AWG row", confidence: "seen" },
  { id: "bullet-joint", kind: "unsealed", meaning: "multi-way bullet joint", maxA: 15, ways: "2 4 8", source: from["remembered-trade"], place: "per way", confidence: "memory" },
] as const satisfies readonly ConnectorClassesRow[];

export const connectorClasses: readonly ConnectorClassesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const connectorClassesUnits = {
  maxA: "A",
} as const;
