// Generated from data/airProperties.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "definition": "exact by definition",
  "iec60287": "IEC 60287-2-1 thermal resistivity, quoted",
  "loom-fit": "one parameter loom model, which meets the IEC bunched factors within 5 % for 2 to 20 wires",
  "remembered-textbook": "textbook constant, remembered",
} as const;

export interface AirPropertiesRow {
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
  { id: "pressure", meaning: "standard pressure", value: 101325, unit: "Pa", source: from["definition"], place: "standard atmosphere", confidence: "computed", note: null },
  { id: "viscosity-factor", meaning: "Sutherland: mu = a T^1.5 / (T + b), a", value: 0.000001458, unit: "kg/m s K0.5", source: from["remembered-textbook"], place: "air", confidence: "memory", note: null },
  { id: "viscosity-offset", meaning: "Sutherland b", value: 110.4, unit: "K", source: from["remembered-textbook"], place: "air", confidence: "memory", note: null },
  { id: "conductivity-factor", meaning: "k = a T^1.5 / (T + b 10^(-c/T)), a", value: 0.00264638, unit: "W/mK1.5", source: from["remembered-textbook"], place: "air", confidence: "memory", note: null },
  { id: "conductivity-offset", meaning: "b of the conductivity", value: 245.4, unit: "K", source: from["remembered-textbook"], place: "air", confidence: "memory", note: null },
  { id: "conductivity-exponent", meaning: "c of the conductivity", value: 12, unit: "K", source: from["remembered-textbook"], place: "air", confidence: "memory", note: null },
  { id: "gas-constant", meaning: "gas constant of dry air", value: 287.055, unit: "J/kgK", source: from["remembered-textbook"], place: "air", confidence: "memory", note: null },
  { id: "specific-heat", meaning: "specific heat at constant pressure", value: 1007, unit: "J/kgK", source: from["remembered-textbook"], place: "air", confidence: "memory", note: null },
  { id: "gravity", meaning: "acceleration of free fall", value: 9.80665, unit: "m/s2", source: from["definition"], place: "standard gravity", confidence: "computed", note: null },
  { id: "stefan-boltzmann", meaning: "radiation constant", value: 5.670374419e-8, unit: "W/m2K4", source: from["definition"], place: "SI 2019", confidence: "computed", note: null },
  { id: "bundle-conductivity", meaning: "conductivity across a loom of insulated wires", value: 0.15, unit: "W/mK", source: from["loom-fit"], place: "loom model", confidence: "derived", note: null },
  { id: "bundle-packing", meaning: "loom diameter = factor x sqrt(N) x wire diameter in the loom heat model", value: 1.15, unit: "ratio", source: from["loom-fit"], place: "loom model", confidence: "derived", note: null },
  { id: "sleeve-conductivity", meaning: "conductivity of PVC sleeve or heat-shrink", value: 0.2, unit: "W/mK", source: from["iec60287"], place: "as PVC", confidence: "secondary", note: null },
  { id: "sleeve-gap-air-conductivity", meaning: "conductivity of still air in the gap under a sleeve", value: 0.027, unit: "W/mK", source: from["remembered-textbook"], place: "air near 45 C", confidence: "memory", note: null },
] as const satisfies readonly AirPropertiesRow[];

export const airProperties: readonly AirPropertiesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const airPropertiesUnits = {
  value: null,
} as const;
