// Generated from data/fusePerWire.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "faa-ac43-13-1b": "FAA AC 43.13-1B Change 1 (2001), chapter 11",
  "german-loom-rule": "German classic-car electrics page, minimum area per fuse",
} as const;

export interface FusePerWireRow {
  readonly id: string;
  readonly rule: string;
  readonly areaMm2: number;
  readonly fuseA: number;
  readonly breakerA: number | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "aircraft-22", rule: "aircraft", areaMm2: 0.33, fuseA: 5, breakerA: 5, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-20", rule: "aircraft", areaMm2: 0.52, fuseA: 5, breakerA: 7.5, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-18", rule: "aircraft", areaMm2: 0.82, fuseA: 10, breakerA: 10, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-16", rule: "aircraft", areaMm2: 1.31, fuseA: 10, breakerA: 15, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-14", rule: "aircraft", areaMm2: 2.08, fuseA: 15, breakerA: 20, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-12", rule: "aircraft", areaMm2: 3.31, fuseA: 20, breakerA: 30, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-10", rule: "aircraft", areaMm2: 5.26, fuseA: 30, breakerA: 40, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-8", rule: "aircraft", areaMm2: 8.37, fuseA: 50, breakerA: 50, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-6", rule: "aircraft", areaMm2: 13.3, fuseA: 70, breakerA: 80, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-4", rule: "aircraft", areaMm2: 21.2, fuseA: 70, breakerA: 100, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-2", rule: "aircraft", areaMm2: 33.6, fuseA: 100, breakerA: 125, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-1", rule: "aircraft", areaMm2: 42.4, fuseA: 150, breakerA: null, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "aircraft-0", rule: "aircraft", areaMm2: 53.5, fuseA: 150, breakerA: null, source: from["faa-ac43-13-1b"], place: "table 11-3; area from AWG geometry", confidence: "seen" },
  { id: "loom-0.75", rule: "loom", areaMm2: 0.75, fuseA: 3, breakerA: null, source: from["german-loom-rule"], place: "table of cross sections", confidence: "secondary" },
  { id: "loom-1", rule: "loom", areaMm2: 1, fuseA: 6, breakerA: null, source: from["german-loom-rule"], place: "table of cross sections", confidence: "secondary" },
  { id: "loom-1.5", rule: "loom", areaMm2: 1.5, fuseA: 8, breakerA: null, source: from["german-loom-rule"], place: "table of cross sections", confidence: "secondary" },
  { id: "loom-2.5", rule: "loom", areaMm2: 2.5, fuseA: 16, breakerA: null, source: from["german-loom-rule"], place: "table of cross sections", confidence: "secondary" },
  { id: "loom-4", rule: "loom", areaMm2: 4, fuseA: 25, breakerA: null, source: from["german-loom-rule"], place: "table of cross sections", confidence: "secondary" },
] as const satisfies readonly FusePerWireRow[];

export const fusePerWire: readonly FusePerWireRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const fusePerWireUnits = {
  areaMm2: "mm2",
  fuseA: "A",
  breakerA: "A",
} as const;
