// Generated from data/sizeRules.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "common-practice": "common practice of the trade",
  "geometry": "worked out here from strand count and diameter",
  "own-rule": "own rule of this program",
} as const;

export interface SizeRulesRow {
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
  { id: "mechanical-least", meaning: "smallest copper for a wire of a loom, for strength and for the hand that crimps it", value: 1, unit: "mm2", source: from["common-practice"], place: "loom sizes", confidence: "common practice", note: "counted strand by strand, so that a wire sold as 1 mm2 passes: see mechanical-trade-ratio" },
  { id: "mechanical-trade", meaning: "counted copper over trade size that still counts as that size", value: 0.95, unit: "ratio", source: from["own-rule"], place: "loom sizes", confidence: "own", note: "14/0.30 is sold as 1.0 and holds 0.990" },
  { id: "unpublished-resistance", meaning: "largest resistance of a cable over that of its counted copper where no table gives one", value: 1.08, unit: "ratio", source: from["geometry"], place: "reading of thirteen ISO 6722 sizes", confidence: "derived", note: "1.06 to 1.085" },
] as const satisfies readonly SizeRulesRow[];

export const sizeRules: readonly SizeRulesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const sizeRulesUnits = {
  value: null,
} as const;
