// Generated from data/copper.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "faa-ac43-13-1b": "FAA AC 43.13-1B Change 1 (2001), chapter 11",
  "geometry": "worked out here from strand count and diameter",
  "iacs": "International Annealed Copper Standard, constants as repeated in two public texts",
  "iec60949": "IEC 60949 and IEC 60364-5-54 adiabatic law, constants quoted in two texts",
  "preece": "Preece's law as printed in a fuse equation table",
  "remembered-textbook": "textbook constant, remembered",
} as const;

export interface CopperRow {
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
  { id: "resistivity-20", meaning: "resistivity of annealed copper at 20 C", value: 1.7241e-8, unit: "ohm m", source: from["iacs"], place: "IACS 100 %", confidence: "secondary", note: null },
  { id: "tempco-20", meaning: "rise of resistance per kelvin at 20 C, 1/254.5", value: 0.00392927308447937, unit: "1/K", source: from["faa-ac43-13-1b"], place: "11-66, length correction 254.5 / (234.5 + T)", confidence: "seen", note: "equals 1/254.5; IACS prints 0.00393" },
  { id: "zero-resistance-below", meaning: "temperature of the straight line below zero, R ~ 234.5 + T", value: 234.5, unit: "C", source: from["faa-ac43-13-1b"], place: "11-66", confidence: "seen", note: "a magnitude: the line meets zero at -234.5 C" },
  { id: "density", meaning: "density", value: 8890, unit: "kg/m3", source: from["iacs"], place: "IACS", confidence: "secondary", note: null },
  { id: "volumetric-heat", meaning: "heat to warm one cubic metre by one kelvin", value: 3450000, unit: "J/m3K", source: from["iec60949"], place: "copper", confidence: "secondary", note: null },
  { id: "typical-over-pure", meaning: "maximum resistance of road-vehicle cable over that of pure copper of its counted area", value: 1.08, unit: "ratio", source: from["geometry"], place: "thirteen of sixteen fine strand sizes lie at 1.06 to 1.085", confidence: "derived", note: "for a cable whose published maximum is not known" },
  { id: "melting", meaning: "melting point", value: 1083, unit: "C", source: from["remembered-textbook"], place: "copper", confidence: "memory", note: null },
  { id: "adiabatic-226", meaning: "constant of k = 226 sqrt(ln((234.5+Tf)/(234.5+Ti)))", value: 226, unit: "A s0.5/mm2", source: from["iec60949"], place: "copper", confidence: "secondary", note: null },
  { id: "preece-mm", meaning: "fusing current of bare copper, I = 80 d^1.5", value: 80, unit: "A/mm1.5", source: from["preece"], place: "copper", confidence: "seen", note: "melting, never a rating" },
] as const satisfies readonly CopperRow[];

export const copper: readonly CopperRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const copperUnits = {
  value: null,
} as const;
