// Generated from data/fuseMarkingConversion.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "half-rule-pages": "two trade pages giving about 2 to 1; this printed pair remembered",
  "old-fuse-chart": "owners' club page on British fuses, reproducing an old catalogue chart",
} as const;

export interface FuseMarkingConversionRow {
  readonly id: string;
  readonly rule: string;
  readonly markedBlowA: number;
  readonly continuousA: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "chart-50", rule: "chart", markedBlowA: 50, continuousA: 30, source: from["old-fuse-chart"], place: "conversion chart", confidence: "secondary" },
  { id: "chart-35", rule: "chart", markedBlowA: 35, continuousA: 25, source: from["old-fuse-chart"], place: "conversion chart", confidence: "secondary" },
  { id: "chart-30", rule: "chart", markedBlowA: 30, continuousA: 20, source: from["old-fuse-chart"], place: "conversion chart", confidence: "secondary" },
  { id: "chart-25", rule: "chart", markedBlowA: 25, continuousA: 15, source: from["old-fuse-chart"], place: "conversion chart", confidence: "secondary" },
  { id: "chart-20", rule: "chart", markedBlowA: 20, continuousA: 10, source: from["old-fuse-chart"], place: "conversion chart", confidence: "secondary" },
  { id: "chart-10", rule: "chart", markedBlowA: 10, continuousA: 7, source: from["old-fuse-chart"], place: "conversion chart", confidence: "secondary" },
  { id: "chart-5", rule: "chart", markedBlowA: 5, continuousA: 3, source: from["old-fuse-chart"], place: "conversion chart", confidence: "secondary" },
  { id: "pair-50", rule: "printed pair", markedBlowA: 50, continuousA: 25, source: from["half-rule-pages"], place: "paper label", confidence: "memory" },
  { id: "pair-35", rule: "printed pair", markedBlowA: 35, continuousA: 17, source: from["half-rule-pages"], place: "paper label", confidence: "memory" },
  { id: "pair-15", rule: "printed pair", markedBlowA: 15, continuousA: 8, source: from["half-rule-pages"], place: "paper label", confidence: "memory" },
  { id: "pair-8", rule: "printed pair", markedBlowA: 8, continuousA: 4, source: from["half-rule-pages"], place: "paper label", confidence: "memory" },
  { id: "pair-2", rule: "printed pair", markedBlowA: 2, continuousA: 1, source: from["half-rule-pages"], place: "paper label", confidence: "memory" },
] as const satisfies readonly FuseMarkingConversionRow[];

export const fuseMarkingConversion: readonly FuseMarkingConversionRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const fuseMarkingConversionUnits = {
  markedBlowA: "A",
  continuousA: "A",
} as const;
