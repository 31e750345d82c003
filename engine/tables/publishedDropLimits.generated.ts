// Generated from data/publishedDropLimits.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "chandler-pages": "chandler catalogue pages on voltage drop",
  "faa-ac43-13-1b": "FAA AC 43.13-1B Change 1 (2001), chapter 11",
  "lighting-maker-earths": "vehicle lighting maker's page on earth faults, 12 V, as listed in an open table",
  "remembered-textbook": "textbook constant, remembered",
  "sae-drop-figures": "figures attributed to SAE in a car repair manual",
  "starter-manuals": "truck service text and starter tester manual",
  "tm-10-3930": "TM 10-3930-671-24",
  "truck-engine-manual": "truck engine installation manual",
} as const;

export interface PublishedDropLimitsRow {
  readonly id: string;
  readonly circuit: string;
  readonly limitV: number;
  readonly limitPercent: number | null;
  readonly basis: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "small-connection", circuit: "small-wire connection", limitV: 0, limitPercent: null, basis: "loaded", source: from["sae-drop-figures"], place: "drop limits", confidence: "secondary" },
  { id: "heavy-connection", circuit: "high-current connection", limitV: 0.1, limitPercent: null, basis: "loaded", source: from["sae-drop-figures"], place: "drop limits", confidence: "secondary" },
  { id: "heavy-cable", circuit: "high-current cable", limitV: 0.2, limitPercent: null, basis: "loaded", source: from["sae-drop-figures"], place: "drop limits", confidence: "secondary" },
  { id: "switch-contact", circuit: "switch or solenoid contacts", limitV: 0.3, limitPercent: null, basis: "loaded", source: from["sae-drop-figures"], place: "drop limits", confidence: "secondary" },
  { id: "any-alarm", circuit: "any circuit", limitV: 1, limitPercent: null, basis: "loaded", source: from["sae-drop-figures"], place: "drop limits", confidence: "secondary" },
  { id: "starter-feed", circuit: "battery live post to motor terminal", limitV: 0.5, limitPercent: null, basis: "cranking", source: from["starter-manuals"], place: "drop limits", confidence: "seen" },
  { id: "starter-earth", circuit: "starter earth", limitV: 0.3, limitPercent: null, basis: "cranking", source: from["starter-manuals"], place: "drop limits", confidence: "seen" },
  { id: "starter-total", circuit: "starter circuit, whole", limitV: 0.8, limitPercent: null, basis: "cranking", source: from["starter-manuals"], place: "drop limits", confidence: "seen" },
  { id: "starter-per-100A", circuit: "starter circuit per 100 A", limitV: 0.2, limitPercent: null, basis: "cranking", source: from["tm-10-3930"], place: "drop limits", confidence: "seen" },
  { id: "truck-main", circuit: "alternator, starter, battery cables, 24 V", limitV: 0.6, limitPercent: 2.5, basis: "24 V", source: from["truck-engine-manual"], place: "drop limits", confidence: "seen" },
  { id: "truck-other", circuit: "other cables, 24 V", limitV: 1.2, limitPercent: 5, basis: "24 V", source: from["truck-engine-manual"], place: "drop limits", confidence: "seen" },
  { id: "truck-connection", circuit: "allowance per connection point", limitV: 0.1, limitPercent: null, basis: "loaded", source: from["truck-engine-manual"], place: "drop limits", confidence: "seen" },
  { id: "truck-joint", circuit: "allowance per joint", limitV: 0.3, limitPercent: null, basis: "loaded", source: from["truck-engine-manual"], place: "drop limits", confidence: "seen" },
  { id: "aircraft-continuous", circuit: "aircraft, 14 V, continuous", limitV: 0.5, limitPercent: 3.6, basis: "14 V", source: from["faa-ac43-13-1b"], place: "drop limits", confidence: "memory" },
  { id: "aircraft-intermittent", circuit: "aircraft, 14 V, intermittent", limitV: 1, limitPercent: 7.1, basis: "14 V", source: from["faa-ac43-13-1b"], place: "drop limits", confidence: "memory" },
  { id: "boat-critical", circuit: "boat, critical circuits", limitV: 0.36, limitPercent: 3, basis: "12 V", source: from["chandler-pages"], place: "drop limits", confidence: "secondary" },
  { id: "boat-other", circuit: "boat, other circuits", limitV: 1.2, limitPercent: 10, basis: "12 V", source: from["chandler-pages"], place: "drop limits", confidence: "secondary" },
  { id: "textbook-lamp-small", circuit: "lamps under 15 W, cable", limitV: 0.1, limitPercent: null, basis: "12 V", source: from["lighting-maker-earths"], place: "drop limits", confidence: "secondary" },
  { id: "textbook-lamp-small-all", circuit: "lamps under 15 W, with connections", limitV: 0.6, limitPercent: null, basis: "12 V", source: from["lighting-maker-earths"], place: "drop limits", confidence: "secondary" },
  { id: "textbook-lamp", circuit: "lamps over 15 W, cable", limitV: 0.5, limitPercent: null, basis: "12 V", source: from["lighting-maker-earths"], place: "drop limits", confidence: "secondary" },
  { id: "textbook-lamp-all", circuit: "lamps over 15 W, with connections", limitV: 0.9, limitPercent: null, basis: "12 V", source: from["lighting-maker-earths"], place: "drop limits", confidence: "secondary" },
  { id: "textbook-charge", circuit: "charging circuit", limitV: 0.4, limitPercent: null, basis: "12 V", source: from["lighting-maker-earths"], place: "drop limits", confidence: "secondary" },
  { id: "textbook-starter", circuit: "starter main cable", limitV: 0.5, limitPercent: null, basis: "12 V, 20 C", source: from["lighting-maker-earths"], place: "drop limits", confidence: "secondary" },
  { id: "textbook-other", circuit: "other circuits, cable", limitV: 0.5, limitPercent: null, basis: "12 V", source: from["remembered-textbook"], place: "drop limits", confidence: "memory" },
  { id: "textbook-other-all", circuit: "other circuits, with connections", limitV: 1.5, limitPercent: null, basis: "12 V", source: from["remembered-textbook"], place: "drop limits", confidence: "memory" },
  { id: "earth-starter-frame", circuit: "starter housing to body", limitV: 0.1, limitPercent: null, basis: "12 V, loaded", source: from["lighting-maker-earths"], place: "drop limits", confidence: "secondary" },
  { id: "earth-battery-starter", circuit: "battery earth post to starter housing", limitV: 0.3, limitPercent: null, basis: "12 V, loaded", source: from["lighting-maker-earths"], place: "drop limits", confidence: "secondary" },
  { id: "earth-alternator-frame", circuit: "alternator housing to body", limitV: 0.1, limitPercent: null, basis: "12 V, loaded", source: from["lighting-maker-earths"], place: "drop limits", confidence: "secondary" },
] as const satisfies readonly PublishedDropLimitsRow[];

export const publishedDropLimits: readonly PublishedDropLimitsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const publishedDropLimitsUnits = {
  limitV: "V",
  limitPercent: "%",
} as const;
