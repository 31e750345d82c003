// Generated from data/fuseTimeCurrent.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "blade-160-note": "32 V ATO size acceptance points quoted in an open power note",
  "blade-sheet-35-40": "32 V ATO size fuse data sheet of 2022, 35 and 40 A pages, as transcribed in an open repository",
  "blade-sheets": "32 V blade fuse data sheets (ATO size and mini) as transcribed in several open repositories",
  "din72581-1": "DIN 72581-1, remembered",
  "fuse-guide": "fuse guide pages: UL 248-14 limits, pulse chart, waveforms",
  "glass-5x20-sheet": "public data sheet of a 5 x 20 mm glass range, UL 248-14 class",
  "maxi-sheet": "32 V maxi fuse data sheet of 2025, citing ISO 8820-3 and SAE J1888, as transcribed in an open repository",
  "ul248-14": "UL 248-14 operating times as printed in a component article, stated to 10 A",
} as const;

export interface FuseTimeCurrentRow {
  readonly id: string;
  readonly family: string;
  readonly ratingFromA: number;
  readonly ratingToA: number;
  readonly loadPercent: number;
  readonly minTimeS: number | null;
  readonly maxTimeS: number | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
  readonly note: string | null;
}

const rows = [
  { id: "blade-110", family: "blade", ratingFromA: 1, ratingToA: 30, loadPercent: 110, minTimeS: 360000, maxTimeS: null, source: from["blade-sheets"], place: "operating time table", confidence: "secondary", note: null },
  { id: "blade-135", family: "blade", ratingFromA: 1, ratingToA: 30, loadPercent: 135, minTimeS: 0.75, maxTimeS: 600, source: from["blade-sheets"], place: "operating time table", confidence: "secondary", note: null },
  { id: "blade-160", family: "blade", ratingFromA: 1, ratingToA: 30, loadPercent: 160, minTimeS: 0.25, maxTimeS: 50, source: from["blade-160-note"], place: "operating time table", confidence: "secondary", note: null },
  { id: "blade-200", family: "blade", ratingFromA: 1, ratingToA: 30, loadPercent: 200, minTimeS: 0.15, maxTimeS: 5, source: from["blade-sheets"], place: "operating time table", confidence: "secondary", note: null },
  { id: "blade-350", family: "blade", ratingFromA: 1, ratingToA: 30, loadPercent: 350, minTimeS: 0.08, maxTimeS: 0.5, source: from["blade-sheets"], place: "operating time table", confidence: "secondary", note: null },
  { id: "blade-600", family: "blade", ratingFromA: 1, ratingToA: 30, loadPercent: 600, minTimeS: 0.03, maxTimeS: 0.1, source: from["blade-sheets"], place: "operating time table", confidence: "secondary", note: "minimum from the mini sheets" },
  { id: "blade-large-100", family: "blade-large", ratingFromA: 35, ratingToA: 40, loadPercent: 100, minTimeS: 360000, maxTimeS: null, source: from["blade-sheet-35-40"], place: "operating time table", confidence: "secondary", note: null },
  { id: "blade-large-135", family: "blade-large", ratingFromA: 35, ratingToA: 40, loadPercent: 135, minTimeS: 0.75, maxTimeS: 600, source: from["blade-sheet-35-40"], place: "operating time table", confidence: "secondary", note: null },
  { id: "blade-large-200", family: "blade-large", ratingFromA: 35, ratingToA: 40, loadPercent: 200, minTimeS: 0.15, maxTimeS: 5, source: from["blade-sheet-35-40"], place: "operating time table", confidence: "secondary", note: null },
  { id: "blade-large-350", family: "blade-large", ratingFromA: 35, ratingToA: 40, loadPercent: 350, minTimeS: 0.08, maxTimeS: 0.5, source: from["blade-sheet-35-40"], place: "operating time table", confidence: "secondary", note: null },
  { id: "blade-large-600", family: "blade-large", ratingFromA: 35, ratingToA: 40, loadPercent: 600, minTimeS: null, maxTimeS: 0.15, source: from["blade-sheet-35-40"], place: "operating time table", confidence: "secondary", note: null },
  { id: "maxi-100", family: "maxi", ratingFromA: 20, ratingToA: 80, loadPercent: 100, minTimeS: 360000, maxTimeS: null, source: from["maxi-sheet"], place: "operating time table", confidence: "secondary", note: null },
  { id: "maxi-135", family: "maxi", ratingFromA: 20, ratingToA: 80, loadPercent: 135, minTimeS: 60, maxTimeS: 1800, source: from["maxi-sheet"], place: "operating time table", confidence: "secondary", note: null },
  { id: "maxi-200", family: "maxi", ratingFromA: 20, ratingToA: 80, loadPercent: 200, minTimeS: 2, maxTimeS: 50, source: from["maxi-sheet"], place: "operating time table", confidence: "secondary", note: null },
  { id: "maxi-350", family: "maxi", ratingFromA: 20, ratingToA: 80, loadPercent: 350, minTimeS: 0.2, maxTimeS: 7, source: from["maxi-sheet"], place: "operating time table", confidence: "secondary", note: null },
  { id: "maxi-600", family: "maxi", ratingFromA: 20, ratingToA: 80, loadPercent: 600, minTimeS: 0.04, maxTimeS: 1, source: from["maxi-sheet"], place: "operating time table", confidence: "secondary", note: null },
  { id: "glass-5x20-135", family: "glass-5x20", ratingFromA: 0.05, ratingToA: 10, loadPercent: 135, minTimeS: null, maxTimeS: 3600, source: from["glass-5x20-sheet"], place: "operating time table", confidence: "seen", note: null },
  { id: "glass-5x20-200", family: "glass-5x20", ratingFromA: 0.05, ratingToA: 10, loadPercent: 200, minTimeS: null, maxTimeS: 120, source: from["glass-5x20-sheet"], place: "operating time table", confidence: "seen", note: null },
  { id: "glass-110", family: "glass", ratingFromA: 0.05, ratingToA: 10, loadPercent: 110, minTimeS: 14400, maxTimeS: null, source: from["ul248-14"], place: "operating time table", confidence: "secondary", note: null },
  { id: "glass-135", family: "glass", ratingFromA: 0.05, ratingToA: 10, loadPercent: 135, minTimeS: null, maxTimeS: 3600, source: from["ul248-14"], place: "operating time table", confidence: "secondary", note: null },
  { id: "glass-200", family: "glass", ratingFromA: 0.05, ratingToA: 10, loadPercent: 200, minTimeS: null, maxTimeS: 120, source: from["ul248-14"], place: "operating time table", confidence: "secondary", note: null },
  { id: "glass-110-to30", family: "glass", ratingFromA: 10, ratingToA: 30, loadPercent: 110, minTimeS: 14400, maxTimeS: null, source: from["ul248-14"], place: "operating time table", confidence: "memory", note: "the article stops at 10 A" },
  { id: "glass-135-to30", family: "glass", ratingFromA: 10, ratingToA: 30, loadPercent: 135, minTimeS: null, maxTimeS: 3600, source: from["ul248-14"], place: "operating time table", confidence: "memory", note: "the article stops at 10 A" },
  { id: "glass-200-to30", family: "glass", ratingFromA: 10, ratingToA: 30, loadPercent: 200, minTimeS: null, maxTimeS: 120, source: from["fuse-guide"], place: "operating time table", confidence: "seen", note: null },
  { id: "glass-200-to60", family: "glass", ratingFromA: 35, ratingToA: 60, loadPercent: 200, minTimeS: null, maxTimeS: 240, source: from["fuse-guide"], place: "operating time table", confidence: "seen", note: null },
  { id: "glass-135-to60", family: "glass", ratingFromA: 35, ratingToA: 60, loadPercent: 135, minTimeS: null, maxTimeS: 3600, source: from["ul248-14"], place: "operating time table", confidence: "memory", note: "the article stops at 10 A" },
  { id: "torpedo-150", family: "torpedo", ratingFromA: 5, ratingToA: 25, loadPercent: 150, minTimeS: 3600, maxTimeS: null, source: from["din72581-1"], place: "operating time table", confidence: "memory", note: "must carry" },
  { id: "torpedo-250", family: "torpedo", ratingFromA: 5, ratingToA: 25, loadPercent: 250, minTimeS: null, maxTimeS: 30, source: from["din72581-1"], place: "operating time table", confidence: "memory", note: null },
] as const satisfies readonly FuseTimeCurrentRow[];

export const fuseTimeCurrent: readonly FuseTimeCurrentRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const fuseTimeCurrentUnits = {
  ratingFromA: "A",
  ratingToA: "A",
  loadPercent: "%",
  minTimeS: "s",
  maxTimeS: "s",
} as const;
