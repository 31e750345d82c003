// Generated from data/crimpPull.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "a620-report": "IPC/WHMA-A-620B table 19-12 as reproduced in a 2019 qualification report",
  "crimp-interpolated": "interpolated by area between the commercial rows",
  "crimp-specs": "two terminal application specifications giving UL 486A-type and military pull forces",
  "nasa-8739-4a": "NASA-STD-8739.4A table 12-1, quoted on a cable maker's page",
} as const;

export interface CrimpPullRow {
  readonly id: string;
  readonly standard: string;
  readonly awg: string | null;
  readonly areaMm2: number;
  readonly minPullN: number;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "commercial-26", standard: "commercial", awg: "26", areaMm2: 0.13, minPullN: 13.4, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "military-26", standard: "military", awg: "26", areaMm2: 0.13, minPullN: 31.1, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-24", standard: "commercial", awg: "24", areaMm2: 0.2, minPullN: 22.3, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "military-24", standard: "military", awg: "24", areaMm2: 0.2, minPullN: 44.5, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-22", standard: "commercial", awg: "22", areaMm2: 0.33, minPullN: 35.6, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "military-22", standard: "military", awg: "22", areaMm2: 0.33, minPullN: 66.7, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-20", standard: "commercial", awg: "20", areaMm2: 0.52, minPullN: 57.9, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "military-20", standard: "military", awg: "20", areaMm2: 0.52, minPullN: 84.5, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-18", standard: "commercial", awg: "18", areaMm2: 0.82, minPullN: 89, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "military-18", standard: "military", awg: "18", areaMm2: 0.82, minPullN: 169, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-16", standard: "commercial", awg: "16", areaMm2: 1.31, minPullN: 133.5, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "military-16", standard: "military", awg: "16", areaMm2: 1.31, minPullN: 222.5, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-14", standard: "commercial", awg: "14", areaMm2: 2.08, minPullN: 222.5, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "military-14", standard: "military", awg: "14", areaMm2: 2.08, minPullN: 311.5, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-12", standard: "commercial", awg: "12", areaMm2: 3.31, minPullN: 311.5, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "military-12", standard: "military", awg: "12", areaMm2: 3.31, minPullN: 489.3, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-10", standard: "commercial", awg: "10", areaMm2: 5.26, minPullN: 356, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "military-10", standard: "military", awg: "10", areaMm2: 5.26, minPullN: 667.2, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-8", standard: "commercial", awg: "8", areaMm2: 8.37, minPullN: 400.5, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-6", standard: "commercial", awg: "6", areaMm2: 13.3, minPullN: 445, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-4", standard: "commercial", awg: "4", areaMm2: 21.2, minPullN: 623, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-2", standard: "commercial", awg: "2", areaMm2: 33.6, minPullN: 801, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-1/0", standard: "commercial", awg: "1/0", areaMm2: 53.5, minPullN: 1112.5, source: from["crimp-specs"], place: "pull-out force", confidence: "seen" },
  { id: "commercial-2/0", standard: "commercial", awg: "2/0", areaMm2: 67.4, minPullN: 1334, source: from["crimp-specs"], place: "pull-out force", confidence: "derived" },
  { id: "space-28", standard: "space", awg: "28", areaMm2: 0.08, minPullN: 22, source: from["nasa-8739-4a"], place: "pull-out force", confidence: "secondary" },
  { id: "space-26", standard: "space", awg: "26", areaMm2: 0.13, minPullN: 36, source: from["nasa-8739-4a"], place: "pull-out force", confidence: "secondary" },
  { id: "space-24", standard: "space", awg: "24", areaMm2: 0.2, minPullN: 36, source: from["nasa-8739-4a"], place: "pull-out force", confidence: "secondary" },
  { id: "space-22", standard: "space", awg: "22", areaMm2: 0.33, minPullN: 57, source: from["nasa-8739-4a"], place: "pull-out force", confidence: "secondary" },
  { id: "space-20", standard: "space", awg: "20", areaMm2: 0.52, minPullN: 92, source: from["nasa-8739-4a"], place: "pull-out force", confidence: "secondary" },
  { id: "space-18", standard: "space", awg: "18", areaMm2: 0.82, minPullN: 142, source: from["nasa-8739-4a"], place: "pull-out force", confidence: "secondary" },
  { id: "space-16", standard: "space", awg: "16", areaMm2: 1.31, minPullN: 183, source: from["nasa-8739-4a"], place: "pull-out force", confidence: "secondary" },
  { id: "machined-contact-30", standard: "machined-contact", awg: "30", areaMm2: 0.05, minPullN: 6.7, source: from["a620-report"], place: "pull-out force", confidence: "secondary" },
  { id: "machined-contact-28", standard: "machined-contact", awg: "28", areaMm2: 0.08, minPullN: 13.4, source: from["a620-report"], place: "pull-out force", confidence: "secondary" },
  { id: "machined-contact-26", standard: "machined-contact", awg: "26", areaMm2: 0.13, minPullN: 22.3, source: from["a620-report"], place: "pull-out force", confidence: "secondary" },
  { id: "machined-contact-24", standard: "machined-contact", awg: "24", areaMm2: 0.2, minPullN: 35.6, source: from["a620-report"], place: "pull-out force", confidence: "secondary" },
  { id: "machined-contact-22", standard: "machined-contact", awg: "22", areaMm2: 0.324, minPullN: 53.4, source: from["a620-report"], place: "pull-out force", confidence: "secondary" },
  { id: "machined-contact-20", standard: "machined-contact", awg: "20", areaMm2: 0.519, minPullN: 89, source: from["a620-report"], place: "pull-out force", confidence: "secondary" },
  { id: "machined-contact-18", standard: "machined-contact", awg: "18", areaMm2: 0.823, minPullN: 142, source: from["a620-report"], place: "pull-out force", confidence: "secondary" },
  { id: "machined-contact-16", standard: "machined-contact", awg: "16", areaMm2: 1.31, minPullN: 222.3, source: from["a620-report"], place: "pull-out force", confidence: "secondary" },
  { id: "machined-contact-14", standard: "machined-contact", awg: "14", areaMm2: 2.08, minPullN: 311.5, source: from["a620-report"], place: "pull-out force", confidence: "secondary" },
  { id: "machined-contact-12", standard: "machined-contact", awg: "12", areaMm2: 3.31, minPullN: 489.5, source: from["a620-report"], place: "pull-out force", confidence: "secondary" },
  { id: "metric-0.5", standard: "metric", awg: null, areaMm2: 0.5, minPullN: 55, source: from["crimp-interpolated"], place: "pull-out force", confidence: "derived" },
  { id: "metric-0.65", standard: "metric", awg: null, areaMm2: 0.65, minPullN: 71, source: from["crimp-interpolated"], place: "pull-out force", confidence: "derived" },
  { id: "metric-0.75", standard: "metric", awg: null, areaMm2: 0.75, minPullN: 81, source: from["crimp-interpolated"], place: "pull-out force", confidence: "derived" },
  { id: "metric-1.0", standard: "metric", awg: null, areaMm2: 1, minPullN: 105, source: from["crimp-interpolated"], place: "pull-out force", confidence: "derived" },
  { id: "metric-1.5", standard: "metric", awg: null, areaMm2: 1.5, minPullN: 155, source: from["crimp-interpolated"], place: "pull-out force", confidence: "derived" },
  { id: "metric-2.0", standard: "metric", awg: null, areaMm2: 2, minPullN: 213, source: from["crimp-interpolated"], place: "pull-out force", confidence: "derived" },
  { id: "metric-2.5", standard: "metric", awg: null, areaMm2: 2.5, minPullN: 253, source: from["crimp-interpolated"], place: "pull-out force", confidence: "derived" },
  { id: "metric-3.0", standard: "metric", awg: null, areaMm2: 3, minPullN: 289, source: from["crimp-interpolated"], place: "pull-out force", confidence: "derived" },
  { id: "metric-4.0", standard: "metric", awg: null, areaMm2: 4, minPullN: 327, source: from["crimp-interpolated"], place: "pull-out force", confidence: "derived" },
  { id: "metric-4.5", standard: "metric", awg: null, areaMm2: 4.5, minPullN: 338, source: from["crimp-interpolated"], place: "pull-out force", confidence: "derived" },
] as const satisfies readonly CrimpPullRow[];

export const crimpPull: readonly CrimpPullRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const crimpPullUnits = {
  areaMm2: "mm2",
  minPullN: "N",
} as const;
