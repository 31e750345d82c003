// Generated from data/fuseHolders.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "holder-sheets": "fuse holder data sheets as transcribed in an open repository",
} as const;

export interface FuseHoldersRow {
  readonly id: string;
  readonly meaning: string;
  readonly maxA: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "blade-inline", meaning: "in-line holder for ATO size blades", maxA: 20, source: from["holder-sheets"], place: "in-line holders", confidence: "secondary" },
  { id: "blade-inline-heavy", meaning: "heavy duty in-line holder for ATO size blades", maxA: 30, source: from["holder-sheets"], place: "in-line holders", confidence: "secondary" },
  { id: "maxi-inline", meaning: "in-line holder for maxi blades", maxA: 45, source: from["holder-sheets"], place: "in-line holders", confidence: "secondary" },
] as const satisfies readonly FuseHoldersRow[];

export const fuseHolders: readonly FuseHoldersRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const fuseHoldersUnits = {
  maxA: "A",
} as const;
