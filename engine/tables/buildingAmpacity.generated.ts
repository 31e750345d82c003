// Generated from data/buildingAmpacity.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "iec60364-5-52": "IEC 60364-5-52, as carried in two independent open transcriptions",
} as const;

export interface BuildingAmpacityRow {
  readonly id: string;
  readonly nominalMm2: number;
  readonly pvcMethodA1A: number;
  readonly pvcMethodB1A: number;
  readonly xlpeMethodB1A: number;
  readonly pvcMethodCA: string;
  readonly pvcMethodCAConfidence: Confidence;
  readonly xlpeMethodCA: string;
  readonly xlpeMethodCAConfidence: Confidence;
  readonly ambientC: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "1.5", nominalMm2: 1.5, pvcMethodA1A: 14.5, pvcMethodB1A: 17.5, xlpeMethodB1A: 23, pvcMethodCA: "19.5", pvcMethodCAConfidence: "memory", xlpeMethodCA: "24", xlpeMethodCAConfidence: "memory", ambientC: 30, source: from["iec60364-5-52"], place: "tables B.52.2 and B.52.3", confidence: "secondary" },
  { id: "2.5", nominalMm2: 2.5, pvcMethodA1A: 19.5, pvcMethodB1A: 24, xlpeMethodB1A: 31, pvcMethodCA: "27", pvcMethodCAConfidence: "memory", xlpeMethodCA: "33", xlpeMethodCAConfidence: "memory", ambientC: 30, source: from["iec60364-5-52"], place: "tables B.52.2 and B.52.3", confidence: "secondary" },
  { id: "4", nominalMm2: 4, pvcMethodA1A: 26, pvcMethodB1A: 32, xlpeMethodB1A: 42, pvcMethodCA: "36", pvcMethodCAConfidence: "memory", xlpeMethodCA: "45", xlpeMethodCAConfidence: "memory", ambientC: 30, source: from["iec60364-5-52"], place: "tables B.52.2 and B.52.3", confidence: "secondary" },
  { id: "6", nominalMm2: 6, pvcMethodA1A: 34, pvcMethodB1A: 41, xlpeMethodB1A: 54, pvcMethodCA: "46", pvcMethodCAConfidence: "memory", xlpeMethodCA: "58", xlpeMethodCAConfidence: "memory", ambientC: 30, source: from["iec60364-5-52"], place: "tables B.52.2 and B.52.3", confidence: "secondary" },
  { id: "10", nominalMm2: 10, pvcMethodA1A: 46, pvcMethodB1A: 57, xlpeMethodB1A: 75, pvcMethodCA: "63", pvcMethodCAConfidence: "memory", xlpeMethodCA: "80", xlpeMethodCAConfidence: "memory", ambientC: 30, source: from["iec60364-5-52"], place: "tables B.52.2 and B.52.3", confidence: "secondary" },
  { id: "16", nominalMm2: 16, pvcMethodA1A: 61, pvcMethodB1A: 76, xlpeMethodB1A: 100, pvcMethodCA: "85", pvcMethodCAConfidence: "memory", xlpeMethodCA: "107", xlpeMethodCAConfidence: "memory", ambientC: 30, source: from["iec60364-5-52"], place: "tables B.52.2 and B.52.3", confidence: "secondary" },
  { id: "25", nominalMm2: 25, pvcMethodA1A: 80, pvcMethodB1A: 101, xlpeMethodB1A: 133, pvcMethodCA: "112", pvcMethodCAConfidence: "memory", xlpeMethodCA: "138", xlpeMethodCAConfidence: "memory", ambientC: 30, source: from["iec60364-5-52"], place: "tables B.52.2 and B.52.3", confidence: "secondary" },
  { id: "35", nominalMm2: 35, pvcMethodA1A: 99, pvcMethodB1A: 125, xlpeMethodB1A: 164, pvcMethodCA: "138", pvcMethodCAConfidence: "memory", xlpeMethodCA: "171", xlpeMethodCAConfidence: "memory", ambientC: 30, source: from["iec60364-5-52"], place: "tables B.52.2 and B.52.3", confidence: "secondary" },
  { id: "50", nominalMm2: 50, pvcMethodA1A: 119, pvcMethodB1A: 151, xlpeMethodB1A: 198, pvcMethodCA: "168", pvcMethodCAConfidence: "memory", xlpeMethodCA: "209", xlpeMethodCAConfidence: "memory", ambientC: 30, source: from["iec60364-5-52"], place: "tables B.52.2 and B.52.3", confidence: "secondary" },
  { id: "70", nominalMm2: 70, pvcMethodA1A: 151, pvcMethodB1A: 192, xlpeMethodB1A: 253, pvcMethodCA: "213", pvcMethodCAConfidence: "memory", xlpeMethodCA: "269", xlpeMethodCAConfidence: "memory", ambientC: 30, source: from["iec60364-5-52"], place: "tables B.52.2 and B.52.3", confidence: "secondary" },
] as const satisfies readonly BuildingAmpacityRow[];

export const buildingAmpacity: readonly BuildingAmpacityRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const buildingAmpacityUnits = {
  nominalMm2: "mm2",
  pvcMethodA1A: "A",
  pvcMethodB1A: "A",
  xlpeMethodB1A: "A",
  ambientC: "C",
} as const;
