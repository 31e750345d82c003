// Generated from data/flashers.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "flasher-sheet": "accessory instruction sheet",
  "own-rule": "own rule of this program",
  "un-r53": "Swiss vehicle rules art. 79, an instruction sheet, and UN R53 6.3 in a garbled copy",
} as const;

export interface FlashersRow {
  readonly id: string;
  readonly meaning: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
  readonly note: string | null;
}

const rows = [
  { id: "rate", meaning: "flashes per minute", value: 90, unit: "1/min", source: from["un-r53"], place: "flash rate", confidence: "seen", note: null },
  { id: "rate-least", meaning: "slowest allowed", value: 60, unit: "1/min", source: from["un-r53"], place: "flash rate", confidence: "seen", note: null },
  { id: "rate-most", meaning: "fastest allowed", value: 120, unit: "1/min", source: from["un-r53"], place: "flash rate", confidence: "seen", note: null },
  { id: "first-light", meaning: "first light within", value: 1, unit: "s", source: from["un-r53"], place: "flash rate", confidence: "secondary", note: null },
  { id: "first-dark", meaning: "first extinction within", value: 1.5, unit: "s", source: from["un-r53"], place: "flash rate", confidence: "secondary", note: null },
  { id: "thermal-rated-share", meaning: "share of its rated lamp watts under which a load-sensing flasher changes rate", value: 0.8, unit: "ratio", source: from["own-rule"], place: "own assumption", confidence: "own", note: "less wattage: too fast or stopped; low volts: slow" },
  { id: "resistor-old", meaning: "lamp replaced, in the printed resistor example", value: 21, unit: "W", source: from["flasher-sheet"], place: "resistor example", confidence: "seen", note: null },
  { id: "resistor-new", meaning: "LED fitted, in the printed resistor example", value: 1.7, unit: "W", source: from["flasher-sheet"], place: "resistor example", confidence: "seen", note: null },
  { id: "resistor", meaning: "resistor in that example at 12 V", value: 7.46, unit: "ohm", source: from["flasher-sheet"], place: "R = U^2 / (P old - P new)", confidence: "seen", note: null },
] as const satisfies readonly FlashersRow[];

export const flashers: readonly FlashersRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const flashersUnits = {
  value: null,
} as const;
