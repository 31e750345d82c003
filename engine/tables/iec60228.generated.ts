// Generated from data/iec60228.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "iec60228": "IEC 60228 tables 1 to 3, as copied by a cable maker and a second page",
} as const;

export interface Iec60228Row {
  readonly id: string;
  readonly nominalMm2: number;
  readonly class5OhmPerKm20: number;
  readonly class5TinnedOhmPerKm20: number;
  readonly class2OhmPerKm20: number | null;
  readonly class5MaxStrandMm: number;
  readonly class5MaxStrandMmConfidence: Confidence;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "0.5", nominalMm2: 0.5, class5OhmPerKm20: 39, class5TinnedOhmPerKm20: 40.1, class2OhmPerKm20: 36, class5MaxStrandMm: 0.21, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "0.75", nominalMm2: 0.75, class5OhmPerKm20: 26, class5TinnedOhmPerKm20: 26.7, class2OhmPerKm20: 24.5, class5MaxStrandMm: 0.21, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "1", nominalMm2: 1, class5OhmPerKm20: 19.5, class5TinnedOhmPerKm20: 20, class2OhmPerKm20: 18.1, class5MaxStrandMm: 0.21, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "1.5", nominalMm2: 1.5, class5OhmPerKm20: 13.3, class5TinnedOhmPerKm20: 13.7, class2OhmPerKm20: 12.1, class5MaxStrandMm: 0.26, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "2.5", nominalMm2: 2.5, class5OhmPerKm20: 7.98, class5TinnedOhmPerKm20: 8.21, class2OhmPerKm20: 7.41, class5MaxStrandMm: 0.26, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "4", nominalMm2: 4, class5OhmPerKm20: 4.95, class5TinnedOhmPerKm20: 5.09, class2OhmPerKm20: 4.61, class5MaxStrandMm: 0.31, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "6", nominalMm2: 6, class5OhmPerKm20: 3.3, class5TinnedOhmPerKm20: 3.39, class2OhmPerKm20: 3.08, class5MaxStrandMm: 0.31, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "10", nominalMm2: 10, class5OhmPerKm20: 1.91, class5TinnedOhmPerKm20: 1.95, class2OhmPerKm20: 1.83, class5MaxStrandMm: 0.41, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "16", nominalMm2: 16, class5OhmPerKm20: 1.21, class5TinnedOhmPerKm20: 1.24, class2OhmPerKm20: 1.15, class5MaxStrandMm: 0.41, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "25", nominalMm2: 25, class5OhmPerKm20: 0.78, class5TinnedOhmPerKm20: 0.795, class2OhmPerKm20: 0.727, class5MaxStrandMm: 0.41, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "35", nominalMm2: 35, class5OhmPerKm20: 0.554, class5TinnedOhmPerKm20: 0.565, class2OhmPerKm20: 0.524, class5MaxStrandMm: 0.41, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "50", nominalMm2: 50, class5OhmPerKm20: 0.386, class5TinnedOhmPerKm20: 0.393, class2OhmPerKm20: 0.387, class5MaxStrandMm: 0.41, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
  { id: "70", nominalMm2: 70, class5OhmPerKm20: 0.272, class5TinnedOhmPerKm20: 0.277, class2OhmPerKm20: 0.268, class5MaxStrandMm: 0.51, class5MaxStrandMmConfidence: "memory", source: from["iec60228"], place: "class 5", confidence: "secondary" },
] as const satisfies readonly Iec60228Row[];

export const iec60228: readonly Iec60228Row[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const iec60228Units = {
  nominalMm2: "mm2",
  class5OhmPerKm20: "ohm/km",
  class5TinnedOhmPerKm20: "ohm/km",
  class2OhmPerKm20: "ohm/km",
  class5MaxStrandMm: "mm",
} as const;
