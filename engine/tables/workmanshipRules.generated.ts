// Generated from data/workmanshipRules.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "common-practice": "common practice of the trade",
  "iec61210-scope": "IEC 61210:2010 scope for the series; range and current remembered",
  "own-rule": "own rule of this program",
  "remembered-trade": "remembered, common trade listing; not found in a text",
} as const;

export interface WorkmanshipRulesRow {
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
  { id: "splice-wires", meaning: "wires in one crimped, soldered or twisted joint, most", value: 4, unit: "count", source: from["common-practice"], place: "joints", confidence: "common practice", note: "more go on a bus bar or a multi-way bullet" },
  { id: "rings", meaning: "rings on one stud, most", value: 4, unit: "count", source: from["remembered-trade"], place: "terminal strips", confidence: "memory", note: null },
  { id: "number-letters", meaning: "letters and figures on the mark of a wire, most", value: 8, unit: "count", source: from["own-rule"], place: "wire marks", confidence: "own", note: "what a sleeve on 1 mm2 cable shows without turning it" },
  { id: "blade-scope", meaning: "stranded copper on a quick-connect blade of any width, most", value: 6, unit: "mm2", source: from["iec61210-scope"], place: "scope", confidence: "seen", note: null },
  { id: "rings-pile", meaning: "rings on one stud that no usual stud has thread for, from", value: 12, unit: "count", source: from["common-practice"], place: "earth points", confidence: "common practice", note: "ring tongues are about 0.8 to 1 mm thick and a stud shows 10 to 15 mm" },
] as const satisfies readonly WorkmanshipRulesRow[];

export const workmanshipRules: readonly WorkmanshipRulesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const workmanshipRulesUnits = {
  value: null,
} as const;
