// Generated from data/roadDates.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "uk-inspection-pages": "pages on the United Kingdom motorcycle roadworthiness inspection",
} as const;

export interface RoadDatesRow {
  readonly id: string;
  readonly meaning: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
  readonly note: string | null;
}

const rows = [
  { id: "headlamp", meaning: "year of first use from which a headlamp is asked for", value: 1931, unit: "year", source: from["uk-inspection-pages"], place: "4.1.1", confidence: "seen", note: "from 1 January; not on a machine without front and rear lamps" },
  { id: "stop-lamp", meaning: "year of first use from which a stop lamp is asked for", value: 1936, unit: "year", source: from["uk-inspection-pages"], place: "4.3.1", confidence: "seen", note: "from 1 January; slower than 25 mph excepted" },
  { id: "stop-lamp-both", meaning: "year of first use from which both brakes must light the stop lamp", value: 1986, unit: "year", source: from["uk-inspection-pages"], place: "4.3.1", confidence: "seen", note: "from 1 April" },
  { id: "bulb-horn", meaning: "last year of first use with a bulb horn allowed", value: 1973, unit: "year", source: from["uk-inspection-pages"], place: "horn", confidence: "secondary", note: "before 1 August" },
] as const satisfies readonly RoadDatesRow[];

export const roadDates: readonly RoadDatesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const roadDatesUnits = {
  value: null,
} as const;
