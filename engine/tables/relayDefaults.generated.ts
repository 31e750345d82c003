// Generated from data/relayDefaults.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "remembered-trade": "remembered, common trade listing; not found in a text",
} as const;

export interface RelayDefaultsRow {
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
  { id: "coil-current", meaning: "coil of a 12 V cube relay", value: 0.15, unit: "A", source: from["remembered-trade"], place: "working default", confidence: "memory", note: null },
  { id: "coil-resistance", meaning: "coil of a 12 V cube relay", value: 85, unit: "ohm", source: from["remembered-trade"], place: "80 to 100 ohm", confidence: "memory", note: null },
  { id: "normally-open-rated", meaning: "normally open contact, resistive", value: 30, unit: "A", source: from["remembered-trade"], place: "30 to 40 A", confidence: "memory", note: null },
  { id: "normally-closed-rated", meaning: "normally closed contact, resistive", value: 20, unit: "A", source: from["remembered-trade"], place: "20 to 30 A", confidence: "memory", note: null },
] as const satisfies readonly RelayDefaultsRow[];

export const relayDefaults: readonly RelayDefaultsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const relayDefaultsUnits = {
  value: null,
} as const;
