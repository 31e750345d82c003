// Generated from data/kFactors.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "iec60949": "IEC 60949 and IEC 60364-5-54 adiabatic law, constants quoted in two texts",
  "nen1010-k": "NEN 1010 tables of the adiabatic k (the Dutch text of IEC 60364-5-54), as reproduced on a public page",
  "remembered-textbook": "textbook constant, remembered",
} as const;

export interface KFactorsRow {
  readonly id: string;
  readonly meaning: string;
  readonly startC: number;
  readonly endC: number;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "pvc-70-160", meaning: "PVC from its 70 C limit", startC: 70, endC: 160, value: 115, unit: "A s0.5/mm2", source: from["iec60949"], place: "IEC 60364-4-43 and 5-54", confidence: "secondary" },
  { id: "pvc-70-140", meaning: "PVC over 300 mm2", startC: 70, endC: 140, value: 103, unit: "A s0.5/mm2", source: from["remembered-textbook"], place: "IEC 60364-4-43 and 5-54", confidence: "memory" },
  { id: "xlpe-90-250", meaning: "XLPE or EPR", startC: 90, endC: 250, value: 143, unit: "A s0.5/mm2", source: from["iec60949"], place: "IEC 60364-4-43 and 5-54", confidence: "secondary" },
  { id: "rubber-60-200", meaning: "rubber 60 C", startC: 60, endC: 200, value: 141, unit: "A s0.5/mm2", source: from["remembered-textbook"], place: "IEC 60364-4-43 and 5-54", confidence: "memory" },
  { id: "rubber-85-220", meaning: "rubber 85 C", startC: 85, endC: 220, value: 134, unit: "A s0.5/mm2", source: from["nen1010-k"], place: "NEN 1010 section 543", confidence: "secondary" },
  { id: "pvc-30-160", meaning: "PVC cold at 30 C", startC: 30, endC: 160, value: 143, unit: "A s0.5/mm2", source: from["nen1010-k"], place: "NEN 1010 section 543", confidence: "secondary" },
] as const satisfies readonly KFactorsRow[];

export const kFactors: readonly KFactorsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const kFactorsUnits = {
  startC: "C",
  endC: "C",
  value: null,
} as const;
