// Generated from data/switchDerating.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "faa-ac43-13-1b": "FAA AC 43.13-1B Change 1 (2001), chapter 11",
} as const;

export interface SwitchDeratingRow {
  readonly id: string;
  readonly meaning: string;
  readonly at12Ratio: number;
  readonly at28Ratio: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "lamp", meaning: "filament lamps", at12Ratio: 5, at28Ratio: 8, source: from["faa-ac43-13-1b"], place: "table 11-4", confidence: "seen" },
  { id: "inductive", meaning: "coils, horns, relays", at12Ratio: 2, at28Ratio: 4, source: from["faa-ac43-13-1b"], place: "table 11-4", confidence: "seen" },
  { id: "resistive", meaning: "heaters", at12Ratio: 1, at28Ratio: 2, source: from["faa-ac43-13-1b"], place: "table 11-4", confidence: "seen" },
  { id: "motor", meaning: "motors", at12Ratio: 2, at28Ratio: 3, source: from["faa-ac43-13-1b"], place: "table 11-4", confidence: "seen" },
] as const satisfies readonly SwitchDeratingRow[];

export const switchDerating: readonly SwitchDeratingRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const switchDeratingUnits = {
  at12Ratio: "ratio",
  at28Ratio: "ratio",
} as const;
