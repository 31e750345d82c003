// Generated from data/tempClasses.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "austin-owners-note": "owners' club note \"Wiring, Thick and Thin\": trade use, sizes, 70 C limit",
  "iso6722-classes": "ISO 6722-1 / ISO 19642 class table, remembered",
} as const;

export interface TempClassesRow {
  readonly id: string;
  readonly minC: number | null;
  readonly maxC: number;
  readonly typicalMaterial: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "A", minC: -40, maxC: 85, typicalMaterial: "PVC (ordinary)", source: from["iso6722-classes"], place: "3000 h ageing", confidence: "memory" },
  { id: "B", minC: -40, maxC: 100, typicalMaterial: "PVC, the usual thin-wall grade; makers print 105", source: from["iso6722-classes"], place: "3000 h ageing", confidence: "memory" },
  { id: "C", minC: -40, maxC: 125, typicalMaterial: "XLPE or heat-resistant PVC", source: from["iso6722-classes"], place: "3000 h ageing", confidence: "memory" },
  { id: "D", minC: -40, maxC: 150, typicalMaterial: "XLPE / TPE-E / ETFE", source: from["iso6722-classes"], place: "3000 h ageing", confidence: "memory" },
  { id: "E", minC: -40, maxC: 175, typicalMaterial: "ETFE, FEP", source: from["iso6722-classes"], place: "3000 h ageing", confidence: "memory" },
  { id: "F", minC: -40, maxC: 200, typicalMaterial: "silicone, FEP", source: from["iso6722-classes"], place: "3000 h ageing", confidence: "memory" },
  { id: "G", minC: -40, maxC: 225, typicalMaterial: "PFA, FEP", source: from["iso6722-classes"], place: "3000 h ageing", confidence: "memory" },
  { id: "H", minC: -40, maxC: 250, typicalMaterial: "PFA, PTFE", source: from["iso6722-classes"], place: "3000 h ageing", confidence: "memory" },
  { id: "old-pvc", minC: null, maxC: 70, typicalMaterial: "ordinary PVC of older British cable", source: from["austin-owners-note"], place: "text", confidence: "secondary" },
] as const satisfies readonly TempClassesRow[];

export const tempClasses: readonly TempClassesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const tempClassesUnits = {
  minC: "C",
  maxC: "C",
} as const;
