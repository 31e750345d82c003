// Generated from data/fuseStandardRatings.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "fuse-article": "public article on automotive fuses",
  "remembered-trade": "remembered, common trade listing; not found in a text",
} as const;

export interface FuseStandardRatingsRow {
  readonly id: string;
  readonly type: string;
  readonly ratedA: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "blade-1", type: "blade", ratedA: 1, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-2", type: "blade", ratedA: 2, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-3", type: "blade", ratedA: 3, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-4", type: "blade", ratedA: 4, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-5", type: "blade", ratedA: 5, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-7.5", type: "blade", ratedA: 7.5, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-10", type: "blade", ratedA: 10, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-15", type: "blade", ratedA: 15, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-20", type: "blade", ratedA: 20, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-25", type: "blade", ratedA: 25, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-30", type: "blade", ratedA: 30, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-35", type: "blade", ratedA: 35, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "blade-40", type: "blade", ratedA: 40, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "mini-2", type: "mini", ratedA: 2, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "mini-3", type: "mini", ratedA: 3, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "mini-4", type: "mini", ratedA: 4, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "mini-5", type: "mini", ratedA: 5, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "mini-7.5", type: "mini", ratedA: 7.5, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "mini-10", type: "mini", ratedA: 10, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "mini-15", type: "mini", ratedA: 15, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "mini-20", type: "mini", ratedA: 20, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "mini-25", type: "mini", ratedA: 25, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "mini-30", type: "mini", ratedA: 30, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "maxi-20", type: "maxi", ratedA: 20, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "maxi-30", type: "maxi", ratedA: 30, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "maxi-40", type: "maxi", ratedA: 40, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "maxi-50", type: "maxi", ratedA: 50, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "maxi-60", type: "maxi", ratedA: 60, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "maxi-70", type: "maxi", ratedA: 70, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "maxi-80", type: "maxi", ratedA: 80, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "torpedo-5", type: "torpedo", ratedA: 5, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "torpedo-8", type: "torpedo", ratedA: 8, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "torpedo-16", type: "torpedo", ratedA: 16, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "torpedo-25", type: "torpedo", ratedA: 25, source: from["fuse-article"], place: "rating list", confidence: "secondary" },
  { id: "glass-1", type: "glass", ratedA: 1, source: from["remembered-trade"], place: "rating list", confidence: "memory" },
  { id: "glass-2", type: "glass", ratedA: 2, source: from["remembered-trade"], place: "rating list", confidence: "memory" },
  { id: "glass-3", type: "glass", ratedA: 3, source: from["remembered-trade"], place: "rating list", confidence: "memory" },
  { id: "glass-5", type: "glass", ratedA: 5, source: from["remembered-trade"], place: "rating list", confidence: "memory" },
  { id: "glass-7.5", type: "glass", ratedA: 7.5, source: from["remembered-trade"], place: "rating list", confidence: "memory" },
  { id: "glass-10", type: "glass", ratedA: 10, source: from["remembered-trade"], place: "rating list", confidence: "memory" },
  { id: "glass-15", type: "glass", ratedA: 15, source: from["remembered-trade"], place: "rating list", confidence: "memory" },
  { id: "glass-20", type: "glass", ratedA: 20, source: from["remembered-trade"], place: "rating list", confidence: "memory" },
  { id: "glass-25", type: "glass", ratedA: 25, source: from["remembered-trade"], place: "rating list", confidence: "memory" },
  { id: "glass-30", type: "glass", ratedA: 30, source: from["remembered-trade"], place: "rating list", confidence: "memory" },
] as const satisfies readonly FuseStandardRatingsRow[];

export const fuseStandardRatings: readonly FuseStandardRatingsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const fuseStandardRatingsUnits = {
  ratedA: "A",
} as const;
