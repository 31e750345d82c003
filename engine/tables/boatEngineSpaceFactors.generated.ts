// Generated from data/boatEngineSpaceFactors.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "cfr183-425": "33 CFR 183.425",
} as const;

export interface BoatEngineSpaceFactorsRow {
  readonly id: string;
  readonly insulationC: number;
  readonly engineSpaceRatio: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "60C", insulationC: 60, engineSpaceRatio: 0.58, source: from["cfr183-425"], place: "table 5 note 1", confidence: "memory" },
  { id: "75C", insulationC: 75, engineSpaceRatio: 0.75, source: from["cfr183-425"], place: "table 5 note 1", confidence: "memory" },
  { id: "80C", insulationC: 80, engineSpaceRatio: 0.78, source: from["cfr183-425"], place: "table 5 note 1", confidence: "memory" },
  { id: "90C", insulationC: 90, engineSpaceRatio: 0.82, source: from["cfr183-425"], place: "table 5 note 1", confidence: "memory" },
  { id: "105C", insulationC: 105, engineSpaceRatio: 0.85, source: from["cfr183-425"], place: "table 5 note 1", confidence: "seen" },
  { id: "125C", insulationC: 125, engineSpaceRatio: 0.89, source: from["cfr183-425"], place: "table 5 note 1", confidence: "memory" },
  { id: "200C", insulationC: 200, engineSpaceRatio: 1, source: from["cfr183-425"], place: "table 5 note 1", confidence: "memory" },
] as const satisfies readonly BoatEngineSpaceFactorsRow[];

export const boatEngineSpaceFactors: readonly BoatEngineSpaceFactorsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const boatEngineSpaceFactorsUnits = {
  insulationC: "C",
  engineSpaceRatio: "ratio",
} as const;
