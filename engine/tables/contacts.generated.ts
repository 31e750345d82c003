// Generated from data/contacts.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "builder-drop-note": "builder's note: 30 mV at a fuse and holder, 20 mV at a plug, at 8.3 A",
  "own-rule": "own rule of this program",
  "remembered-trade": "remembered, common trade listing; not found in a text",
} as const;

export interface ContactsRow {
  readonly id: string;
  readonly kind: string;
  readonly newMohm: number | null;
  readonly agedMohm: number | null;
  readonly agedMohmSource: string | null;
  readonly agedMohmConfidence: Confidence | null;
  readonly worstMohm: number | null;
  readonly worstMohmSource: string | null;
  readonly worstMohmConfidence: Confidence | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
  readonly note: string | null;
}

const rows = [
  { id: "fuse-holder", kind: "in-line fuse holder with its fuse", newMohm: 3.6, agedMohm: 10, agedMohmSource: from["own-rule"], agedMohmConfidence: "own", worstMohm: 30, worstMohmSource: from["own-rule"], worstMohmConfidence: "own", source: from["builder-drop-note"], place: "contact resistance", confidence: "secondary", note: null },
  { id: "multi-pin", kind: "multi-pin plug, one way", newMohm: 2.4, agedMohm: 10, agedMohmSource: from["own-rule"], agedMohmConfidence: "own", worstMohm: 30, worstMohmSource: from["own-rule"], worstMohmConfidence: "own", source: from["builder-drop-note"], place: "contact resistance", confidence: "secondary", note: null },
  { id: "blade-6.3", kind: "6.3 mm blade pair", newMohm: 2, agedMohm: 5, agedMohmSource: from["remembered-trade"], agedMohmConfidence: "memory", worstMohm: 20, worstMohmSource: from["remembered-trade"], worstMohmConfidence: "memory", source: from["remembered-trade"], place: "contact resistance", confidence: "memory", note: null },
  { id: "blade-2.8", kind: "2.8 mm blade pair", newMohm: 5, agedMohm: 10, agedMohmSource: from["remembered-trade"], agedMohmConfidence: "memory", worstMohm: 30, worstMohmSource: from["remembered-trade"], worstMohmConfidence: "memory", source: from["remembered-trade"], place: "contact resistance", confidence: "memory", note: null },
  { id: "bullet", kind: "4.7 mm brass bullet in its sleeve", newMohm: 3, agedMohm: 30, agedMohmSource: from["remembered-trade"], agedMohmConfidence: "memory", worstMohm: 100, worstMohmSource: from["remembered-trade"], worstMohmConfidence: "memory", source: from["remembered-trade"], place: "contact resistance", confidence: "memory", note: null },
  { id: "bullet-japanese", kind: "3.9 mm bullet pair", newMohm: 3, agedMohm: 30, agedMohmSource: from["remembered-trade"], agedMohmConfidence: "memory", worstMohm: 100, worstMohmSource: from["remembered-trade"], worstMohmConfidence: "memory", source: from["remembered-trade"], place: "contact resistance", confidence: "memory", note: null },
  { id: "ring", kind: "ring terminal on a clean stud", newMohm: 0.3, agedMohm: 3, agedMohmSource: from["own-rule"], agedMohmConfidence: "own", worstMohm: 30, worstMohmSource: from["own-rule"], worstMohmConfidence: "own", source: from["remembered-trade"], place: "contact resistance", confidence: "memory", note: null },
  { id: "crimp", kind: "crimp of 0.5 to 2 mm2", newMohm: 1, agedMohm: 1, agedMohmSource: from["own-rule"], agedMohmConfidence: "own", worstMohm: 5, worstMohmSource: from["own-rule"], worstMohmConfidence: "own", source: from["remembered-trade"], place: "contact resistance", confidence: "memory", note: "a crimp working limit of 1 mohm" },
  { id: "joint-crimp", kind: "crimped splice", newMohm: 1, agedMohm: 1, agedMohmSource: from["own-rule"], agedMohmConfidence: "own", worstMohm: 5, worstMohmSource: from["own-rule"], worstMohmConfidence: "own", source: from["remembered-trade"], place: "contact resistance", confidence: "memory", note: null },
  { id: "joint-bullet", kind: "multi-way bullet joint, one way", newMohm: 3, agedMohm: 30, agedMohmSource: from["remembered-trade"], agedMohmConfidence: "memory", worstMohm: 100, worstMohmSource: from["remembered-trade"], worstMohmConfidence: "memory", source: from["remembered-trade"], place: "contact resistance", confidence: "memory", note: null },
  { id: "switch", kind: "handlebar or ignition switch contact", newMohm: 20, agedMohm: 50, agedMohmSource: from["remembered-trade"], agedMohmConfidence: "memory", worstMohm: 200, worstMohmSource: from["remembered-trade"], worstMohmConfidence: "memory", source: from["remembered-trade"], place: "contact resistance", confidence: "memory", note: "good 10 to 50 mohm; 0.3 V at rated current is the measured limit" },
  { id: "relay", kind: "relay contact", newMohm: 5, agedMohm: 10, agedMohmSource: from["remembered-trade"], agedMohmConfidence: "memory", worstMohm: 50, worstMohmSource: from["remembered-trade"], worstMohmConfidence: "memory", source: from["remembered-trade"], place: "contact resistance", confidence: "memory", note: "new 2 to 10 mohm; 50 mV at 10 A" },
  { id: "frame", kind: "frame, end to end", newMohm: 5, agedMohm: 10, agedMohmSource: from["remembered-trade"], agedMohmConfidence: "memory", worstMohm: 50, worstMohmSource: from["remembered-trade"], worstMohmConfidence: "memory", source: from["remembered-trade"], place: "contact resistance", confidence: "memory", note: "practical target; aircraft bonding 2.5 to 5 mohm" },
  { id: "bond-strap", kind: "earth strap, lugs included", newMohm: 1, agedMohm: 5, agedMohmSource: from["own-rule"], agedMohmConfidence: "own", worstMohm: 50, worstMohmSource: from["own-rule"], worstMohmConfidence: "own", source: from["own-rule"], place: "contact resistance", confidence: "own", note: null },
  { id: "bond-bolt", kind: "bolted bare metal", newMohm: 1, agedMohm: 10, agedMohmSource: from["own-rule"], agedMohmConfidence: "own", worstMohm: 100, worstMohmSource: from["own-rule"], worstMohmConfidence: "own", source: from["own-rule"], place: "contact resistance", confidence: "own", note: null },
  { id: "bond-bearing", kind: "steering head bearings", newMohm: 50, agedMohm: 500, agedMohmSource: from["own-rule"], agedMohmConfidence: "own", worstMohm: null, worstMohmSource: null, worstMohmConfidence: null, source: from["own-rule"], place: "contact resistance", confidence: "own", note: "not an earth: never counted, worst is open" },
  { id: "bond-paint", kind: "painted or coated joint", newMohm: null, agedMohm: null, agedMohmSource: null, agedMohmConfidence: null, worstMohm: null, worstMohmSource: null, worstMohmConfidence: null, source: from["own-rule"], place: "contact resistance", confidence: "own", note: "open" },
  { id: "bond-rubber", kind: "rubber mount", newMohm: null, agedMohm: null, agedMohmSource: null, agedMohmConfidence: null, worstMohm: null, worstMohmSource: null, worstMohmConfidence: null, source: from["own-rule"], place: "contact resistance", confidence: "own", note: "open" },
  { id: "battery-post", kind: "battery post and clamp", newMohm: 0.3, agedMohm: 1, agedMohmSource: from["own-rule"], agedMohmConfidence: "own", worstMohm: 20, worstMohmSource: from["own-rule"], worstMohmConfidence: "own", source: from["own-rule"], place: "contact resistance", confidence: "own", note: null },
] as const satisfies readonly ContactsRow[];

export const contacts: readonly ContactsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const contactsUnits = {
  newMohm: "mohm",
  agedMohm: "mohm",
  worstMohm: "mohm",
} as const;
