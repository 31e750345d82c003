// Generated from data/contactRules.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "ecss-30-11": "ECSS-Q-ST-30-11C Rev.2, as transcribed in an open repository",
  "faa-ac43-13-1b": "FAA AC 43.13-1B Change 1 (2001), chapter 11",
  "terminal-block-spec": "terminal block purchase specification",
} as const;

export interface ContactRulesRow {
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
  { id: "low-energy-volts", meaning: "silver contacts not for circuits under this, unless rated for it", value: 8, unit: "V", source: from["faa-ac43-13-1b"], place: "11-52", confidence: "seen", note: null },
  { id: "low-energy-current", meaning: "silver contacts not for circuits under this, unless rated for it", value: 0.5, unit: "A", source: from["faa-ac43-13-1b"], place: "11-52", confidence: "seen", note: null },
  { id: "rated-share", meaning: "share of a contact's rated current, space rule", value: 0.5, unit: "ratio", source: from["ecss-30-11"], place: "table 6-10", confidence: "secondary", note: null },
  { id: "pcb-contact", meaning: "terminal contact of a 16 A class block, most", value: 0.7, unit: "mohm", source: from["terminal-block-spec"], place: "contact", confidence: "seen", note: null },
] as const satisfies readonly ContactRulesRow[];

export const contactRules: readonly ContactRulesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const contactRulesUnits = {
  value: null,
} as const;
