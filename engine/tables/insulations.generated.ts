// Generated from data/insulations.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "iec60287": "IEC 60287-2-1 thermal resistivity, quoted",
  "iec60949": "IEC 60949 and IEC 60364-5-54 adiabatic law, constants quoted in two texts",
  "remembered-textbook": "textbook constant, remembered",
} as const;

export interface InsulationsRow {
  readonly id: string;
  readonly meaning: string;
  readonly conductivityWPerMK: number;
  readonly conductivityWPerMKSource: string;
  readonly conductivityWPerMKConfidence: Confidence;
  readonly volumetricHeatJPerM3K: number;
  readonly volumetricHeatJPerM3KConfidence: Confidence;
  readonly emissivityRatio: number;
  readonly emissivityRatioConfidence: Confidence;
  readonly adiabaticEndC: number;
  readonly adiabaticEndCSource: string;
  readonly adiabaticEndCConfidence: Confidence;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "pvc", meaning: "polyvinyl chloride", conductivityWPerMK: 0.2, conductivityWPerMKSource: from["iec60287"], conductivityWPerMKConfidence: "secondary", volumetricHeatJPerM3K: 1800000, volumetricHeatJPerM3KConfidence: "memory", emissivityRatio: 0.9, emissivityRatioConfidence: "memory", adiabaticEndC: 160, adiabaticEndCSource: from["iec60949"], adiabaticEndCConfidence: "secondary", source: from["remembered-textbook"], place: "insulation properties", confidence: "memory" },
  { id: "xlpe", meaning: "cross-linked polyethylene", conductivityWPerMK: 0.286, conductivityWPerMKSource: from["iec60287"], conductivityWPerMKConfidence: "secondary", volumetricHeatJPerM3K: 2400000, volumetricHeatJPerM3KConfidence: "memory", emissivityRatio: 0.9, emissivityRatioConfidence: "memory", adiabaticEndC: 250, adiabaticEndCSource: from["iec60949"], adiabaticEndCConfidence: "secondary", source: from["remembered-textbook"], place: "insulation properties", confidence: "memory" },
] as const satisfies readonly InsulationsRow[];

export const insulations: readonly InsulationsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const insulationsUnits = {
  conductivityWPerMK: "W/mK",
  volumetricHeatJPerM3K: "J/m3K",
  emissivityRatio: "ratio",
  adiabaticEndC: "C",
} as const;
