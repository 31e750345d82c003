// Generated from data/lampInrush.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "lamp-inrush-pages": "lamp technology page on starting current and a lamp-driver paper",
  "lamp-settle": "derived from a fall to twice the running current within 3 to 5 ms",
} as const;

export interface LampInrushRow {
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
  { id: "peak-least", meaning: "peak current over running current, least", value: 10, unit: "ratio", source: from["lamp-inrush-pages"], place: "inrush", confidence: "seen", note: null },
  { id: "peak-usual", meaning: "peak current over running current, usual", value: 14, unit: "ratio", source: from["lamp-inrush-pages"], place: "inrush", confidence: "seen", note: null },
  { id: "peak-most", meaning: "peak current over running current, most", value: 15, unit: "ratio", source: from["lamp-inrush-pages"], place: "inrush", confidence: "seen", note: null },
  { id: "cold-share-least", meaning: "cold over hot resistance, least", value: 0.0666667, unit: "ratio", source: from["lamp-inrush-pages"], place: "cold resistance", confidence: "secondary", note: "1/15" },
  { id: "cold-share-most", meaning: "cold over hot resistance, most", value: 0.1, unit: "ratio", source: from["lamp-inrush-pages"], place: "cold resistance", confidence: "secondary", note: "1/10" },
  { id: "settle", meaning: "time constant of the surge of a vehicle lamp", value: 0.004, unit: "s", source: from["lamp-settle"], place: "inrush decay", confidence: "derived", note: null },
] as const satisfies readonly LampInrushRow[];

export const lampInrush: readonly LampInrushRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const lampInrushUnits = {
  value: null,
} as const;
