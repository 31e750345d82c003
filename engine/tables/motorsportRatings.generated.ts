// Generated from data/motorsportRatings.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "motorsport-list": "European motorsport trade list of cable and fuse sizes",
} as const;

export interface MotorsportRatingsRow {
  readonly id: string;
  readonly wall: string;
  readonly nominalMm2: number;
  readonly ratedA: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "thin-0.5", wall: "thin", nominalMm2: 0.5, ratedA: 10, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thin-1", wall: "thin", nominalMm2: 1, ratedA: 15, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thin-1.5", wall: "thin", nominalMm2: 1.5, ratedA: 20, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thin-2", wall: "thin", nominalMm2: 2, ratedA: 25, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thin-3", wall: "thin", nominalMm2: 3, ratedA: 30, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thin-4", wall: "thin", nominalMm2: 4, ratedA: 40, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thin-6", wall: "thin", nominalMm2: 6, ratedA: 50, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thin-8", wall: "thin", nominalMm2: 8, ratedA: 60, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thin-10", wall: "thin", nominalMm2: 10, ratedA: 70, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thick-0.5", wall: "thick", nominalMm2: 0.5, ratedA: 5, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thick-0.75", wall: "thick", nominalMm2: 0.75, ratedA: 7.5, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thick-1", wall: "thick", nominalMm2: 1, ratedA: 10, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thick-1.5", wall: "thick", nominalMm2: 1.5, ratedA: 15, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thick-2.5", wall: "thick", nominalMm2: 2.5, ratedA: 20, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thick-4", wall: "thick", nominalMm2: 4, ratedA: 30, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thick-6", wall: "thick", nominalMm2: 6, ratedA: 40, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thick-8", wall: "thick", nominalMm2: 8, ratedA: 50, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
  { id: "thick-10", wall: "thick", nominalMm2: 10, ratedA: 70, source: from["motorsport-list"], place: "size rows", confidence: "seen" },
] as const satisfies readonly MotorsportRatingsRow[];

export const motorsportRatings: readonly MotorsportRatingsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const motorsportRatingsUnits = {
  nominalMm2: "mm2",
  ratedA: "A",
} as const;
