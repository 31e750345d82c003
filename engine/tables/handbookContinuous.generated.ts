// Generated from data/handbookContinuous.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "handbook-continuous": "handbook table for PVC vehicle cable at 70 C conductor after DIN ISO 6722-3 and DIN VDE 0298-4, as reproduced on two vehicle pages",
} as const;

export interface HandbookContinuousRow {
  readonly id: string;
  readonly nominalMm2: number;
  readonly at30A: number;
  readonly at50A: number;
  readonly conductorC: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "1", nominalMm2: 1, at30A: 19, at50A: 13.5, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "1.5", nominalMm2: 1.5, at30A: 24, at50A: 17, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "2.5", nominalMm2: 2.5, at30A: 32, at50A: 22.7, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "4", nominalMm2: 4, at30A: 42, at50A: 29.8, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "6", nominalMm2: 6, at30A: 54, at50A: 38.3, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "10", nominalMm2: 10, at30A: 73, at50A: 51.8, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "16", nominalMm2: 16, at30A: 98, at50A: 69.6, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "25", nominalMm2: 25, at30A: 129, at50A: 91.6, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "35", nominalMm2: 35, at30A: 158, at50A: 112, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "50", nominalMm2: 50, at30A: 198, at50A: 140, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "70", nominalMm2: 70, at30A: 245, at50A: 174, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "95", nominalMm2: 95, at30A: 292, at50A: 207, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
  { id: "120", nominalMm2: 120, at30A: 344, at50A: 244, conductorC: 70, source: from["handbook-continuous"], place: "continuous amps", confidence: "secondary" },
] as const satisfies readonly HandbookContinuousRow[];

export const handbookContinuous: readonly HandbookContinuousRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const handbookContinuousUnits = {
  nominalMm2: "mm2",
  at30A: "A",
  at50A: "A",
  conductorC: "C",
} as const;
