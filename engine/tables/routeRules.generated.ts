// Generated from data/routeRules.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "own-rule": "own rule of this program",
} as const;

export interface RouteRulesRow {
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
  { id: "stub", meaning: "path length taken for a wire whose two ends are at one station", value: 80, unit: "mm", source: from["own-rule"], place: "route defaults", confidence: "own", note: "marked estimated wherever it is used" },
  { id: "tie", meaning: "another way round is reported when no longer than the shortest by this much", value: 10, unit: "%", source: from["own-rule"], place: "route defaults", confidence: "own", note: null },
  { id: "length-least", meaning: "a path length under this is shorter than a connector and is asked about", value: 30, unit: "mm", source: from["own-rule"], place: "doubtful lengths", confidence: "own", note: null },
  { id: "length-most", meaning: "a path length over this is longer than a machine and is asked about", value: 4000, unit: "mm", source: from["own-rule"], place: "doubtful lengths", confidence: "own", note: null },
  { id: "length-unlike", meaning: "a run this many times longer or shorter than the middle run of the job is asked about", value: 8, unit: "ratio", source: from["own-rule"], place: "doubtful lengths", confidence: "own", note: null },
  { id: "as-laid-least", meaning: "hand-laid bundle over the tightest packing, least", value: 1.05, unit: "ratio", source: from["own-rule"], place: "loom as laid, to be measured", confidence: "own", note: "the 1.2 rule of the trade is the tightest packing of a usual mix plus about 6 %" },
  { id: "as-laid-most", meaning: "hand-laid bundle over the tightest packing, most", value: 1.08, unit: "ratio", source: from["own-rule"], place: "loom as laid, to be measured", confidence: "own", note: null },
] as const satisfies readonly RouteRulesRow[];

export const routeRules: readonly RouteRulesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const routeRulesUnits = {
  value: null,
} as const;
