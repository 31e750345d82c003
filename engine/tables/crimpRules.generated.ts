// Generated from data/crimpRules.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "contact-spec-18050": "connector application specification 114-18050",
  "crimp-handbook": "industrial crimp quality handbook rev C",
  "nasa-8739-4": "NASA-STD-8739.4 Change 6",
  "own-rule": "own rule of this program",
  "remembered-trade": "remembered, common trade listing; not found in a text",
} as const;

export interface CrimpRulesRow {
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
  { id: "tug-share", meaning: "tug test on a fitted crimp, share of the minimum pull, most", value: 0.8, unit: "ratio", source: from["nasa-8739-4"], place: "p. 70-71", confidence: "seen", note: null },
  { id: "fallback-share", meaning: "pull force where no row exists, share of wire tensile strength", value: 0.6, unit: "ratio", source: from["nasa-8739-4"], place: "13.7.4", confidence: "seen", note: null },
  { id: "suspect-share", meaning: "result over minimum under which tooling is suspect", value: 1.3, unit: "ratio", source: from["own-rule"], place: "own; good crimps average 1.82", confidence: "own", note: null },
  { id: "pull-speed", meaning: "pull speed a minute", value: 25, unit: "mm", source: from["crimp-handbook"], place: "section 7", confidence: "seen", note: null },
  { id: "samples", meaning: "crimps pulled per set-up", value: 5, unit: "count", source: from["crimp-handbook"], place: "section 7", confidence: "seen", note: null },
  { id: "gap-least", meaning: "insulation to barrel gap, least", value: 0.25, unit: "mm", source: from["nasa-8739-4"], place: "p. 53", confidence: "seen", note: null },
  { id: "gap-most-small", meaning: "insulation to barrel gap, most, 20 AWG and smaller", value: 0.75, unit: "mm", source: from["nasa-8739-4"], place: "p. 53", confidence: "seen", note: null },
  { id: "gap-most-large", meaning: "insulation to barrel gap, most, 18 AWG and larger", value: 1.25, unit: "mm", source: from["nasa-8739-4"], place: "p. 53", confidence: "seen", note: null },
  { id: "brush-least", meaning: "conductor past the barrel, least", value: 0.1, unit: "mm", source: from["contact-spec-18050"], place: "4.3", confidence: "seen", note: null },
  { id: "brush-most", meaning: "conductor past the barrel, most", value: 0.5, unit: "mm", source: from["contact-spec-18050"], place: "4.3", confidence: "seen", note: null },
  { id: "reduction-least", meaning: "area reduction in the barrel, least", value: 0.15, unit: "ratio", source: from["remembered-trade"], place: "crimp handbook rule", confidence: "memory", note: null },
  { id: "reduction-most", meaning: "area reduction in the barrel, most", value: 0.2, unit: "ratio", source: from["remembered-trade"], place: "crimp handbook rule", confidence: "memory", note: null },
] as const satisfies readonly CrimpRulesRow[];

export const crimpRules: readonly CrimpRulesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const crimpRulesUnits = {
  value: null,
} as const;
