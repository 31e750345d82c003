// Generated from data/loads.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "ballast-note": "owners' club ballast note and a weak page",
  "coil-classes": "page on ignition coils: 5, 3 and 2 ohm primaries; amps by arithmetic",
  "gre-81-04": "UNECE GRE-81-04 equivalence report: at most 2 W",
  "led-rider-page": "rider page on lightening the load: 3 W against 25 W",
  "question-pages": "question-and-answer pages; weak",
  "remembered-trade": "remembered, common trade listing; not found in a text",
  "service-manuals": "vehicle service manuals",
} as const;

export interface LoadsRow {
  readonly id: string;
  readonly load: string;
  readonly systemV: number;
  readonly typicalA: number | null;
  readonly lowA: number | null;
  readonly highA: number | null;
  readonly lowOhm: number | null;
  readonly highOhm: number | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
  readonly note: string | null;
}

const rows = [
  { id: "coil-12", load: "ignition coil, points closed, engine stopped", systemV: 12, typicalA: 3, lowA: 2.4, highA: 4, lowOhm: 3, highOhm: 5, source: from["coil-classes"], place: "load list", confidence: "derived", note: "use V / R for the worst case" },
  { id: "coil-6", load: "ignition coil, points closed", systemV: 6, typicalA: 3.5, lowA: 3, highA: 4, lowOhm: 1.5, highOhm: 2, source: from["remembered-trade"], place: "load list", confidence: "memory", note: null },
  { id: "ballast-coil-12", load: "8 V coil with ballast, points closed", systemV: 12, typicalA: null, lowA: null, highA: null, lowOhm: 1.2, highOhm: 1.5, source: from["ballast-note"], place: "load list", confidence: "secondary", note: "ohms are of the ballast; full volts only while cranking" },
  { id: "tci-12", load: "transistor ignition, each coil", systemV: 12, typicalA: 2, lowA: 1, highA: 4, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: null },
  { id: "cdi-12", load: "capacitor ignition fed by the battery", systemV: 12, typicalA: 1, lowA: 0.5, highA: 1.5, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: "the magneto kind takes nothing" },
  { id: "horn-car-12", load: "horn, car type", systemV: 12, typicalA: 5, lowA: 4.5, highA: 5.5, lowOhm: null, highOhm: null, source: from["service-manuals"], place: "load list", confidence: "seen", note: "18 A if its points stick shut" },
  { id: "horn-12", load: "horn, motorcycle disc", systemV: 12, typicalA: 2.5, lowA: 1.5, highA: 3.5, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: null },
  { id: "horn-6", load: "horn, motorcycle disc", systemV: 6, typicalA: 4.5, lowA: 3, highA: 6, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: null },
  { id: "air-horn-12", load: "air horn compressor", systemV: 12, typicalA: 18, lowA: 15, highA: 20, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: "needs a relay" },
  { id: "starter-125", load: "starter, 125 single", systemV: 12, typicalA: 60, lowA: 50, highA: 70, lowOhm: null, highOhm: null, source: from["question-pages"], place: "load list", confidence: "secondary", note: null },
  { id: "starter-250", load: "starter, 250", systemV: 12, typicalA: 100, lowA: 100, highA: 120, lowOhm: null, highOhm: null, source: from["question-pages"], place: "load list", confidence: "secondary", note: null },
  { id: "starter-600", load: "starter, over 600", systemV: 12, typicalA: 150, lowA: 150, highA: null, lowOhm: null, highOhm: null, source: from["question-pages"], place: "load list", confidence: "secondary", note: null },
  { id: "starter-800-v", load: "starter, 800 V-twin", systemV: 12, typicalA: 130, lowA: 65, highA: 130, lowOhm: null, highOhm: null, source: from["question-pages"], place: "load list", confidence: "secondary", note: "130 A cold for 4 s, 65 A warm" },
  { id: "starter-big-v", load: "starter, big V-twin, limits", systemV: 12, typicalA: null, lowA: 90, highA: 400, lowOhm: null, highOhm: null, source: from["service-manuals"], place: "load list", confidence: "seen", note: "free running 90 A at 11.5 V; stall 400 A at 2.4 V" },
  { id: "starter-relay-12", load: "starter relay coil, small", systemV: 12, typicalA: 0.2, lowA: 0.13, highA: 0.24, lowOhm: 50, highOhm: 90, source: from["service-manuals"], place: "load list", confidence: "seen", note: null },
  { id: "starter-solenoid-12", load: "starter solenoid coil, large", systemV: 12, typicalA: 3, lowA: 2, highA: 4, lowOhm: 3, highOhm: 6, source: from["remembered-trade"], place: "load list", confidence: "memory", note: null },
  { id: "solenoid-pull-12", load: "pre-engaged solenoid, pulling in", systemV: 12, typicalA: 35, lowA: 20, highA: 60, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: "then 8 to 12 A holding" },
  { id: "instrument-lamp-12", load: "instrument or warning lamp", systemV: 12, typicalA: 0.15, lowA: 0.1, highA: 0.3, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: null },
  { id: "fuel-pump-12", load: "fuel pump, low pressure", systemV: 12, typicalA: 1.5, lowA: 1, highA: 2, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: null },
  { id: "injection-pump-12", load: "fuel pump, injection", systemV: 12, typicalA: 4.5, lowA: 3, highA: 6, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: null },
  { id: "fan-12", load: "radiator fan", systemV: 12, typicalA: 5, lowA: 3, highA: 8, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: "2 to 3 times at start" },
  { id: "grips-12", load: "heated grips, pair", systemV: 12, typicalA: 3, lowA: 2.5, highA: 4, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: null },
  { id: "regulator-idle-12", load: "electronic regulator, standing", systemV: 12, typicalA: 0.001, lowA: null, highA: null, lowOhm: null, highOhm: null, source: from["remembered-trade"], place: "load list", confidence: "memory", note: null },
  { id: "relay-coil-12", load: "cube relay coil", systemV: 12, typicalA: 0.15, lowA: 0.12, highA: 0.15, lowOhm: 80, highOhm: 100, source: from["remembered-trade"], place: "load list", confidence: "memory", note: null },
  { id: "led-tail-12", load: "LED brake and tail pair", systemV: 12, typicalA: 0.25, lowA: null, highA: null, lowOhm: null, highOhm: null, source: from["led-rider-page"], place: "load list", confidence: "secondary", note: null },
  { id: "led-w5w-12", load: "LED substitute for W5W", systemV: 12, typicalA: 0.17, lowA: null, highA: 0.17, lowOhm: null, highOhm: null, source: from["gre-81-04"], place: "load list", confidence: "seen", note: null },
] as const satisfies readonly LoadsRow[];

export const loads: readonly LoadsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const loadsUnits = {
  systemV: "V",
  typicalA: "A",
  lowA: "A",
  highA: "A",
  lowOhm: "ohm",
  highOhm: "ohm",
} as const;
