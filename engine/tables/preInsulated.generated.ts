// Generated from data/preInsulated.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "remembered-trade": "remembered, common trade listing; not found in a text",
  "ring-listing": "ring terminal category listing",
} as const;

export interface PreInsulatedRow {
  readonly id: string;
  readonly colour: string;
  readonly wireFromMm2: number;
  readonly wireToMm2: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
  readonly note: string | null;
}

const rows = [
  { id: "red", colour: "red", wireFromMm2: 0.5, wireToMm2: 1.5, source: from["ring-listing"], place: "range", confidence: "secondary", note: null },
  { id: "blue", colour: "blue", wireFromMm2: 1.5, wireToMm2: 2.5, source: from["ring-listing"], place: "range", confidence: "secondary", note: null },
  { id: "yellow", colour: "yellow", wireFromMm2: 4, wireToMm2: 6, source: from["remembered-trade"], place: "range", confidence: "memory", note: "the listing seen says 2.5 to 6: 3 mm2 is the edge" },
  { id: "yellow-wide", colour: "yellow", wireFromMm2: 2.5, wireToMm2: 6, source: from["ring-listing"], place: "range", confidence: "secondary", note: "the wider of two conventions" },
] as const satisfies readonly PreInsulatedRow[];

export const preInsulated: readonly PreInsulatedRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const preInsulatedUnits = {
  wireFromMm2: "mm2",
  wireToMm2: "mm2",
} as const;
