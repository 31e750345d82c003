// Generated from data/ringBarrels.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "din46234-quote": "DIN 46234 quoted in two open files",
  "remembered-trade": "remembered, common trade listing; not found in a text",
} as const;

export interface RingBarrelsRow {
  readonly id: string;
  readonly standard: string;
  readonly wireFromMm2: number;
  readonly wireToMm2: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "din-0.5-1", standard: "DIN 46234", wireFromMm2: 0.5, wireToMm2: 1, source: from["din46234-quote"], place: "class", confidence: "secondary" },
  { id: "din-1.5-2.5", standard: "DIN 46234", wireFromMm2: 1.5, wireToMm2: 2.5, source: from["din46234-quote"], place: "class", confidence: "secondary" },
  { id: "din-4-6", standard: "DIN 46234", wireFromMm2: 4, wireToMm2: 6, source: from["remembered-trade"], place: "class", confidence: "memory" },
  { id: "din-10", standard: "DIN 46234", wireFromMm2: 10, wireToMm2: 10, source: from["remembered-trade"], place: "class", confidence: "memory" },
  { id: "din-16", standard: "DIN 46234", wireFromMm2: 16, wireToMm2: 16, source: from["remembered-trade"], place: "class", confidence: "memory" },
  { id: "din-25", standard: "DIN 46234", wireFromMm2: 25, wireToMm2: 25, source: from["remembered-trade"], place: "class", confidence: "memory" },
  { id: "din-35", standard: "DIN 46234", wireFromMm2: 35, wireToMm2: 35, source: from["remembered-trade"], place: "class", confidence: "memory" },
] as const satisfies readonly RingBarrelsRow[];

export const ringBarrels: readonly RingBarrelsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const ringBarrelsUnits = {
  wireFromMm2: "mm2",
  wireToMm2: "mm2",
} as const;
