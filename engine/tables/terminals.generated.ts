// Generated from data/terminals.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "connector-spec": "connector application specification, size-16 round contacts",
  "contact-listing": "trade listing of the male contact; lower wire limit remembered",
  "iec61210-scope": "IEC 61210:2010 scope for the series; range and current remembered",
  "magazine-tool-column": "magazine tool column, 2020",
  "remembered-trade": "remembered, common trade listing; not found in a text",
  "ring-listing": "ring terminal category listing",
  "terminal-seller-page": "terminal seller's comparison page",
  "ul310-catalogue": "quick-connect terminal catalogue, table based on UL 310; test currents agree with a second terminal maker's page",
} as const;

export interface TerminalsRow {
  readonly id: string;
  readonly class: string;
  readonly size: string;
  readonly wireFromMm2: number;
  readonly wireToMm2: number;
  readonly typicalA: number;
  readonly typicalASource: string;
  readonly typicalAConfidence: Confidence;
  readonly insulationFromMm: number | null;
  readonly insulationToMm: number | null;
  readonly tool: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "blade-2.8", class: "blade", size: "2.8 x 0.5 or 0.8 mm", wireFromMm2: 0.5, wireToMm2: 1, typicalA: 10, typicalASource: from["remembered-trade"], typicalAConfidence: "memory", insulationFromMm: null, insulationToMm: null, tool: "common crimp tool with the open barrel die of the terminal's own wire range", source: from["iec61210-scope"], place: "terminal ranges", confidence: "memory" },
  { id: "blade-4.8", class: "blade", size: "4.8 x 0.5 or 0.8 mm", wireFromMm2: 0.5, wireToMm2: 1.5, typicalA: 15, typicalASource: from["remembered-trade"], typicalAConfidence: "memory", insulationFromMm: null, insulationToMm: null, tool: "common crimp tool with the open barrel die of the terminal's own wire range", source: from["iec61210-scope"], place: "terminal ranges", confidence: "memory" },
  { id: "blade-6.3", class: "blade", size: "6.3 x 0.8 mm", wireFromMm2: 0.5, wireToMm2: 2.5, typicalA: 20, typicalASource: from["remembered-trade"], typicalAConfidence: "memory", insulationFromMm: null, insulationToMm: null, tool: "common crimp tool with the open barrel die of the terminal's own wire range", source: from["iec61210-scope"], place: "terminal ranges", confidence: "memory" },
  { id: "blade-6.3-large", class: "blade", size: "6.3 x 0.8 mm, large barrel", wireFromMm2: 4, wireToMm2: 6, typicalA: 24, typicalASource: from["ul310-catalogue"], typicalAConfidence: "seen", insulationFromMm: null, insulationToMm: null, tool: "common crimp tool with the open barrel die of the terminal's own wire range", source: from["iec61210-scope"], place: "terminal ranges", confidence: "memory" },
  { id: "blade-9.5", class: "blade", size: "9.5 x 1.2 mm", wireFromMm2: 4, wireToMm2: 6, typicalA: 40, typicalASource: from["remembered-trade"], typicalAConfidence: "memory", insulationFromMm: null, insulationToMm: null, tool: "common crimp tool with the open barrel die of the terminal's own wire range", source: from["iec61210-scope"], place: "terminal ranges", confidence: "memory" },
  { id: "bullet-4.7", class: "bullet", size: "4.7 mm (3/16 in), British", wireFromMm2: 0.65, wireToMm2: 3, typicalA: 17, typicalASource: from["remembered-trade"], typicalAConfidence: "memory", insulationFromMm: null, insulationToMm: null, tool: "bullet die of the bore, or solder as the original was", source: from["remembered-trade"], place: "terminal ranges", confidence: "memory" },
  { id: "bullet-3.9", class: "bullet", size: "3.9 mm", wireFromMm2: 0.5, wireToMm2: 2, typicalA: 10, typicalASource: from["remembered-trade"], typicalAConfidence: "memory", insulationFromMm: null, insulationToMm: null, tool: "common crimp tool with the open barrel die of the terminal's own wire range", source: from["magazine-tool-column"], place: "terminal ranges", confidence: "memory" },
  { id: "bullet-3.5", class: "bullet", size: "3.5 mm", wireFromMm2: 0.5, wireToMm2: 1.5, typicalA: 10, typicalASource: from["remembered-trade"], typicalAConfidence: "memory", insulationFromMm: null, insulationToMm: null, tool: "common crimp tool with the open barrel die of the terminal's own wire range", source: from["terminal-seller-page"], place: "terminal ranges", confidence: "memory" },
  { id: "sealed-16", class: "sealed", size: "size-16 round contact", wireFromMm2: 0.5, wireToMm2: 2, typicalA: 13, typicalASource: from["remembered-trade"], typicalAConfidence: "memory", insulationFromMm: 1.3, insulationToMm: 3.67, tool: "four-indent tool or the contact's own die", source: from["connector-spec"], place: "terminal ranges", confidence: "seen" },
  { id: "sealed-1.5", class: "sealed", size: "1.5 mm pin", wireFromMm2: 0.3, wireToMm2: 1.5, typicalA: 14, typicalASource: from["contact-listing"], typicalAConfidence: "secondary", insulationFromMm: null, insulationToMm: null, tool: "open barrel die with seal grip", source: from["contact-listing"], place: "terminal ranges", confidence: "secondary" },
  { id: "sealed-2.8", class: "sealed", size: "2.8 mm blade", wireFromMm2: 0.5, wireToMm2: 2.5, typicalA: 20, typicalASource: from["remembered-trade"], typicalAConfidence: "memory", insulationFromMm: null, insulationToMm: null, tool: "open barrel die with seal grip", source: from["remembered-trade"], place: "terminal ranges", confidence: "memory" },
  { id: "sealed-20", class: "sealed", size: "size-20 round contact", wireFromMm2: 0.2, wireToMm2: 0.5, typicalA: 7.5, typicalASource: from["remembered-trade"], typicalAConfidence: "memory", insulationFromMm: null, insulationToMm: null, tool: "four-indent tool or the contact's own die", source: from["remembered-trade"], place: "terminal ranges", confidence: "memory" },
  { id: "sealed-12", class: "sealed", size: "size-12 round contact", wireFromMm2: 2, wireToMm2: 4, typicalA: 25, typicalASource: from["remembered-trade"], typicalAConfidence: "memory", insulationFromMm: null, insulationToMm: null, tool: "four-indent tool or the contact's own die", source: from["remembered-trade"], place: "terminal ranges", confidence: "memory" },
  { id: "blade-6.3-red", class: "blade", size: "6.3 x 0.8 mm, pre-insulated, red", wireFromMm2: 0.5, wireToMm2: 1.5, typicalA: 10, typicalASource: from["ul310-catalogue"], typicalAConfidence: "seen", insulationFromMm: null, insulationToMm: null, tool: "ratchet tool with the red die", source: from["ring-listing"], place: "range", confidence: "secondary" },
  { id: "blade-6.3-blue", class: "blade", size: "6.3 x 0.8 mm, pre-insulated, blue", wireFromMm2: 1.5, wireToMm2: 2.5, typicalA: 15, typicalASource: from["ul310-catalogue"], typicalAConfidence: "seen", insulationFromMm: null, insulationToMm: null, tool: "ratchet tool with the blue die", source: from["ring-listing"], place: "range", confidence: "secondary" },
  { id: "blade-6.3-yellow", class: "blade", size: "6.3 x 0.8 mm, pre-insulated, yellow", wireFromMm2: 4, wireToMm2: 6, typicalA: 24, typicalASource: from["ul310-catalogue"], typicalAConfidence: "seen", insulationFromMm: null, insulationToMm: null, tool: "ratchet tool with the yellow die", source: from["remembered-trade"], place: "range", confidence: "memory" },
] as const satisfies readonly TerminalsRow[];

export const terminals: readonly TerminalsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const terminalsUnits = {
  wireFromMm2: "mm2",
  wireToMm2: "mm2",
  typicalA: "A",
  insulationFromMm: "mm",
  insulationToMm: "mm",
} as const;
