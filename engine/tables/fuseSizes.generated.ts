// Generated from data/fuseSizes.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "fuse-article": "public article on automotive fuses",
  "glass-size-table": "public fuse reference table, 1/4 x 1-1/4 in",
} as const;

export interface FuseSizesRow {
  readonly id: string;
  readonly lengthMm: number;
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "mini", lengthMm: 10.9, widthMm: 3.6, heightMm: 16.3, source: from["fuse-article"], place: "dimensions", confidence: "secondary" },
  { id: "blade", lengthMm: 19.1, widthMm: 5.1, heightMm: 18.5, source: from["fuse-article"], place: "dimensions", confidence: "secondary" },
  { id: "maxi", lengthMm: 29.2, widthMm: 8.5, heightMm: 34.3, source: from["fuse-article"], place: "dimensions", confidence: "secondary" },
  { id: "torpedo", lengthMm: 25, widthMm: 6, heightMm: null, source: from["fuse-article"], place: "DIN 72581-1", confidence: "secondary" },
  { id: "glass", lengthMm: 31.75, widthMm: 6.35, heightMm: null, source: from["glass-size-table"], place: "3AG / AGC", confidence: "seen" },
] as const satisfies readonly FuseSizesRow[];

export const fuseSizes: readonly FuseSizesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const fuseSizesUnits = {
  lengthMm: "mm",
  widthMm: "mm",
  heightMm: "mm",
} as const;
