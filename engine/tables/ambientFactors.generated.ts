// Generated from data/ambientFactors.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "iec60364-5-52": "IEC 60364-5-52, as carried in two independent open transcriptions",
} as const;

export interface AmbientFactorsRow {
  readonly id: string;
  readonly ambientC: number;
  readonly pvc70Ratio: number | null;
  readonly xlpe90Ratio: number | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "10C", ambientC: 10, pvc70Ratio: 1.22, xlpe90Ratio: 1.15, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "15C", ambientC: 15, pvc70Ratio: 1.17, xlpe90Ratio: 1.12, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "20C", ambientC: 20, pvc70Ratio: 1.12, xlpe90Ratio: 1.08, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "25C", ambientC: 25, pvc70Ratio: 1.06, xlpe90Ratio: 1.04, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "30C", ambientC: 30, pvc70Ratio: 1, xlpe90Ratio: 1, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "35C", ambientC: 35, pvc70Ratio: 0.94, xlpe90Ratio: 0.96, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "40C", ambientC: 40, pvc70Ratio: 0.87, xlpe90Ratio: 0.91, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "45C", ambientC: 45, pvc70Ratio: 0.79, xlpe90Ratio: 0.87, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "50C", ambientC: 50, pvc70Ratio: 0.71, xlpe90Ratio: 0.82, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "55C", ambientC: 55, pvc70Ratio: 0.61, xlpe90Ratio: 0.76, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "60C", ambientC: 60, pvc70Ratio: 0.5, xlpe90Ratio: 0.71, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "65C", ambientC: 65, pvc70Ratio: null, xlpe90Ratio: 0.65, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "70C", ambientC: 70, pvc70Ratio: null, xlpe90Ratio: 0.58, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "75C", ambientC: 75, pvc70Ratio: null, xlpe90Ratio: 0.5, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
  { id: "80C", ambientC: 80, pvc70Ratio: null, xlpe90Ratio: 0.41, source: from["iec60364-5-52"], place: "table B.52.14", confidence: "secondary" },
] as const satisfies readonly AmbientFactorsRow[];

export const ambientFactors: readonly AmbientFactorsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const ambientFactorsUnits = {
  ambientC: "C",
  pvc70Ratio: "ratio",
  xlpe90Ratio: "ratio",
} as const;
