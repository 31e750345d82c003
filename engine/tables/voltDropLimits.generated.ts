// Generated from data/voltDropLimits.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "drop-defaults": "proposed here: under the published vehicle limits; half a volt costs 12 to 14 % of the light",
  "lighting-maker-earths": "vehicle lighting maker's page on earth faults, 12 V, as listed in an open table",
} as const;

export interface VoltDropLimitsRow {
  readonly id: string;
  readonly meaning: string;
  readonly limit12V: number;
  readonly wireShare12V: number;
  readonly limit6V: number;
  readonly wireShare6V: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "headlamp", meaning: "headlamp, battery to lamp and back", limit12V: 0.5, wireShare12V: 0.3, limit6V: 0.25, wireShare6V: 0.15, source: from["drop-defaults"], place: "defaults", confidence: "derived" },
  { id: "tail-signal", meaning: "tail, brake and signal lamps", limit12V: 0.5, wireShare12V: 0.3, limit6V: 0.25, wireShare6V: 0.15, source: from["drop-defaults"], place: "defaults", confidence: "derived" },
  { id: "charge", meaning: "charging lead", limit12V: 0.2, wireShare12V: 0.2, limit6V: 0.1, wireShare6V: 0.1, source: from["drop-defaults"], place: "defaults", confidence: "derived" },
  { id: "ignition", meaning: "ignition feed and return", limit12V: 0.3, wireShare12V: 0.2, limit6V: 0.15, wireShare6V: 0.1, source: from["drop-defaults"], place: "defaults", confidence: "derived" },
  { id: "starter", meaning: "starter loop at cranking current", limit12V: 0.5, wireShare12V: 0.3, limit6V: 0.25, wireShare6V: 0.15, source: from["drop-defaults"], place: "defaults", confidence: "derived" },
  { id: "solenoid-control", meaning: "starter solenoid control circuit", limit12V: 1.5, wireShare12V: 1.5, limit6V: 0.75, wireShare6V: 0.75, source: from["lighting-maker-earths"], place: "ignition switch to starter control terminal", confidence: "secondary" },
  { id: "other", meaning: "any other circuit", limit12V: 0.5, wireShare12V: 0.3, limit6V: 0.25, wireShare6V: 0.15, source: from["drop-defaults"], place: "defaults", confidence: "derived" },
] as const satisfies readonly VoltDropLimitsRow[];

export const voltDropLimits: readonly VoltDropLimitsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const voltDropLimitsUnits = {
  limit12V: "V",
  wireShare12V: "V",
  limit6V: "V",
  wireShare6V: "V",
} as const;
