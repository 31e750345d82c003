// Generated from data/wireReading.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "australian-auto-list": "Australian auto, marine and battery cable list, amps agreeing with a second chart",
  "own-rule": "own rule of this program",
} as const;

export interface WireReadingRow {
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
  { id: "fill-least", meaning: "copper over the circle round it, twisted conductor, least", value: 0.65, unit: "ratio", source: from["own-rule"], place: "caliper on copper", confidence: "own", note: "published conductors of thirty strands or more lie at 0.70 to 0.76" },
  { id: "fill-most", meaning: "copper over the circle round it, twisted conductor, most", value: 0.9, unit: "ratio", source: from["own-rule"], place: "caliper on copper", confidence: "own", note: "a tightly twisted hand-measured conductor can reach 0.89" },
  { id: "area-match", meaning: "counted copper this close to a stated area is that size, share of it", value: 0.01, unit: "ratio", source: from["own-rule"], place: "area as typed", confidence: "own", note: null },
  { id: "strand-match", meaning: "strand diameters this close are one and the same", value: 0.003, unit: "mm", source: from["own-rule"], place: "strands as typed", confidence: "own", note: "0.30 mm and .012 in differ by 0.0048" },
  { id: "od-below", meaning: "a diameter over the insulation may lie this far under the nominal or greatest one", value: 0.3, unit: "mm", source: from["own-rule"], place: "caliper on insulation", confidence: "own", note: null },
  { id: "od-above", meaning: "and this far over the greatest", value: 0.05, unit: "mm", source: from["own-rule"], place: "caliper on insulation", confidence: "own", note: "reading error of a caliper" },
  { id: "auto-3-other", meaning: "copper of a 3 mm auto cable of other sellers", value: 0.85, unit: "mm2", source: from["australian-auto-list"], place: "3 mm row of another seller", confidence: "seen", note: "sellers disagree on 3 mm" },
] as const satisfies readonly WireReadingRow[];

export const wireReading: readonly WireReadingRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const wireReadingUnits = {
  value: null,
} as const;
