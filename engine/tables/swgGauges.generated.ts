// Generated from data/swgGauges.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "bs3737": "BS 3737:1964 sizes, two open tables which agree",
  "old-fuse-wire": "old British wiring-rules fuse-wire table, remembered; 38 to 40 SWG seen in a fuse-wire chart",
} as const;

export interface SwgGaugesRow {
  readonly id: string;
  readonly diameterIn: number;
  readonly diameterMm: number;
  readonly areaMm2: number;
  readonly oldFuseWireRatedA: number | null;
  readonly oldFuseWireFusingA: number | null;
  readonly oldFuseWireFusingASource: string | null;
  readonly oldFuseWireFusingAConfidence: Confidence | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "7/0", diameterIn: 0.5, diameterMm: 12.7, areaMm2: 126.67687, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "6/0", diameterIn: 0.464, diameterMm: 11.7856, areaMm2: 109.09209, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "5/0", diameterIn: 0.432, diameterMm: 10.9728, areaMm2: 94.56378, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "4/0", diameterIn: 0.4, diameterMm: 10.16, areaMm2: 81.0732, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "3/0", diameterIn: 0.372, diameterMm: 9.4488, areaMm2: 70.12021, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "2/0", diameterIn: 0.348, diameterMm: 8.8392, areaMm2: 61.3643, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "0", diameterIn: 0.324, diameterMm: 8.2296, areaMm2: 53.19212, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "1", diameterIn: 0.3, diameterMm: 7.62, areaMm2: 45.60367, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "2", diameterIn: 0.276, diameterMm: 7.0104, areaMm2: 38.59895, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "3", diameterIn: 0.252, diameterMm: 6.4008, areaMm2: 32.17795, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "4", diameterIn: 0.232, diameterMm: 5.8928, areaMm2: 27.27302, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "5", diameterIn: 0.212, diameterMm: 5.3848, areaMm2: 22.77346, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "6", diameterIn: 0.192, diameterMm: 4.8768, areaMm2: 18.67926, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "7", diameterIn: 0.176, diameterMm: 4.4704, areaMm2: 15.69577, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "8", diameterIn: 0.16, diameterMm: 4.064, areaMm2: 12.97171, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "9", diameterIn: 0.144, diameterMm: 3.6576, areaMm2: 10.50709, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "10", diameterIn: 0.128, diameterMm: 3.2512, areaMm2: 8.3019, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "11", diameterIn: 0.116, diameterMm: 2.9464, areaMm2: 6.81826, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "12", diameterIn: 0.104, diameterMm: 2.6416, areaMm2: 5.48055, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "13", diameterIn: 0.092, diameterMm: 2.3368, areaMm2: 4.28877, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "14", diameterIn: 0.08, diameterMm: 2.032, areaMm2: 3.24293, oldFuseWireRatedA: 102, oldFuseWireFusingA: 230, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "15", diameterIn: 0.072, diameterMm: 1.8288, areaMm2: 2.62677, oldFuseWireRatedA: 78, oldFuseWireFusingA: 197, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "16", diameterIn: 0.064, diameterMm: 1.6256, areaMm2: 2.07547, oldFuseWireRatedA: 73, oldFuseWireFusingA: 166, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "17", diameterIn: 0.056, diameterMm: 1.4224, areaMm2: 1.58903, oldFuseWireRatedA: 65, oldFuseWireFusingA: 135, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "18", diameterIn: 0.048, diameterMm: 1.2192, areaMm2: 1.16745, oldFuseWireRatedA: 45, oldFuseWireFusingA: 106, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "19", diameterIn: 0.04, diameterMm: 1.016, areaMm2: 0.81073, oldFuseWireRatedA: 38, oldFuseWireFusingA: 80, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "20", diameterIn: 0.036, diameterMm: 0.9144, areaMm2: 0.65669, oldFuseWireRatedA: 34, oldFuseWireFusingA: 70, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "21", diameterIn: 0.032, diameterMm: 0.8128, areaMm2: 0.51887, oldFuseWireRatedA: 29, oldFuseWireFusingA: 58, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "22", diameterIn: 0.028, diameterMm: 0.7112, areaMm2: 0.39726, oldFuseWireRatedA: 24, oldFuseWireFusingA: 48, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "23", diameterIn: 0.024, diameterMm: 0.6096, areaMm2: 0.29186, oldFuseWireRatedA: 20, oldFuseWireFusingA: 38, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "24", diameterIn: 0.022, diameterMm: 0.5588, areaMm2: 0.24525, oldFuseWireRatedA: 17, oldFuseWireFusingA: 33, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "25", diameterIn: 0.02, diameterMm: 0.508, areaMm2: 0.20268, oldFuseWireRatedA: 15, oldFuseWireFusingA: 30, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "26", diameterIn: 0.018, diameterMm: 0.4572, areaMm2: 0.16417, oldFuseWireRatedA: 14, oldFuseWireFusingA: 28, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "27", diameterIn: 0.0164, diameterMm: 0.4166, areaMm2: 0.13628, oldFuseWireRatedA: 13, oldFuseWireFusingA: 23, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "28", diameterIn: 0.0148, diameterMm: 0.3759, areaMm2: 0.11099, oldFuseWireRatedA: 12, oldFuseWireFusingA: 18, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "29", diameterIn: 0.0136, diameterMm: 0.3454, areaMm2: 0.09372, oldFuseWireRatedA: 10, oldFuseWireFusingA: 16, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "30", diameterIn: 0.0124, diameterMm: 0.315, areaMm2: 0.07791, oldFuseWireRatedA: 8.5, oldFuseWireFusingA: 13, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "31", diameterIn: 0.0116, diameterMm: 0.2946, areaMm2: 0.06818, oldFuseWireRatedA: 8, oldFuseWireFusingA: 12, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "32", diameterIn: 0.0108, diameterMm: 0.2743, areaMm2: 0.0591, oldFuseWireRatedA: 7, oldFuseWireFusingA: 11, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "33", diameterIn: 0.01, diameterMm: 0.254, areaMm2: 0.05067, oldFuseWireRatedA: 6.5, oldFuseWireFusingA: 10, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "34", diameterIn: 0.0092, diameterMm: 0.2337, areaMm2: 0.04289, oldFuseWireRatedA: 5.5, oldFuseWireFusingA: 9, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "35", diameterIn: 0.0084, diameterMm: 0.2134, areaMm2: 0.03575, oldFuseWireRatedA: 5, oldFuseWireFusingA: 8, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "36", diameterIn: 0.0076, diameterMm: 0.193, areaMm2: 0.02927, oldFuseWireRatedA: 4.5, oldFuseWireFusingA: 7, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "37", diameterIn: 0.0068, diameterMm: 0.1727, areaMm2: 0.02343, oldFuseWireRatedA: 3.5, oldFuseWireFusingA: 6, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "38", diameterIn: 0.006, diameterMm: 0.1524, areaMm2: 0.01824, oldFuseWireRatedA: 3, oldFuseWireFusingA: 5, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "39", diameterIn: 0.0052, diameterMm: 0.1321, areaMm2: 0.0137, oldFuseWireRatedA: 2.5, oldFuseWireFusingA: 4, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "40", diameterIn: 0.0048, diameterMm: 0.1219, areaMm2: 0.01167, oldFuseWireRatedA: 1.5, oldFuseWireFusingA: 3, oldFuseWireFusingASource: from["old-fuse-wire"], oldFuseWireFusingAConfidence: "memory", source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "41", diameterIn: 0.0044, diameterMm: 0.1118, areaMm2: 0.00981, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "42", diameterIn: 0.004, diameterMm: 0.1016, areaMm2: 0.00811, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "43", diameterIn: 0.0036, diameterMm: 0.0914, areaMm2: 0.00657, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "44", diameterIn: 0.0032, diameterMm: 0.0813, areaMm2: 0.00519, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "45", diameterIn: 0.0028, diameterMm: 0.0711, areaMm2: 0.00397, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "46", diameterIn: 0.0024, diameterMm: 0.061, areaMm2: 0.00292, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "47", diameterIn: 0.002, diameterMm: 0.0508, areaMm2: 0.00203, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "48", diameterIn: 0.0016, diameterMm: 0.0406, areaMm2: 0.0013, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "49", diameterIn: 0.0012, diameterMm: 0.0305, areaMm2: 0.00073, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
  { id: "50", diameterIn: 0.001, diameterMm: 0.0254, areaMm2: 0.00051, oldFuseWireRatedA: null, oldFuseWireFusingA: null, oldFuseWireFusingASource: null, oldFuseWireFusingAConfidence: null, source: from["bs3737"], place: "sizes", confidence: "secondary" },
] as const satisfies readonly SwgGaugesRow[];

export const swgGauges: readonly SwgGaugesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const swgGaugesUnits = {
  diameterIn: "in",
  diameterMm: "mm",
  areaMm2: "mm2",
  oldFuseWireRatedA: "A",
  oldFuseWireFusingA: "A",
} as const;
