// Generated from data/generators.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "alternator-test-paper": "paper on testing alternators; ratings remembered",
  "dynamo-supplier-page": "dynamo supplier's troubleshooting page",
  "marine-engine-data": "marine engine technical data p. 83",
  "owners-alternator-article": "owners' club article on 6 V to 12 V alternator conversion",
  "service-manuals": "vehicle service manuals",
} as const;

export interface GeneratorsRow {
  readonly id: string;
  readonly kind: string;
  readonly meaning: string;
  readonly systemV: number;
  readonly ratedW: number | null;
  readonly ratedA: number | null;
  readonly statorLowOhm: number | null;
  readonly statorHighOhm: number | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "dynamo-45", kind: "dynamo", meaning: "two-brush dynamo, smaller British", systemV: 6, ratedW: 45, ratedA: null, statorLowOhm: null, statorHighOhm: null, source: from["dynamo-supplier-page"], place: "generator data", confidence: "secondary" },
  { id: "dynamo-60", kind: "dynamo", meaning: "two-brush dynamo, larger British", systemV: 6, ratedW: 60, ratedA: null, statorLowOhm: null, statorHighOhm: null, source: from["dynamo-supplier-page"], place: "generator data", confidence: "secondary" },
  { id: "pm1-80", kind: "pm-single", meaning: "single-phase magnet alternator, 70 mm rotor", systemV: 6, ratedW: 80, ratedA: null, statorLowOhm: null, statorHighOhm: null, source: from["owners-alternator-article"], place: "generator data", confidence: "secondary" },
  { id: "pm1-110", kind: "pm-single", meaning: "single-phase magnet alternator, 74 mm rotor", systemV: 6, ratedW: 110, ratedA: null, statorLowOhm: null, statorHighOhm: null, source: from["owners-alternator-article"], place: "generator data", confidence: "secondary" },
  { id: "pm1-120", kind: "pm-single", meaning: "single-phase magnet alternator, 6 coils", systemV: 12, ratedW: 120, ratedA: 10.5, statorLowOhm: null, statorHighOhm: null, source: from["alternator-test-paper"], place: "generator data", confidence: "memory" },
  { id: "pm3-180", kind: "pm-three", meaning: "three-phase magnet alternator, 9 coils", systemV: 12, ratedW: 180, ratedA: 14.5, statorLowOhm: null, statorHighOhm: null, source: from["alternator-test-paper"], place: "generator data", confidence: "memory" },
  { id: "pm3-600", kind: "pm-three", meaning: "three-phase, 1990s 600 four", systemV: 12, ratedW: null, ratedA: null, statorLowOhm: 0.3, statorHighOhm: 0.4, source: from["service-manuals"], place: "generator data", confidence: "seen" },
  { id: "pm3-800", kind: "pm-three", meaning: "three-phase, 800 class", systemV: 12, ratedW: null, ratedA: null, statorLowOhm: 0.2, statorHighOhm: 1.5, source: from["service-manuals"], place: "generator data", confidence: "seen" },
  { id: "pm3-850", kind: "pm-three", meaning: "three-phase, 850 utility", systemV: 12, ratedW: null, ratedA: null, statorLowOhm: 0.11, statorHighOhm: 0.15, source: from["service-manuals"], place: "generator data", confidence: "seen" },
  { id: "wound", kind: "wound", meaning: "wound field, car type, for the shape of its curve", systemV: 12, ratedW: null, ratedA: 50, statorLowOhm: null, statorHighOhm: null, source: from["marine-engine-data"], place: "generator data", confidence: "seen" },
] as const satisfies readonly GeneratorsRow[];

export const generators: readonly GeneratorsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const generatorsUnits = {
  systemV: "V",
  ratedW: "W",
  ratedA: "A",
  statorLowOhm: "ohm",
  statorHighOhm: "ohm",
} as const;
