// Generated from data/regulators.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "dynamo-supplier-page": "dynamo supplier's troubleshooting page",
  "lithium-notes": "lithium battery charger maker's notes",
  "marine-engine-data": "marine engine technical data p. 83",
  "own-rule": "own rule of this program",
  "regulator-repairer": "regulator repairer's page on 12 V charging",
  "remembered-trade": "remembered, common trade listing; not found in a text",
  "service-manuals": "vehicle service manuals",
  "standby-note": "standby-power maker's note: -3 mV/C a cell",
} as const;

export interface RegulatorsRow {
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
  { id: "shunt-low", meaning: "regulated volts of a shunt unit, least, 5000 rpm", value: 14, unit: "V", source: from["service-manuals"], place: "service data", confidence: "seen", note: null },
  { id: "shunt-high", meaning: "regulated volts of a shunt unit, most, 5000 rpm", value: 15.5, unit: "V", source: from["service-manuals"], place: "service data", confidence: "seen", note: null },
  { id: "set-point", meaning: "set point at 20 to 25 C, default for 12 V", value: 14.4, unit: "V", source: from["marine-engine-data"], place: "14.4 +0.3 V at 20 C", confidence: "seen", note: null },
  { id: "temperature", meaning: "change of set point per kelvin, 12 V, default", value: -18, unit: "mV/K", source: from["standby-note"], place: "per cell", confidence: "secondary", note: "half at 6 V; -10 to -30 in other texts" },
  { id: "temperature-band", meaning: "band round that", value: 8, unit: "mV/K", source: from["own-rule"], place: "of four texts", confidence: "derived", note: null },
  { id: "flooded-low", meaning: "charge band of a flooded battery, least", value: 13.9, unit: "V", source: from["regulator-repairer"], place: "20 C", confidence: "secondary", note: null },
  { id: "flooded-high", meaning: "charge band of a flooded battery, most", value: 14.5, unit: "V", source: from["regulator-repairer"], place: "20 C", confidence: "secondary", note: null },
  { id: "agm-low", meaning: "charge band of an AGM battery, least", value: 14.2, unit: "V", source: from["regulator-repairer"], place: "25 C", confidence: "secondary", note: null },
  { id: "agm-high", meaning: "charge band of an AGM battery, most", value: 14.9, unit: "V", source: from["regulator-repairer"], place: "25 C", confidence: "secondary", note: null },
  { id: "lithium-most", meaning: "charge volts never above, four-cell lithium iron phosphate", value: 14.6, unit: "V", source: from["lithium-notes"], place: "limit", confidence: "secondary", note: null },
  { id: "zener-start", meaning: "zener shunt of a 1960s-70s British 12 V machine, starts", value: 13.5, unit: "V", source: from["remembered-trade"], place: "zener", confidence: "memory", note: null },
  { id: "zener-full", meaning: "zener shunt, full sink", value: 15, unit: "V", source: from["remembered-trade"], place: "zener", confidence: "memory", note: null },
  { id: "dynamo-cut-out", meaning: "cut-out of a 6 V dynamo closes at", value: 6.3, unit: "V", source: from["dynamo-supplier-page"], place: "cut-out", confidence: "secondary", note: null },
  { id: "charge-6V-low", meaning: "regulated volts of a 6 V machine, hot, least", value: 7, unit: "V", source: from["remembered-trade"], place: "6 V charging", confidence: "memory", note: null },
  { id: "charge-6V-high", meaning: "regulated volts of a 6 V machine, hot, most", value: 7.5, unit: "V", source: from["remembered-trade"], place: "6 V charging", confidence: "memory", note: null },
] as const satisfies readonly RegulatorsRow[];

export const regulators: readonly RegulatorsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const regulatorsUnits = {
  value: null,
} as const;
