// Generated from data/aircraftWires.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "faa-ac43-13-1b": "FAA AC 43.13-1B Change 1 (2001), chapter 11",
} as const;

export interface AircraftWiresRow {
  readonly id: string;
  readonly bundle105A: number;
  readonly bundle150A: number | null;
  readonly bundle200A: number | null;
  readonly ohmPerThousandFootOhm: number;
  readonly maxOhmPerKm20: number;
  readonly areaCircularMils: number;
  readonly areaMm2: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "24", bundle105A: 2.5, bundle150A: 4, bundle200A: 5, ohmPerThousandFootOhm: 28.4, maxOhmPerKm20: 93.1759, areaCircularMils: 475, areaMm2: 0.2407, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "22", bundle105A: 3, bundle150A: 5, bundle200A: 6, ohmPerThousandFootOhm: 16.2, maxOhmPerKm20: 53.1496, areaCircularMils: 755, areaMm2: 0.3826, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "20", bundle105A: 4, bundle150A: 7, bundle200A: 9, ohmPerThousandFootOhm: 9.88, maxOhmPerKm20: 32.4147, areaCircularMils: 1216, areaMm2: 0.6162, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "18", bundle105A: 6, bundle150A: 9, bundle200A: 12, ohmPerThousandFootOhm: 6.23, maxOhmPerKm20: 20.4396, areaCircularMils: 1900, areaMm2: 0.9627, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "16", bundle105A: 7, bundle150A: 11, bundle200A: 14, ohmPerThousandFootOhm: 4.81, maxOhmPerKm20: 15.7808, areaCircularMils: 2426, areaMm2: 1.2293, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "14", bundle105A: 10, bundle150A: 14, bundle200A: 18, ohmPerThousandFootOhm: 3.06, maxOhmPerKm20: 10.0394, areaCircularMils: 3831, areaMm2: 1.9412, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "12", bundle105A: 13, bundle150A: 19, bundle200A: 25, ohmPerThousandFootOhm: 2.02, maxOhmPerKm20: 6.6273, areaCircularMils: 5874, areaMm2: 2.9764, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "10", bundle105A: 17, bundle150A: 26, bundle200A: 32, ohmPerThousandFootOhm: 1.26, maxOhmPerKm20: 4.1339, areaCircularMils: 9354, areaMm2: 4.7397, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "8", bundle105A: 38, bundle150A: 57, bundle200A: 71, ohmPerThousandFootOhm: 0.7, maxOhmPerKm20: 2.2966, areaCircularMils: 16983, areaMm2: 8.6054, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "6", bundle105A: 50, bundle150A: 76, bundle200A: 97, ohmPerThousandFootOhm: 0.44, maxOhmPerKm20: 1.4436, areaCircularMils: 26818, areaMm2: 13.5889, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "4", bundle105A: 68, bundle150A: 103, bundle200A: 133, ohmPerThousandFootOhm: 0.28, maxOhmPerKm20: 0.9186, areaCircularMils: 42615, areaMm2: 21.5933, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "2", bundle105A: 95, bundle150A: 141, bundle200A: 179, ohmPerThousandFootOhm: 0.18, maxOhmPerKm20: 0.5906, areaCircularMils: 66500, areaMm2: 33.696, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "1", bundle105A: 113, bundle150A: 166, bundle200A: 210, ohmPerThousandFootOhm: 0.15, maxOhmPerKm20: 0.4921, areaCircularMils: 81700, areaMm2: 41.398, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "1/0", bundle105A: 128, bundle150A: 192, bundle200A: 243, ohmPerThousandFootOhm: 0.12, maxOhmPerKm20: 0.3937, areaCircularMils: 104500, areaMm2: 52.9509, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "2/0", bundle105A: 147, bundle150A: 222, bundle200A: 285, ohmPerThousandFootOhm: 0.09, maxOhmPerKm20: 0.2953, areaCircularMils: 133000, areaMm2: 67.3921, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "3/0", bundle105A: 172, bundle150A: 262, bundle200A: 335, ohmPerThousandFootOhm: 0.07, maxOhmPerKm20: 0.2297, areaCircularMils: 166500, areaMm2: 84.3668, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
  { id: "4/0", bundle105A: 204, bundle150A: 310, bundle200A: 395, ohmPerThousandFootOhm: 0.06, maxOhmPerKm20: 0.1969, areaCircularMils: 210900, areaMm2: 106.8646, source: from["faa-ac43-13-1b"], place: "table 11-9", confidence: "seen" },
] as const satisfies readonly AircraftWiresRow[];

export const aircraftWires: readonly AircraftWiresRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const aircraftWiresUnits = {
  bundle105A: "A",
  bundle150A: "A",
  bundle200A: "A",
  ohmPerThousandFootOhm: "ohm",
  maxOhmPerKm20: "ohm/km",
  areaCircularMils: "cmil",
  areaMm2: "mm2",
} as const;
