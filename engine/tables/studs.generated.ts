// Generated from data/studs.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "brass-stud-page": "terminal-board page, brass feed-through bolts",
  "din46234-quote": "DIN 46234 quoted in two open files",
  "inverter-manual": "inverter manual, terminal table for equipment studs",
  "remembered-trade": "remembered, common trade listing; not found in a text",
  "ring-lug-table": "contactor system manual, ring lug table",
} as const;

export interface StudsRow {
  readonly id: string;
  readonly threadMm: number;
  readonly holeMm: number;
  readonly holeMmSource: string;
  readonly holeMmConfidence: Confidence;
  readonly torqueNm: number | null;
  readonly torqueNmSource: string | null;
  readonly torqueNmConfidence: Confidence | null;
  readonly brassStudA: number | null;
  readonly brassStudASource: string | null;
  readonly brassStudAConfidence: Confidence | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "M3", threadMm: 3, holeMm: 3.2, holeMmSource: from["ring-lug-table"], holeMmConfidence: "seen", torqueNm: null, torqueNmSource: null, torqueNmConfidence: null, brassStudA: null, brassStudASource: null, brassStudAConfidence: null, source: from["ring-lug-table"], place: "studs", confidence: "seen" },
  { id: "M3.5", threadMm: 3.5, holeMm: 3.7, holeMmSource: from["remembered-trade"], holeMmConfidence: "memory", torqueNm: 0.8, torqueNmSource: from["inverter-manual"], torqueNmConfidence: "seen", brassStudA: null, brassStudASource: null, brassStudAConfidence: null, source: from["inverter-manual"], place: "studs", confidence: "seen" },
  { id: "M4", threadMm: 4, holeMm: 4.3, holeMmSource: from["ring-lug-table"], holeMmConfidence: "seen", torqueNm: 1.2, torqueNmSource: from["inverter-manual"], torqueNmConfidence: "seen", brassStudA: 16, brassStudASource: from["brass-stud-page"], brassStudAConfidence: "seen", source: from["ring-lug-table"], place: "studs", confidence: "seen" },
  { id: "M5", threadMm: 5, holeMm: 5.3, holeMmSource: from["remembered-trade"], holeMmConfidence: "memory", torqueNm: 2, torqueNmSource: from["inverter-manual"], torqueNmConfidence: "seen", brassStudA: 25, brassStudASource: from["brass-stud-page"], brassStudAConfidence: "seen", source: from["inverter-manual"], place: "studs", confidence: "seen" },
  { id: "M6", threadMm: 6, holeMm: 6.5, holeMmSource: from["remembered-trade"], holeMmConfidence: "memory", torqueNm: 2.5, torqueNmSource: from["inverter-manual"], torqueNmConfidence: "seen", brassStudA: 63, brassStudASource: from["brass-stud-page"], brassStudAConfidence: "seen", source: from["inverter-manual"], place: "studs", confidence: "seen" },
  { id: "M8", threadMm: 8, holeMm: 8.4, holeMmSource: from["din46234-quote"], holeMmConfidence: "secondary", torqueNm: 6, torqueNmSource: from["inverter-manual"], torqueNmConfidence: "seen", brassStudA: 100, brassStudASource: from["brass-stud-page"], brassStudAConfidence: "seen", source: from["inverter-manual"], place: "studs", confidence: "seen" },
  { id: "M10", threadMm: 10, holeMm: 10.5, holeMmSource: from["remembered-trade"], holeMmConfidence: "memory", torqueNm: 10, torqueNmSource: from["inverter-manual"], torqueNmConfidence: "seen", brassStudA: 160, brassStudASource: from["brass-stud-page"], brassStudAConfidence: "seen", source: from["inverter-manual"], place: "studs", confidence: "seen" },
] as const satisfies readonly StudsRow[];

export const studs: readonly StudsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const studsUnits = {
  threadMm: "mm",
  holeMm: "mm",
  torqueNm: "N m",
  brassStudA: "A",
} as const;
