// Generated from data/generatorPoints.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "dynamo-supplier-page": "dynamo supplier's troubleshooting page",
  "marine-engine-data": "marine engine technical data p. 83",
  "service-manuals": "vehicle service manuals",
} as const;

export interface GeneratorPointsRow {
  readonly id: string;
  readonly generator: string;
  readonly speedRpm: number;
  readonly atV: number | null;
  readonly atA: number | null;
  readonly condition: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "wound-1300", generator: "wound", speedRpm: 1300, atV: null, atA: 16, condition: "hot, 13.5 V", source: from["marine-engine-data"], place: "speed data", confidence: "seen" },
  { id: "wound-2500", generator: "wound", speedRpm: 2500, atV: null, atA: 41, condition: "hot, 13.5 V", source: from["marine-engine-data"], place: "speed data", confidence: "seen" },
  { id: "wound-5000", generator: "wound", speedRpm: 5000, atV: null, atA: 48, condition: "hot, 13.5 V", source: from["marine-engine-data"], place: "speed data", confidence: "seen" },
  { id: "small10-2500", generator: "small10", speedRpm: 2500, atV: 16, atA: null, condition: "no load, AC", source: from["service-manuals"], place: "speed data", confidence: "seen" },
  { id: "small10-3000", generator: "small10", speedRpm: 3000, atV: 19, atA: null, condition: "no load, AC", source: from["service-manuals"], place: "speed data", confidence: "seen" },
  { id: "small10-3600", generator: "small10", speedRpm: 3600, atV: 24, atA: null, condition: "no load, AC", source: from["service-manuals"], place: "speed data", confidence: "seen" },
  { id: "utility-1300", generator: "utility", speedRpm: 1300, atV: 18, atA: null, condition: "no load, AC per pair", source: from["service-manuals"], place: "speed data", confidence: "seen" },
  { id: "utility-3000", generator: "utility", speedRpm: 3000, atV: 42, atA: null, condition: "no load, AC per pair", source: from["service-manuals"], place: "speed data", confidence: "seen" },
  { id: "utility-5000", generator: "utility", speedRpm: 5000, atV: 64, atA: null, condition: "no load, AC per pair", source: from["service-manuals"], place: "speed data", confidence: "seen" },
  { id: "pm3-850-6000", generator: "pm3-850", speedRpm: 6000, atV: 115, atA: null, condition: "no load, AC per pair", source: from["service-manuals"], place: "speed data", confidence: "seen" },
  { id: "pm3-600-4000", generator: "pm3-600", speedRpm: 4000, atV: 63, atA: null, condition: "no load, AC per pair, middle of 53.5 to 72.5", source: from["service-manuals"], place: "speed data", confidence: "seen" },
  { id: "pm3-800-5000", generator: "pm3-800", speedRpm: 5000, atV: 70, atA: null, condition: "no load, AC, over", source: from["service-manuals"], place: "speed data", confidence: "seen" },
  { id: "dynamo-60-1400", generator: "dynamo-60", speedRpm: 1400, atV: 8, atA: null, condition: "7 to 9 V", source: from["dynamo-supplier-page"], place: "speed data", confidence: "secondary" },
  { id: "scooter-2500", generator: "scooter", speedRpm: 2500, atV: null, atA: 1.3, condition: "battery charge", source: from["service-manuals"], place: "speed data", confidence: "seen" },
  { id: "scooter-6000", generator: "scooter", speedRpm: 6000, atV: null, atA: 2, condition: "battery charge", source: from["service-manuals"], place: "speed data", confidence: "seen" },
] as const satisfies readonly GeneratorPointsRow[];

export const generatorPoints: readonly GeneratorPointsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const generatorPointsUnits = {
  speedRpm: "rpm",
  atV: "V",
  atA: "A",
} as const;
