// Generated from data/batteryRules.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "battery-advice-page": "vehicle battery advice page",
  "battery-monitor-manual": "battery monitor manual p. 26 and a battery shop page",
  "cca-definition": "BCI / SAE definition: amps for 30 s at -18 C to 7.2 V",
  "deep-cycle-sheet": "6 V flooded deep-cycle battery data sheet",
  "own-rule": "own rule of this program",
  "question-pages": "question-and-answer pages; weak",
  "remembered-trade": "remembered, common trade listing; not found in a text",
  "sealed-40ah-sheet": "battery maker's page, 12 V 40 Ah sealed: under 8 mohm",
  "tm-5-4210": "TM 5-4210-230-14&P-1 table 3",
} as const;

export interface BatteryRulesRow {
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
  { id: "cca-volts", meaning: "drop of a 12 V battery at its CCA, 12.7 to 7.2 V: R(-18 C) <= this / CCA", value: 5.5, unit: "V", source: from["cca-definition"], place: "definition", confidence: "derived", note: null },
  { id: "warm-share-low", meaning: "internal resistance at 25 C over that at -18 C, low", value: 0.4, unit: "ratio", source: from["remembered-trade"], place: "rule", confidence: "derived", note: "agrees with 40 % cranking power at -18 C" },
  { id: "warm-share-high", meaning: "internal resistance at 25 C over that at -18 C, high", value: 0.5, unit: "ratio", source: from["remembered-trade"], place: "rule", confidence: "derived", note: null },
  { id: "resistance-by-capacity", meaning: "12 V sealed lead-acid, full, 25 C: R <= this / capacity", value: 0.32, unit: "ohm Ah", source: from["sealed-40ah-sheet"], place: "internal resistance", confidence: "seen", note: "for cranking sag; for the largest short-circuit current use half" },
  { id: "short-circuit-share", meaning: "share of that resistance used for the largest short-circuit current", value: 0.5, unit: "ratio", source: from["own-rule"], place: "bound", confidence: "own", note: null },
  { id: "cold-power-27", meaning: "cranking power at 27 C", value: 1, unit: "ratio", source: from["tm-5-4210"], place: "table 3", confidence: "seen", note: null },
  { id: "cold-power-0", meaning: "cranking power at 0 C", value: 0.65, unit: "ratio", source: from["tm-5-4210"], place: "table 3", confidence: "seen", note: null },
  { id: "cold-power--18", meaning: "cranking power at -18 C", value: 0.4, unit: "ratio", source: from["tm-5-4210"], place: "table 3", confidence: "seen", note: null },
  { id: "cold-power--29", meaning: "cranking power at -29 C", value: 0.2, unit: "ratio", source: from["tm-5-4210"], place: "table 3", confidence: "seen", note: null },
  { id: "engine-demand-27", meaning: "engine demand at 27 C", value: 1, unit: "ratio", source: from["question-pages"], place: "garage advice", confidence: "secondary", note: null },
  { id: "engine-demand-0", meaning: "engine demand at 0 C", value: 1.55, unit: "ratio", source: from["question-pages"], place: "garage advice", confidence: "secondary", note: null },
  { id: "engine-demand--18", meaning: "engine demand at -18 C", value: 2.1, unit: "ratio", source: from["question-pages"], place: "garage advice", confidence: "secondary", note: null },
  { id: "engine-demand--29", meaning: "engine demand at -29 C", value: 3.5, unit: "ratio", source: from["question-pages"], place: "garage advice", confidence: "secondary", note: null },
  { id: "peukert-flooded", meaning: "Peukert exponent, flooded, default", value: 1.25, unit: "exponent", source: from["battery-monitor-manual"], place: "1.2 to 1.6", confidence: "seen", note: null },
  { id: "peukert-agm", meaning: "Peukert exponent, AGM", value: 1.1, unit: "exponent", source: from["battery-monitor-manual"], place: "1.05 to 1.15", confidence: "seen", note: null },
  { id: "charge-efficiency", meaning: "charge time: hours = this x Ah x fraction / charger amps", value: 1.6, unit: "ratio", source: from["battery-advice-page"], place: "charge time", confidence: "secondary", note: null },
  { id: "self-discharge-month", meaning: "self discharge of a flooded battery a month, most", value: 0.15, unit: "ratio", source: from["deep-cycle-sheet"], place: "5 to 15 %", confidence: "seen", note: null },
  { id: "bulk-flooded", meaning: "bulk charge current over capacity, flooded", value: 0.1, unit: "ratio", source: from["remembered-trade"], place: "charge acceptance", confidence: "memory", note: null },
  { id: "bulk-agm", meaning: "bulk charge current over capacity, AGM", value: 0.3, unit: "ratio", source: from["remembered-trade"], place: "charge acceptance", confidence: "memory", note: null },
  { id: "drain-share", meaning: "share of capacity a standing drain may take before laying up", value: 0.3, unit: "ratio", source: from["own-rule"], place: "days rule", confidence: "derived", note: null },
] as const satisfies readonly BatteryRulesRow[];

export const batteryRules: readonly BatteryRulesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const batteryRulesUnits = {
  value: null,
} as const;
