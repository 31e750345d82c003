// Generated from data/batteryOcv.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "agm-empty": "own reading of \"under 12.0 V\" in the AGM table",
  "agm-manual": "powersports owner manual, AGM charging table",
  "flooded-ocv": "public table of rest volts and specific gravity; freezing points TM 5-4210-230-14&P-1 table 2",
  "lfp-curve": "open real-time operating system, LFP open-circuit curve, cell volts x 4",
} as const;

export interface BatteryOcvRow {
  readonly id: string;
  readonly chemistry: string;
  readonly chargePercent: number;
  readonly rest12V: number;
  readonly rest6V: number | null;
  readonly specificGravityRatio: number | null;
  readonly freezingC: number | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
  readonly note: string | null;
}

const rows = [
  { id: "flooded-100", chemistry: "flooded", chargePercent: 100, rest12V: 12.7, rest6V: 6.3, specificGravityRatio: 1.265, freezingC: -59.5, source: from["flooded-ocv"], place: "rest volts", confidence: "secondary", note: null },
  { id: "flooded-75", chemistry: "flooded", chargePercent: 75, rest12V: 12.4, rest6V: 6.2, specificGravityRatio: 1.225, freezingC: -37.2, source: from["flooded-ocv"], place: "rest volts", confidence: "secondary", note: null },
  { id: "flooded-50", chemistry: "flooded", chargePercent: 50, rest12V: 12.2, rest6V: 6.1, specificGravityRatio: 1.19, freezingC: -26.1, source: from["flooded-ocv"], place: "rest volts", confidence: "secondary", note: null },
  { id: "flooded-25", chemistry: "flooded", chargePercent: 25, rest12V: 12, rest6V: 6, specificGravityRatio: 1.155, freezingC: -15, source: from["flooded-ocv"], place: "rest volts", confidence: "secondary", note: null },
  { id: "flooded-0", chemistry: "flooded", chargePercent: 0, rest12V: 11.9, rest6V: 5.95, specificGravityRatio: 1.12, freezingC: -9.4, source: from["flooded-ocv"], place: "rest volts", confidence: "secondary", note: "6 V printed as 5.9 to 6.0" },
  { id: "agm-100", chemistry: "agm", chargePercent: 100, rest12V: 13, rest6V: 6.5, specificGravityRatio: null, freezingC: null, source: from["agm-manual"], place: "charging table", confidence: "derived", note: "middle of the printed 12.8 to 13.2; 6 V is half" },
  { id: "agm-75", chemistry: "agm", chargePercent: 75, rest12V: 12.6, rest6V: 6.3, specificGravityRatio: null, freezingC: null, source: from["agm-manual"], place: "charging table", confidence: "seen", note: "6 V is half" },
  { id: "agm-50", chemistry: "agm", chargePercent: 50, rest12V: 12.3, rest6V: 6.15, specificGravityRatio: null, freezingC: null, source: from["agm-manual"], place: "charging table", confidence: "seen", note: "6 V is half" },
  { id: "agm-25", chemistry: "agm", chargePercent: 25, rest12V: 12, rest6V: 6, specificGravityRatio: null, freezingC: null, source: from["agm-manual"], place: "charging table", confidence: "seen", note: "6 V is half" },
  { id: "agm-0", chemistry: "agm", chargePercent: 0, rest12V: 11.8, rest6V: 5.9, specificGravityRatio: null, freezingC: null, source: from["agm-empty"], place: "charging table", confidence: "own", note: "the source says under 12.0" },
  { id: "lfp-0", chemistry: "lfp", chargePercent: 0, rest12V: 8.05, rest6V: null, specificGravityRatio: null, freezingC: null, source: from["lfp-curve"], place: "curve", confidence: "seen", note: null },
  { id: "lfp-10", chemistry: "lfp", chargePercent: 10, rest12V: 12.27, rest6V: null, specificGravityRatio: null, freezingC: null, source: from["lfp-curve"], place: "curve", confidence: "seen", note: null },
  { id: "lfp-20", chemistry: "lfp", chargePercent: 20, rest12V: 12.64, rest6V: null, specificGravityRatio: null, freezingC: null, source: from["lfp-curve"], place: "curve", confidence: "seen", note: null },
  { id: "lfp-30", chemistry: "lfp", chargePercent: 30, rest12V: 12.78, rest6V: null, specificGravityRatio: null, freezingC: null, source: from["lfp-curve"], place: "curve", confidence: "seen", note: null },
  { id: "lfp-40", chemistry: "lfp", chargePercent: 40, rest12V: 12.84, rest6V: null, specificGravityRatio: null, freezingC: null, source: from["lfp-curve"], place: "curve", confidence: "seen", note: null },
  { id: "lfp-50", chemistry: "lfp", chargePercent: 50, rest12V: 12.88, rest6V: null, specificGravityRatio: null, freezingC: null, source: from["lfp-curve"], place: "curve", confidence: "seen", note: null },
  { id: "lfp-60", chemistry: "lfp", chargePercent: 60, rest12V: 12.92, rest6V: null, specificGravityRatio: null, freezingC: null, source: from["lfp-curve"], place: "curve", confidence: "seen", note: null },
  { id: "lfp-70", chemistry: "lfp", chargePercent: 70, rest12V: 12.98, rest6V: null, specificGravityRatio: null, freezingC: null, source: from["lfp-curve"], place: "curve", confidence: "seen", note: null },
  { id: "lfp-80", chemistry: "lfp", chargePercent: 80, rest12V: 13.02, rest6V: null, specificGravityRatio: null, freezingC: null, source: from["lfp-curve"], place: "curve", confidence: "seen", note: null },
  { id: "lfp-90", chemistry: "lfp", chargePercent: 90, rest12V: 13.05, rest6V: null, specificGravityRatio: null, freezingC: null, source: from["lfp-curve"], place: "curve", confidence: "seen", note: null },
  { id: "lfp-100", chemistry: "lfp", chargePercent: 100, rest12V: 13.39, rest6V: null, specificGravityRatio: null, freezingC: null, source: from["lfp-curve"], place: "curve", confidence: "seen", note: null },
] as const satisfies readonly BatteryOcvRow[];

export const batteryOcv: readonly BatteryOcvRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const batteryOcvUnits = {
  chargePercent: "%",
  rest12V: "V",
  rest6V: "V",
  specificGravityRatio: "ratio",
  freezingC: "C",
} as const;
