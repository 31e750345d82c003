// Generated from data/awgGauges.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "astm-b258": "ASTM B258 formula d = 0.127 mm x 92^((36-n)/39)",
  "sae-min-areas": "marine-wire catalogue printing AWG and SAE minimum circular mils",
} as const;

export interface AwgGaugesRow {
  readonly id: string;
  readonly gaugeIndex: number;
  readonly diameterMm: number;
  readonly areaMm2: number;
  readonly areaCircularMils: number;
  readonly solidOhmPerKm20: number;
  readonly saeMinCircularMils: number | null;
  readonly saeMinMm2: number | null;
  readonly saeMinMm2Source: string | null;
  readonly saeMinMm2Confidence: Confidence | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "4/0", gaugeIndex: -3, diameterMm: 11.684, areaMm2: 107.2193, areaCircularMils: 211600, solidOhmPerKm20: 0.1608, saeMinCircularMils: 205500, saeMinMm2: 104.128, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "3/0", gaugeIndex: -2, diameterMm: 10.4049, areaMm2: 85.0288, areaCircularMils: 167806.4, solidOhmPerKm20: 0.2028, saeMinCircularMils: 158600, saeMinMm2: 80.364, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "2/0", gaugeIndex: -1, diameterMm: 9.2658, areaMm2: 67.4309, areaCircularMils: 133076.5, solidOhmPerKm20: 0.2557, saeMinCircularMils: 125100, saeMinMm2: 63.389, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "1/0", gaugeIndex: 0, diameterMm: 8.2515, areaMm2: 53.4751, areaCircularMils: 105534.5, solidOhmPerKm20: 0.3224, saeMinCircularMils: 98980, saeMinMm2: 50.154, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "1", gaugeIndex: 1, diameterMm: 7.3481, areaMm2: 42.4077, areaCircularMils: 83692.7, solidOhmPerKm20: 0.4066, saeMinCircularMils: 77790, saeMinMm2: 39.417, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "2", gaugeIndex: 2, diameterMm: 6.5437, areaMm2: 33.6308, areaCircularMils: 66371.3, solidOhmPerKm20: 0.5127, saeMinCircularMils: 62450, saeMinMm2: 31.644, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "3", gaugeIndex: 3, diameterMm: 5.8273, areaMm2: 26.6705, areaCircularMils: 52634.8, solidOhmPerKm20: 0.6464, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "4", gaugeIndex: 4, diameterMm: 5.1894, areaMm2: 21.1506, areaCircularMils: 41741.3, solidOhmPerKm20: 0.8152, saeMinCircularMils: 37360, saeMinMm2: 18.931, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "5", gaugeIndex: 5, diameterMm: 4.6213, areaMm2: 16.7732, areaCircularMils: 33102.4, solidOhmPerKm20: 1.0279, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "6", gaugeIndex: 6, diameterMm: 4.1154, areaMm2: 13.3018, areaCircularMils: 26251.4, solidOhmPerKm20: 1.2961, saeMinCircularMils: 24538, saeMinMm2: 12.434, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "7", gaugeIndex: 7, diameterMm: 3.6649, areaMm2: 10.5488, areaCircularMils: 20818.3, solidOhmPerKm20: 1.6344, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "8", gaugeIndex: 8, diameterMm: 3.2636, areaMm2: 8.3656, areaCircularMils: 16509.7, solidOhmPerKm20: 2.0609, saeMinCircularMils: 14810, saeMinMm2: 7.504, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "9", gaugeIndex: 9, diameterMm: 2.9064, areaMm2: 6.6342, areaCircularMils: 13092.7, solidOhmPerKm20: 2.5988, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "10", gaugeIndex: 10, diameterMm: 2.5882, areaMm2: 5.2612, areaCircularMils: 10383, solidOhmPerKm20: 3.277, saeMinCircularMils: 9343, saeMinMm2: 4.734, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "11", gaugeIndex: 11, diameterMm: 2.3048, areaMm2: 4.1723, areaCircularMils: 8234.1, solidOhmPerKm20: 4.1323, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "12", gaugeIndex: 12, diameterMm: 2.0525, areaMm2: 3.3088, areaCircularMils: 6529.9, solidOhmPerKm20: 5.2107, saeMinCircularMils: 5833, saeMinMm2: 2.956, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "13", gaugeIndex: 13, diameterMm: 1.8278, areaMm2: 2.624, areaCircularMils: 5178.5, solidOhmPerKm20: 6.5706, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "14", gaugeIndex: 14, diameterMm: 1.6277, areaMm2: 2.0809, areaCircularMils: 4106.7, solidOhmPerKm20: 8.2853, saeMinCircularMils: 3702, saeMinMm2: 1.876, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "15", gaugeIndex: 15, diameterMm: 1.4495, areaMm2: 1.6502, areaCircularMils: 3256.8, solidOhmPerKm20: 10.4476, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "16", gaugeIndex: 16, diameterMm: 1.2908, areaMm2: 1.3087, areaCircularMils: 2582.7, solidOhmPerKm20: 13.1742, saeMinCircularMils: 2336, saeMinMm2: 1.184, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "17", gaugeIndex: 17, diameterMm: 1.1495, areaMm2: 1.0378, areaCircularMils: 2048.2, solidOhmPerKm20: 16.6123, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "18", gaugeIndex: 18, diameterMm: 1.0237, areaMm2: 0.823, areaCircularMils: 1624.3, solidOhmPerKm20: 20.9478, saeMinCircularMils: 1537, saeMinMm2: 0.779, saeMinMm2Source: from["sae-min-areas"], saeMinMm2Confidence: "secondary", source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "19", gaugeIndex: 19, diameterMm: 0.9116, areaMm2: 0.6527, areaCircularMils: 1288.1, solidOhmPerKm20: 26.4147, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "20", gaugeIndex: 20, diameterMm: 0.8118, areaMm2: 0.5176, areaCircularMils: 1021.5, solidOhmPerKm20: 33.3083, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "21", gaugeIndex: 21, diameterMm: 0.7229, areaMm2: 0.4105, areaCircularMils: 810.1, solidOhmPerKm20: 42.0009, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "22", gaugeIndex: 22, diameterMm: 0.6438, areaMm2: 0.3255, areaCircularMils: 642.4, solidOhmPerKm20: 52.9622, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "23", gaugeIndex: 23, diameterMm: 0.5733, areaMm2: 0.2582, areaCircularMils: 509.5, solidOhmPerKm20: 66.7841, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "24", gaugeIndex: 24, diameterMm: 0.5106, areaMm2: 0.2047, areaCircularMils: 404, solidOhmPerKm20: 84.2132, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "25", gaugeIndex: 25, diameterMm: 0.4547, areaMm2: 0.1624, areaCircularMils: 320.4, solidOhmPerKm20: 106.1909, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "26", gaugeIndex: 26, diameterMm: 0.4049, areaMm2: 0.1288, areaCircularMils: 254.1, solidOhmPerKm20: 133.9043, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "27", gaugeIndex: 27, diameterMm: 0.3606, areaMm2: 0.1021, areaCircularMils: 201.5, solidOhmPerKm20: 168.8502, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "28", gaugeIndex: 28, diameterMm: 0.3211, areaMm2: 0.081, areaCircularMils: 159.8, solidOhmPerKm20: 212.9161, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "29", gaugeIndex: 29, diameterMm: 0.2859, areaMm2: 0.0642, areaCircularMils: 126.7, solidOhmPerKm20: 268.4823, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "30", gaugeIndex: 30, diameterMm: 0.2546, areaMm2: 0.0509, areaCircularMils: 100.5, solidOhmPerKm20: 338.5499, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
  { id: "36", gaugeIndex: 36, diameterMm: 0.127, areaMm2: 0.0127, areaCircularMils: 25, solidOhmPerKm20: 1361.0219, saeMinCircularMils: null, saeMinMm2: null, saeMinMm2Source: null, saeMinMm2Confidence: null, source: from["astm-b258"], place: "formula", confidence: "computed" },
] as const satisfies readonly AwgGaugesRow[];

export const awgGauges: readonly AwgGaugesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const awgGaugesUnits = {
  gaugeIndex: "index",
  diameterMm: "mm",
  areaMm2: "mm2",
  areaCircularMils: "cmil",
  solidOhmPerKm20: "ohm/km",
  saeMinCircularMils: "cmil",
  saeMinMm2: "mm2",
} as const;
