// Generated from data/rideProfiles.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "own-rule": "own rule of this program",
} as const;

export interface RideProfilesRow {
  readonly id: string;
  readonly ride: string;
  readonly durationS: number;
  readonly speedRatio: number;
  readonly lights: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "town-1", ride: "town", durationS: 25, speedRatio: 0.24, lights: "lit", source: from["own-rule"], place: "rides", confidence: "own" },
  { id: "town-2", ride: "town", durationS: 15, speedRatio: 0.4, lights: "lit", source: from["own-rule"], place: "rides", confidence: "own" },
  { id: "town-3", ride: "town", durationS: 20, speedRatio: 0.52, lights: "lit", source: from["own-rule"], place: "rides", confidence: "own" },
  { id: "mixed-1", ride: "mixed", durationS: 60, speedRatio: 0.24, lights: "lit", source: from["own-rule"], place: "rides", confidence: "own" },
  { id: "mixed-2", ride: "mixed", durationS: 120, speedRatio: 0.45, lights: "lit", source: from["own-rule"], place: "rides", confidence: "own" },
  { id: "mixed-3", ride: "mixed", durationS: 420, speedRatio: 0.8, lights: "lit", source: from["own-rule"], place: "rides", confidence: "own" },
  { id: "night-1", ride: "night", durationS: 30, speedRatio: 0.24, lights: "main", source: from["own-rule"], place: "rides", confidence: "own" },
  { id: "night-2", ride: "night", durationS: 570, speedRatio: 0.7, lights: "main", source: from["own-rule"], place: "rides", confidence: "own" },
  { id: "rally-1", ride: "rally", durationS: 300, speedRatio: 0.24, lights: "unlit", source: from["own-rule"], place: "rides", confidence: "own" },
  { id: "rally-2", ride: "rally", durationS: 900, speedRatio: 0.4, lights: "unlit", source: from["own-rule"], place: "rides", confidence: "own" },
  { id: "rally-3", ride: "rally", durationS: 600, speedRatio: 0.7, lights: "unlit", source: from["own-rule"], place: "rides", confidence: "own" },
] as const satisfies readonly RideProfilesRow[];

export const rideProfiles: readonly RideProfilesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const rideProfilesUnits = {
  durationS: "s",
  speedRatio: "ratio",
} as const;
