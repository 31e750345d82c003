// Generated from data/nusseltBands.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "remembered-textbook": "textbook constant, remembered",
} as const;

export interface NusseltBandsRow {
  readonly id: string;
  readonly meaning: string;
  readonly rayleighMinRatio: number;
  readonly rayleighMaxRatio: number;
  readonly coefficientRatio: number;
  readonly powerExponent: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "morgan-1", meaning: "Morgan, horizontal cylinder: Nu = coefficient x Ra^power", rayleighMinRatio: 1e-10, rayleighMaxRatio: 0.01, coefficientRatio: 0.675, powerExponent: 0.058, source: from["remembered-textbook"], place: "Morgan's table for free convection", confidence: "memory" },
  { id: "morgan-2", meaning: "Morgan, horizontal cylinder: Nu = coefficient x Ra^power", rayleighMinRatio: 0.01, rayleighMaxRatio: 100, coefficientRatio: 1.02, powerExponent: 0.148, source: from["remembered-textbook"], place: "Morgan's table for free convection", confidence: "memory" },
  { id: "morgan-3", meaning: "Morgan, horizontal cylinder: Nu = coefficient x Ra^power", rayleighMinRatio: 100, rayleighMaxRatio: 10000, coefficientRatio: 0.85, powerExponent: 0.188, source: from["remembered-textbook"], place: "Morgan's table for free convection", confidence: "memory" },
  { id: "morgan-4", meaning: "Morgan, horizontal cylinder: Nu = coefficient x Ra^power", rayleighMinRatio: 10000, rayleighMaxRatio: 10000000, coefficientRatio: 0.48, powerExponent: 0.25, source: from["remembered-textbook"], place: "Morgan's table for free convection", confidence: "memory" },
  { id: "morgan-5", meaning: "Morgan, horizontal cylinder: Nu = coefficient x Ra^power", rayleighMinRatio: 10000000, rayleighMaxRatio: 1000000000000, coefficientRatio: 0.125, powerExponent: 0.333, source: from["remembered-textbook"], place: "Morgan's table for free convection", confidence: "memory" },
] as const satisfies readonly NusseltBandsRow[];

export const nusseltBands: readonly NusseltBandsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const nusseltBandsUnits = {
  rayleighMinRatio: "ratio",
  rayleighMaxRatio: "ratio",
  coefficientRatio: "ratio",
  powerExponent: "exponent",
} as const;
