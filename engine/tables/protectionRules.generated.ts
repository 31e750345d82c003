// Generated from data/protectionRules.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "abyc-note": "ABYC E-11 (2023) quoted in an open technical note",
  "blade-sheets": "32 V blade fuse data sheets (ATO size and mini) as transcribed in several open repositories",
  "ecss-30-11": "ECSS-Q-ST-30-11C Rev.2, as transcribed in an open repository",
  "fuse-gates": "derived from the operating gates of blade fuses: no maximum time is given under 135 %",
  "fuse-guide": "fuse guide pages: UL 248-14 limits, pulse chart, waveforms",
  "fuse-trade-pages": "fuse trade pages: 80 % loading, 15 A fuse 12 A",
  "gate-arithmetic": "worked out here from the fuse operating gates",
  "half-rule": "owners' club chart and two further pages: about 2 to 1",
  "iso8820-3-scope": "ISO 8820-3:2015, scope",
  "maxi-sheet": "32 V maxi fuse data sheet of 2025, citing ISO 8820-3 and SAE J1888, as transcribed in an open repository",
  "own-rule": "own rule of this program",
  "remembered-trade": "remembered, common trade listing; not found in a text",
} as const;

export interface ProtectionRulesRow {
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
  { id: "load-share-most", meaning: "largest share of its rating a fuse is asked to carry for long", value: 0.8, unit: "ratio", source: from["fuse-trade-pages"], place: "loading", confidence: "secondary", note: null },
  { id: "half-rule", meaning: "continuous rating of an old British fuse marked with its blow current", value: 0.5, unit: "ratio", source: from["half-rule"], place: "British marking", confidence: "secondary", note: "the lower of this and the chart is used until the person says which number it is" },
  { id: "endless-overload", meaning: "overload that need never open a blade fuse", value: 1.35, unit: "ratio", source: from["fuse-gates"], place: "smart short", confidence: "derived", note: null },
  { id: "carries-least", meaning: "overload a small blade fuse carries for 100 h", value: 1.1, unit: "ratio", source: from["blade-sheets"], place: "operating time table", confidence: "secondary", note: "100 % for 35 and 40 A and for maxi" },
  { id: "quick-opening", meaning: "multiple of rating at which a blade opens within 0.1 s", value: 6, unit: "ratio", source: from["blade-sheets"], place: "operating time table", confidence: "secondary", note: null },
  { id: "source-strength", meaning: "multiple of the fuse rating the supply should be able to deliver", value: 3, unit: "ratio", source: from["ecss-30-11"], place: "6.17.3c", confidence: "secondary", note: null },
  { id: "selectivity-sure", meaning: "ratio of main to branch rating that is clear everywhere", value: 3, unit: "ratio", source: from["gate-arithmetic"], place: "step reading of the gates", confidence: "derived", note: null },
  { id: "selectivity-usual", meaning: "ratio of main to branch rating that usually works", value: 2, unit: "ratio", source: from["remembered-trade"], place: "rule of thumb", confidence: "memory", note: null },
  { id: "ambient-slope", meaning: "loss of fuse rating per kelvin above 25 C, worst read", value: 0.0043, unit: "1/K", source: from["maxi-sheet"], place: "40 A maxi: 40, 34, 30, 25, 22 A at 20, 65, 85, 110, 125 C", confidence: "secondary", note: null },
  { id: "ambient-start", meaning: "temperature above which a fuse is derated", value: 25, unit: "C", source: from["maxi-sheet"], place: "derating curve", confidence: "secondary", note: null },
  { id: "pulse-100000", meaning: "share of melting I2t for 100,000 pulses", value: 0.22, unit: "ratio", source: from["fuse-guide"], place: "chart 2", confidence: "seen", note: null },
  { id: "pulse-10000", meaning: "share of melting I2t for 10,000 pulses", value: 0.29, unit: "ratio", source: from["fuse-guide"], place: "chart 2", confidence: "seen", note: null },
  { id: "pulse-1000", meaning: "share of melting I2t for 1,000 pulses", value: 0.38, unit: "ratio", source: from["fuse-guide"], place: "chart 2", confidence: "seen", note: null },
  { id: "pulse-100", meaning: "share of melting I2t for 100 pulses", value: 0.48, unit: "ratio", source: from["fuse-guide"], place: "chart 2", confidence: "seen", note: null },
  { id: "breaking-capacity", meaning: "short-circuit current a blade fuse can break at 32 V", value: 1000, unit: "A", source: from["iso8820-3-scope"], place: "scope", confidence: "seen", note: null },
  { id: "unfused-boat", meaning: "longest unfused lead on a boat", value: 178, unit: "mm", source: from["abyc-note"], place: "7 in", confidence: "secondary", note: null },
  { id: "unfused-lead", meaning: "longest lead between battery and first fuse that is only advised on, sleeved", value: 300, unit: "mm", source: from["own-rule"], place: "battery to fuse box", confidence: "own", note: "a side panel is 150 to 250 mm from the battery; every millimetre of it can only be guarded by its sleeve" },
  { id: "main-fuse-least", meaning: "main fuse for everything but the starter, least", value: 15, unit: "A", source: from["remembered-trade"], place: "trade practice", confidence: "memory", note: null },
  { id: "main-fuse-most", meaning: "main fuse for everything but the starter, most", value: 30, unit: "A", source: from["remembered-trade"], place: "trade practice", confidence: "memory", note: null },
  { id: "generator-wire-told", meaning: "rating of a wire over a generator's ceiling below which an unfused wire is told", value: 1.25, unit: "ratio", source: from["own-rule"], place: "generators", confidence: "own", note: "above it there is nothing to look after" },
  { id: "contact-derated-told", meaning: "share of its rating a switch contact carries from which the kind of its loads is told", value: 0.6, unit: "ratio", source: from["own-rule"], place: "switch contacts", confidence: "own", note: "the factors are those of aircraft, for contacts that last an aircraft's life" },
] as const satisfies readonly ProtectionRulesRow[];

export const protectionRules: readonly ProtectionRulesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const protectionRulesUnits = {
  value: null,
} as const;
