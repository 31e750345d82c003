// Generated from data/lampLaws.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "lamp-rerating": "lamp rerating article citing a standard handbook for electrical engineers",
  "lighting-maker-table": "lighting maker's page of light against operating volts at 13.5 V",
  "own-rule": "own rule of this program",
} as const;

export interface LampLawsRow {
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
  { id: "current-exponent", meaning: "I ~ V^x", value: 0.55, unit: "exponent", source: from["lamp-rerating"], place: "p. 22-8", confidence: "secondary", note: null },
  { id: "current-smoothing", meaning: "eps in I = In u (u^2 + eps^2)^((x-1)/2), u = V / Vn: keeps the law smooth through zero volts", value: 0.004, unit: "ratio", source: from["own-rule"], place: "filament law", confidence: "own", note: null },
  { id: "power-exponent", meaning: "P ~ V^x", value: 1.6, unit: "exponent", source: from["lamp-rerating"], place: "p. 22-8", confidence: "secondary", note: "1.55 follows from the current law" },
  { id: "light-exponent", meaning: "light ~ V^x, the smaller loss", value: 3.4, unit: "exponent", source: from["lamp-rerating"], place: "p. 22-8", confidence: "secondary", note: null },
  { id: "light-exponent-high", meaning: "light ~ V^x, the larger loss", value: 3.9, unit: "exponent", source: from["lighting-maker-table"], place: "85 % volts gives 53 % light", confidence: "seen", note: null },
  { id: "life-exponent", meaning: "life ~ V^x", value: -13, unit: "exponent", source: from["lamp-rerating"], place: "p. 22-8", confidence: "secondary", note: "-12 to -16; not below 90 % volts for halogens" },
  { id: "colour-exponent", meaning: "colour temperature ~ V^x", value: 0.42, unit: "exponent", source: from["lamp-rerating"], place: "p. 22-8", confidence: "secondary", note: null },
  { id: "lit-share", meaning: "share of rated power from which a lamp is called lit", value: 0.25, unit: "ratio", source: from["own-rule"], place: "contract", confidence: "own", note: null },
] as const satisfies readonly LampLawsRow[];

export const lampLaws: readonly LampLawsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const lampLawsUnits = {
  value: null,
} as const;
