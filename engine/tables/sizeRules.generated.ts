// Generated from data/sizeRules.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "common-practice": "common practice of the trade",
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
  { id: "charging-volts", meaning: "battery volts while charging over nominal volts, where no regulator says", value: 1.2, unit: "ratio", source: from["common-practice"], place: "regulator setting", confidence: "common practice", note: "14.4 V on 12 V" },
  { id: "lit-share", meaning: "share of its largest current a load draws where it counts as on", value: 0.5, unit: "ratio", source: from["own-rule"], place: "volt drop", confidence: "own", note: null },
  { id: "loaded-share", meaning: "share of what it may carry in the bundle above which a wire counts as loaded", value: 0.5, unit: "ratio", source: from["own-rule"], place: "loom practice", confidence: "own", note: null },
  { id: "cranking-time", meaning: "longest push of the starter button that cables are sized for", value: 10, unit: "s", source: from["own-rule"], place: "starter cables", confidence: "own", note: "a starter is rested after it" },
  { id: "drop-largest", meaning: "largest copper a wire of a loom is given for volt drop alone", value: 3, unit: "mm2", source: from["own-rule"], place: "volt drop", confidence: "own", note: "blades and bullets take no more; past it a relay, a second feed or a better contact is the remedy. Current and fuses may still ask for more, and cables of a starter are free of it" },
] as const satisfies readonly SizeRulesRow[];

export const sizeRules: readonly SizeRulesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const sizeRulesUnits = {
  value: null,
} as const;
