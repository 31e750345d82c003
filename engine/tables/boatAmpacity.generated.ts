// Generated from data/boatAmpacity.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "cfr183-425": "33 CFR 183.425",
} as const;

export interface BoatAmpacityRow {
  readonly id: string;
  readonly at60A: number;
  readonly at75A: number;
  readonly at80A: number;
  readonly at90A: number;
  readonly at105A: number;
  readonly at125A: number;
  readonly at200A: number;
  readonly ambientC: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "18", at60A: 10, at75A: 10, at80A: 15, at90A: 20, at105A: 20, at125A: 25, at200A: 25, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "16", at60A: 15, at75A: 15, at80A: 20, at90A: 25, at105A: 25, at125A: 30, at200A: 35, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "14", at60A: 20, at75A: 20, at80A: 25, at90A: 30, at105A: 35, at125A: 40, at200A: 45, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "12", at60A: 25, at75A: 25, at80A: 35, at90A: 40, at105A: 45, at125A: 50, at200A: 55, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "10", at60A: 40, at75A: 40, at80A: 50, at90A: 55, at105A: 60, at125A: 70, at200A: 70, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "8", at60A: 55, at75A: 65, at80A: 70, at90A: 70, at105A: 80, at125A: 90, at200A: 100, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "6", at60A: 80, at75A: 95, at80A: 100, at90A: 100, at105A: 120, at125A: 125, at200A: 135, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "4", at60A: 105, at75A: 125, at80A: 130, at90A: 135, at105A: 160, at125A: 170, at200A: 180, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "3", at60A: 120, at75A: 145, at80A: 150, at90A: 155, at105A: 180, at125A: 195, at200A: 210, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "2", at60A: 140, at75A: 170, at80A: 175, at90A: 180, at105A: 210, at125A: 225, at200A: 240, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "1", at60A: 165, at75A: 195, at80A: 210, at90A: 210, at105A: 245, at125A: 265, at200A: 280, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "1/0", at60A: 195, at75A: 230, at80A: 245, at90A: 245, at105A: 285, at125A: 305, at200A: 325, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "2/0", at60A: 225, at75A: 265, at80A: 285, at90A: 285, at105A: 330, at125A: 355, at200A: 370, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "3/0", at60A: 260, at75A: 310, at80A: 330, at90A: 330, at105A: 385, at125A: 410, at200A: 430, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
  { id: "4/0", at60A: 300, at75A: 360, at80A: 385, at90A: 385, at105A: 445, at125A: 475, at200A: 510, ambientC: 30, source: from["cfr183-425"], place: "table 5", confidence: "seen" },
] as const satisfies readonly BoatAmpacityRow[];

export const boatAmpacity: readonly BoatAmpacityRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const boatAmpacityUnits = {
  at60A: "A",
  at75A: "A",
  at80A: "A",
  at90A: "A",
  at105A: "A",
  at125A: "A",
  at200A: "A",
  ambientC: "C",
} as const;
