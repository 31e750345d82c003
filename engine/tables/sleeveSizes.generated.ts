// Generated from data/sleeveSizes.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "common-practice": "common practice of the trade",
} as const;

export interface SleeveSizesRow {
  readonly id: string;
  readonly kind: string;
  readonly insideMm: number;
  readonly recoveredMm: number | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "pvc-sleeve-3", kind: "pvc-sleeve", insideMm: 3, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-4", kind: "pvc-sleeve", insideMm: 4, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-5", kind: "pvc-sleeve", insideMm: 5, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-6", kind: "pvc-sleeve", insideMm: 6, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-7", kind: "pvc-sleeve", insideMm: 7, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-8", kind: "pvc-sleeve", insideMm: 8, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-9", kind: "pvc-sleeve", insideMm: 9, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-10", kind: "pvc-sleeve", insideMm: 10, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-12", kind: "pvc-sleeve", insideMm: 12, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-14", kind: "pvc-sleeve", insideMm: 14, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-16", kind: "pvc-sleeve", insideMm: 16, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-18", kind: "pvc-sleeve", insideMm: 18, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-20", kind: "pvc-sleeve", insideMm: 20, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-22", kind: "pvc-sleeve", insideMm: 22, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-25", kind: "pvc-sleeve", insideMm: 25, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-30", kind: "pvc-sleeve", insideMm: 30, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-35", kind: "pvc-sleeve", insideMm: 35, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "pvc-sleeve-40", kind: "pvc-sleeve", insideMm: 40, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-3", kind: "conduit", insideMm: 3, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-4", kind: "conduit", insideMm: 4, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-5", kind: "conduit", insideMm: 5, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-6", kind: "conduit", insideMm: 6, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-7", kind: "conduit", insideMm: 7, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-8", kind: "conduit", insideMm: 8, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-9", kind: "conduit", insideMm: 9, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-10", kind: "conduit", insideMm: 10, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-12", kind: "conduit", insideMm: 12, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-14", kind: "conduit", insideMm: 14, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-16", kind: "conduit", insideMm: 16, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-18", kind: "conduit", insideMm: 18, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-20", kind: "conduit", insideMm: 20, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-22", kind: "conduit", insideMm: 22, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-25", kind: "conduit", insideMm: 25, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-30", kind: "conduit", insideMm: 30, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-35", kind: "conduit", insideMm: 35, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "conduit-40", kind: "conduit", insideMm: 40, recoveredMm: null, source: from["common-practice"], place: "stocked sizes", confidence: "common practice" },
  { id: "heat-shrink-3", kind: "heat-shrink", insideMm: 3, recoveredMm: 1, source: from["common-practice"], place: "stocked sizes, 3 to 1", confidence: "common practice" },
  { id: "heat-shrink-6", kind: "heat-shrink", insideMm: 6, recoveredMm: 2, source: from["common-practice"], place: "stocked sizes, 3 to 1", confidence: "common practice" },
  { id: "heat-shrink-9", kind: "heat-shrink", insideMm: 9, recoveredMm: 3, source: from["common-practice"], place: "stocked sizes, 3 to 1", confidence: "common practice" },
  { id: "heat-shrink-12", kind: "heat-shrink", insideMm: 12, recoveredMm: 4, source: from["common-practice"], place: "stocked sizes, 3 to 1", confidence: "common practice" },
  { id: "heat-shrink-18", kind: "heat-shrink", insideMm: 18, recoveredMm: 6, source: from["common-practice"], place: "stocked sizes, 3 to 1", confidence: "common practice" },
  { id: "heat-shrink-24", kind: "heat-shrink", insideMm: 24, recoveredMm: 8, source: from["common-practice"], place: "stocked sizes, 3 to 1", confidence: "common practice" },
  { id: "heat-shrink-39", kind: "heat-shrink", insideMm: 39, recoveredMm: 13, source: from["common-practice"], place: "stocked sizes, 3 to 1", confidence: "common practice" },
] as const satisfies readonly SleeveSizesRow[];

export const sleeveSizes: readonly SleeveSizesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const sleeveSizesUnits = {
  insideMm: "mm",
  recoveredMm: "mm",
} as const;
