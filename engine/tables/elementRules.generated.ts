// Generated from data/elementRules.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "own-rule": "own rule of this program",
  "remembered-trade": "remembered, common trade listing; not found in a text",
} as const;

export interface ElementRulesRow {
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
  { id: "relay-pull-in", meaning: "coil volts over system volts at which a relay pulls, where nobody stated them", value: 0.6, unit: "ratio", source: from["remembered-trade"], place: "relay coil", confidence: "memory", note: "cube relays are sold to pull by 0.6 to 0.65 of nominal" },
  { id: "relay-drop-out", meaning: "coil volts over system volts at which it lets go, where nobody stated them", value: 0.2, unit: "ratio", source: from["remembered-trade"], place: "relay coil", confidence: "memory", note: "let-go is sold as at least 0.1 of nominal" },
  { id: "diode-saturation", meaning: "saturation current of the silicon power diode assumed", value: 1e-9, unit: "A", source: from["own-rule"], place: "junction law", confidence: "own", note: "gives about 0.9 V at 1 A with the two rows below" },
  { id: "diode-ideality", meaning: "ideality factor of that diode", value: 1.8, unit: "ratio", source: from["own-rule"], place: "junction law", confidence: "own", note: null },
  { id: "diode-series", meaning: "series resistance of that diode", value: 0.02, unit: "ohm", source: from["own-rule"], place: "junction law", confidence: "own", note: null },
  { id: "led-junction-share", meaning: "share of an LED lamp's rated volts that its junctions take at rated current", value: 0.75, unit: "ratio", source: from["own-rule"], place: "LED law", confidence: "own", note: "three white junctions and a resistor on 12 V; the resistor takes the rest" },
  { id: "led-junction-volts", meaning: "volts of one LED junction", value: 3, unit: "V", source: from["own-rule"], place: "LED law", confidence: "own", note: null },
  { id: "led-ideality", meaning: "ideality factor of one LED junction", value: 2, unit: "ratio", source: from["own-rule"], place: "LED law", confidence: "own", note: null },
  { id: "ammeter", meaning: "resistance of an ammeter, where nobody stated it", value: 0.02, unit: "ohm", source: from["own-rule"], place: "meters", confidence: "own", note: null },
  { id: "voltmeter", meaning: "resistance of a voltmeter, where nobody stated it", value: 1000, unit: "ohm", source: from["own-rule"], place: "meters", confidence: "own", note: null },
  { id: "battery-half", meaning: "internal resistance of a half charged battery over that of a full one", value: 1.25, unit: "ratio", source: from["own-rule"], place: "battery states", confidence: "own", note: "the source says only that it climbs through discharge" },
  { id: "battery-weak", meaning: "internal resistance of a weak battery over that of a full one", value: 2, unit: "ratio", source: from["own-rule"], place: "battery states", confidence: "own", note: null },
  { id: "weak-charge", meaning: "charge of the battery called weak", value: 25, unit: "%", source: from["own-rule"], place: "battery states", confidence: "own", note: null },
  { id: "rectifier-drop", meaning: "volts a bridge rectifier takes, two junctions", value: 1.4, unit: "V", source: from["own-rule"], place: "generator line", confidence: "own", note: null },
  { id: "regulator-band", meaning: "from full output to none, a regulator moves this share of its set volts", value: 0.01, unit: "ratio", source: from["own-rule"], place: "generator line", confidence: "own", note: null },
  { id: "field-start", meaning: "field current under which an excited alternator is not trusted to start charging", value: 0.1, unit: "A", source: from["own-rule"], place: "generator line", confidence: "own", note: "a 4 W charge lamp passes about 0.3 A and a light-emitting diode about 0.02 A" },
] as const satisfies readonly ElementRulesRow[];

export const elementRules: readonly ElementRulesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const elementRulesUnits = {
  value: null,
} as const;
