// Generated from data/relayPins.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "relay-pages": "several pages quoting DIN 72552 relay numbers; pin numbers remembered",
  "starter-relay-notes": "owner's notes on starter relay markings",
} as const;

export interface RelayPinsRow {
  readonly id: string;
  readonly relayBase: string;
  readonly pin: string;
  readonly function: string;
  readonly isoNumber: string;
  readonly bladeMm: number;
  readonly isOnFourPin: boolean;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
  readonly note: string | null;
}

const rows = [
  { id: "cube-86", relayBase: "cube", pin: "86", function: "coil, supply side", isoNumber: "1", bladeMm: 6.3, isOnFourPin: true, source: from["relay-pages"], place: "cube relay", confidence: "memory", note: "polarity of the coil matters only with a diode" },
  { id: "cube-85", relayBase: "cube", pin: "85", function: "coil, return side", isoNumber: "2", bladeMm: 6.3, isOnFourPin: true, source: from["relay-pages"], place: "cube relay", confidence: "memory", note: null },
  { id: "cube-30", relayBase: "cube", pin: "30", function: "contact common, feed", isoNumber: "3", bladeMm: 6.3, isOnFourPin: true, source: from["relay-pages"], place: "cube relay", confidence: "memory", note: null },
  { id: "cube-87a", relayBase: "cube", pin: "87a", function: "normally closed output", isoNumber: "4", bladeMm: 6.3, isOnFourPin: false, source: from["relay-pages"], place: "cube relay", confidence: "memory", note: "a second 87 may stand here: follow the relay body" },
  { id: "cube-87", relayBase: "cube", pin: "87", function: "normally open output", isoNumber: "5", bladeMm: 6.3, isOnFourPin: true, source: from["relay-pages"], place: "cube relay", confidence: "memory", note: null },
  { id: "micro-30", relayBase: "micro", pin: "30", function: "contact common, feed", isoNumber: "3", bladeMm: 6.3, isOnFourPin: true, source: from["relay-pages"], place: "micro relay", confidence: "memory", note: null },
  { id: "micro-87", relayBase: "micro", pin: "87", function: "normally open output", isoNumber: "5", bladeMm: 6.3, isOnFourPin: true, source: from["relay-pages"], place: "micro relay", confidence: "memory", note: null },
  { id: "micro-85", relayBase: "micro", pin: "85", function: "coil, return side", isoNumber: "2", bladeMm: 4.8, isOnFourPin: true, source: from["relay-pages"], place: "micro relay", confidence: "memory", note: null },
  { id: "micro-86", relayBase: "micro", pin: "86", function: "coil, supply side", isoNumber: "1", bladeMm: 4.8, isOnFourPin: true, source: from["relay-pages"], place: "micro relay", confidence: "memory", note: null },
  { id: "micro-87a", relayBase: "micro", pin: "87a", function: "normally closed output", isoNumber: "4", bladeMm: 4.8, isOnFourPin: false, source: from["relay-pages"], place: "micro relay", confidence: "memory", note: null },
  { id: "british-w1", relayBase: "british", pin: "W1", function: "coil", isoNumber: "-1", bladeMm: 6.3, isOnFourPin: true, source: from["starter-relay-notes"], place: "starter relay", confidence: "seen", note: "later marked 85" },
  { id: "british-w2", relayBase: "british", pin: "W2", function: "coil", isoNumber: "-2", bladeMm: 6.3, isOnFourPin: true, source: from["starter-relay-notes"], place: "starter relay", confidence: "seen", note: "later marked 86" },
  { id: "british-c1", relayBase: "british", pin: "C1", function: "contact feed", isoNumber: "-3", bladeMm: 6.3, isOnFourPin: true, source: from["starter-relay-notes"], place: "starter relay", confidence: "seen", note: "later marked 30" },
  { id: "british-c2", relayBase: "british", pin: "C2", function: "contact output", isoNumber: "-5", bladeMm: 6.3, isOnFourPin: true, source: from["starter-relay-notes"], place: "starter relay", confidence: "seen", note: "later marked 87" },
] as const satisfies readonly RelayPinsRow[];

export const relayPins: readonly RelayPinsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const relayPinsUnits = {
  bladeMm: "mm",
} as const;
