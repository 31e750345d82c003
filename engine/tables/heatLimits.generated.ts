// Generated from data/heatLimits.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "fuse-gates": "derived from the operating gates of blade fuses: no maximum time is given under 135 %",
  "iec60949": "IEC 60949 and IEC 60364-5-54 adiabatic law, constants quoted in two texts",
  "overload-tests": "overload tests of road-vehicle cable, remembered",
} as const;

export interface HeatLimitsRow {
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
  { id: "adiabatic-longest", meaning: "longest time the adiabatic end temperature is allowed", value: 5, unit: "s", source: from["iec60949"], place: "validity of the adiabatic law", confidence: "secondary", note: null },
  { id: "hours-rise", meaning: "rise over the cable class allowed for hours", value: 50, unit: "K", source: from["overload-tests"], place: "short-term overload", confidence: "memory", note: null },
  { id: "hours-longest", meaning: "longest time of that rise", value: 6, unit: "h", source: from["overload-tests"], place: "short-term overload", confidence: "memory", note: null },
  { id: "endless-rise", meaning: "rise over the cable class allowed without end, up to 1.35 x the fuse", value: 25, unit: "K", source: from["overload-tests"], place: "long-term", confidence: "memory", note: null },
  { id: "endless-fuse-ratio", meaning: "overload that no blade fuse need ever open on", value: 1.35, unit: "ratio", source: from["fuse-gates"], place: "smart short", confidence: "derived", note: null },
] as const satisfies readonly HeatLimitsRow[];

export const heatLimits: readonly HeatLimitsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const heatLimitsUnits = {
  value: null,
} as const;
