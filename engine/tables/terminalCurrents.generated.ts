// Generated from data/terminalCurrents.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "ul310-catalogue": "quick-connect terminal catalogue, table based on UL 310; test currents agree with a second terminal maker's page",
} as const;

export interface TerminalCurrentsRow {
  readonly id: string;
  readonly series: string;
  readonly awg: string;
  readonly areaMm2: number;
  readonly continuousA: number;
  readonly intermittentA: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
  readonly note: string | null;
}

const rows = [
  { id: "blade-6.3-22", series: "blade-6.3", awg: "22", areaMm2: 0.32, continuousA: 3, intermittentA: 6, source: from["ul310-catalogue"], place: "30 K rise; 45 min on, 15 off", confidence: "seen", note: "also 4.8 and 5.2 mm tabs; 12 and 10 AWG need a large barrel" },
  { id: "blade-6.3-20", series: "blade-6.3", awg: "20", areaMm2: 0.52, continuousA: 4, intermittentA: 8, source: from["ul310-catalogue"], place: "30 K rise; 45 min on, 15 off", confidence: "seen", note: "also 4.8 and 5.2 mm tabs; 12 and 10 AWG need a large barrel" },
  { id: "blade-6.3-18", series: "blade-6.3", awg: "18", areaMm2: 0.82, continuousA: 7, intermittentA: 14, source: from["ul310-catalogue"], place: "30 K rise; 45 min on, 15 off", confidence: "seen", note: "also 4.8 and 5.2 mm tabs; 12 and 10 AWG need a large barrel" },
  { id: "blade-6.3-16", series: "blade-6.3", awg: "16", areaMm2: 1.31, continuousA: 10, intermittentA: 20, source: from["ul310-catalogue"], place: "30 K rise; 45 min on, 15 off", confidence: "seen", note: "also 4.8 and 5.2 mm tabs; 12 and 10 AWG need a large barrel" },
  { id: "blade-6.3-14", series: "blade-6.3", awg: "14", areaMm2: 2.08, continuousA: 15, intermittentA: 30, source: from["ul310-catalogue"], place: "30 K rise; 45 min on, 15 off", confidence: "seen", note: "also 4.8 and 5.2 mm tabs; 12 and 10 AWG need a large barrel" },
  { id: "blade-6.3-12", series: "blade-6.3", awg: "12", areaMm2: 3.31, continuousA: 20, intermittentA: 40, source: from["ul310-catalogue"], place: "30 K rise; 45 min on, 15 off", confidence: "seen", note: "also 4.8 and 5.2 mm tabs; 12 and 10 AWG need a large barrel" },
  { id: "blade-6.3-10", series: "blade-6.3", awg: "10", areaMm2: 5.26, continuousA: 24, intermittentA: 48, source: from["ul310-catalogue"], place: "30 K rise; 45 min on, 15 off", confidence: "seen", note: "also 4.8 and 5.2 mm tabs; 12 and 10 AWG need a large barrel" },
  { id: "blade-2.8-22", series: "blade-2.8", awg: "22", areaMm2: 0.32, continuousA: 2, intermittentA: 4, source: from["ul310-catalogue"], place: "30 K rise; 45 min on, 15 off", confidence: "seen", note: null },
  { id: "blade-2.8-20", series: "blade-2.8", awg: "20", areaMm2: 0.52, continuousA: 3, intermittentA: 6, source: from["ul310-catalogue"], place: "30 K rise; 45 min on, 15 off", confidence: "seen", note: null },
  { id: "blade-2.8-18", series: "blade-2.8", awg: "18", areaMm2: 0.82, continuousA: 4, intermittentA: 8, source: from["ul310-catalogue"], place: "30 K rise; 45 min on, 15 off", confidence: "seen", note: null },
  { id: "blade-2.8-16", series: "blade-2.8", awg: "16", areaMm2: 1.31, continuousA: 5, intermittentA: 10, source: from["ul310-catalogue"], place: "30 K rise; 45 min on, 15 off", confidence: "seen", note: null },
] as const satisfies readonly TerminalCurrentsRow[];

export const terminalCurrents: readonly TerminalCurrentsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const terminalCurrentsUnits = {
  areaMm2: "mm2",
  continuousA: "A",
  intermittentA: "A",
} as const;
