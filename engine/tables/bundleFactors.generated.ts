// Generated from data/bundleFactors.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "faa-ac43-13-1b": "FAA AC 43.13-1B Change 1 (2001), chapter 11",
  "iec60364-5-52": "IEC 60364-5-52, as carried in two independent open transcriptions",
  "mil-w-5088l": "MIL-W-5088L bundle curves, digitised; two printed aircraft examples agree",
} as const;

export interface BundleFactorsRow {
  readonly id: string;
  readonly wireCount: number;
  readonly loaded20Ratio: number | null;
  readonly loaded40Ratio: number | null;
  readonly loaded60Ratio: number | null;
  readonly loaded80Ratio: number | null;
  readonly loaded100Ratio: number | null;
  readonly iecBunchedRatio: number | null;
  readonly iecBunchedRatioSource: string | null;
  readonly iecBunchedRatioPlace: string | null;
  readonly iecBunchedRatioConfidence: Confidence | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "1-wire", wireCount: 1, loaded20Ratio: 1, loaded40Ratio: 1, loaded60Ratio: 1, loaded80Ratio: 1, loaded100Ratio: 1, iecBunchedRatio: 1, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "2-wires", wireCount: 2, loaded20Ratio: 0.9675, loaded40Ratio: 0.92, loaded60Ratio: 0.91, loaded80Ratio: 0.87, loaded100Ratio: 0.825, iecBunchedRatio: 0.8, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "3-wires", wireCount: 3, loaded20Ratio: 0.935, loaded40Ratio: 0.855, loaded60Ratio: 0.815, loaded80Ratio: 0.77, loaded100Ratio: 0.725, iecBunchedRatio: 0.7, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "4-wires", wireCount: 4, loaded20Ratio: 0.9075, loaded40Ratio: 0.805, loaded60Ratio: 0.75, loaded80Ratio: 0.705, loaded100Ratio: 0.66, iecBunchedRatio: 0.65, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "5-wires", wireCount: 5, loaded20Ratio: 0.875, loaded40Ratio: 0.76, loaded60Ratio: 0.695, loaded80Ratio: 0.65, loaded100Ratio: 0.61, iecBunchedRatio: 0.6, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "6-wires", wireCount: 6, loaded20Ratio: 0.85, loaded40Ratio: 0.725, loaded60Ratio: 0.655, loaded80Ratio: 0.605, loaded100Ratio: 0.5725, iecBunchedRatio: 0.57, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "7-wires", wireCount: 7, loaded20Ratio: 0.82, loaded40Ratio: 0.695, loaded60Ratio: 0.625, loaded80Ratio: 0.57, loaded100Ratio: 0.54, iecBunchedRatio: 0.54, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "8-wires", wireCount: 8, loaded20Ratio: 0.795, loaded40Ratio: 0.6675, loaded60Ratio: 0.595, loaded80Ratio: 0.5425, loaded100Ratio: 0.5125, iecBunchedRatio: 0.52, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "9-wires", wireCount: 9, loaded20Ratio: 0.775, loaded40Ratio: 0.645, loaded60Ratio: 0.575, loaded80Ratio: 0.52, loaded100Ratio: 0.485, iecBunchedRatio: 0.5, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "10-wires", wireCount: 10, loaded20Ratio: 0.755, loaded40Ratio: 0.6225, loaded60Ratio: 0.55, loaded80Ratio: 0.5, loaded100Ratio: 0.465, iecBunchedRatio: null, iecBunchedRatioSource: null, iecBunchedRatioPlace: null, iecBunchedRatioConfidence: null, source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "11-wires", wireCount: 11, loaded20Ratio: 0.735, loaded40Ratio: 0.6, loaded60Ratio: 0.53, loaded80Ratio: 0.48, loaded100Ratio: 0.445, iecBunchedRatio: null, iecBunchedRatioSource: null, iecBunchedRatioPlace: null, iecBunchedRatioConfidence: null, source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "12-wires", wireCount: 12, loaded20Ratio: 0.715, loaded40Ratio: 0.585, loaded60Ratio: 0.515, loaded80Ratio: 0.465, loaded100Ratio: 0.43, iecBunchedRatio: 0.45, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "13-wires", wireCount: 13, loaded20Ratio: 0.6975, loaded40Ratio: 0.5675, loaded60Ratio: 0.495, loaded80Ratio: 0.4475, loaded100Ratio: 0.415, iecBunchedRatio: null, iecBunchedRatioSource: null, iecBunchedRatioPlace: null, iecBunchedRatioConfidence: null, source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "14-wires", wireCount: 14, loaded20Ratio: 0.685, loaded40Ratio: 0.5525, loaded60Ratio: 0.48, loaded80Ratio: 0.435, loaded100Ratio: 0.3975, iecBunchedRatio: null, iecBunchedRatioSource: null, iecBunchedRatioPlace: null, iecBunchedRatioConfidence: null, source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "15-wires", wireCount: 15, loaded20Ratio: 0.67, loaded40Ratio: 0.54, loaded60Ratio: 0.465, loaded80Ratio: 0.42, loaded100Ratio: 0.385, iecBunchedRatio: null, iecBunchedRatioSource: null, iecBunchedRatioPlace: null, iecBunchedRatioConfidence: null, source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "16-wires", wireCount: 16, loaded20Ratio: 0.6575, loaded40Ratio: 0.5275, loaded60Ratio: 0.455, loaded80Ratio: 0.41, loaded100Ratio: 0.37, iecBunchedRatio: 0.41, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "17-wires", wireCount: 17, loaded20Ratio: 0.645, loaded40Ratio: 0.515, loaded60Ratio: 0.4425, loaded80Ratio: 0.3975, loaded100Ratio: 0.36, iecBunchedRatio: null, iecBunchedRatioSource: null, iecBunchedRatioPlace: null, iecBunchedRatioConfidence: null, source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "18-wires", wireCount: 18, loaded20Ratio: 0.635, loaded40Ratio: 0.505, loaded60Ratio: 0.4325, loaded80Ratio: 0.3875, loaded100Ratio: 0.35, iecBunchedRatio: null, iecBunchedRatioSource: null, iecBunchedRatioPlace: null, iecBunchedRatioConfidence: null, source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "19-wires", wireCount: 19, loaded20Ratio: 0.625, loaded40Ratio: 0.495, loaded60Ratio: 0.4225, loaded80Ratio: 0.38, loaded100Ratio: 0.3425, iecBunchedRatio: null, iecBunchedRatioSource: null, iecBunchedRatioPlace: null, iecBunchedRatioConfidence: null, source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "20-wires", wireCount: 20, loaded20Ratio: 0.615, loaded40Ratio: null, loaded60Ratio: null, loaded80Ratio: null, loaded100Ratio: null, iecBunchedRatio: 0.38, iecBunchedRatioSource: from["iec60364-5-52"], iecBunchedRatioPlace: "table B.52.17", iecBunchedRatioConfidence: "secondary", source: from["mil-w-5088l"], place: "bundle curve", confidence: "secondary" },
  { id: "35-wires", wireCount: 35, loaded20Ratio: 0.52, loaded40Ratio: null, loaded60Ratio: null, loaded80Ratio: null, loaded100Ratio: null, iecBunchedRatio: null, iecBunchedRatioSource: null, iecBunchedRatioPlace: null, iecBunchedRatioConfidence: null, source: from["faa-ac43-13-1b"], place: "11-69 example 1", confidence: "memory" },
] as const satisfies readonly BundleFactorsRow[];

export const bundleFactors: readonly BundleFactorsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const bundleFactorsUnits = {
  wireCount: "count",
  loaded20Ratio: "ratio",
  loaded40Ratio: "ratio",
  loaded60Ratio: "ratio",
  loaded80Ratio: "ratio",
  loaded100Ratio: "ratio",
  iecBunchedRatio: "ratio",
} as const;
