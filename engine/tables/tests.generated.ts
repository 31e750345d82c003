// Generated from data/tests.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "battery-tester-manual": "motorcycle battery tester manual p. 20",
  "common-practice": "common practice of the trade",
  "drop-defaults": "proposed here: under the published vehicle limits; half a volt costs 12 to 14 % of the light",
  "lithium-notes": "lithium battery charger maker's notes",
  "own-rule": "own rule of this program",
  "power-over-volts": "worked out here: watts over volts",
  "sae-drop-figures": "figures attributed to SAE in a car repair manual",
  "sb-740-91-01": "US Army SB 740-91-01",
  "starter-manuals": "truck service text and starter tester manual",
  "test-tool-note": "test-tool maker's note",
  "workshop-2006": "workshop manual of a 2006 scooter p. 19-7",
} as const;

export interface TestsRow {
  readonly id: string;
  readonly test: string;
  readonly value: number | null;
  readonly unit: string | null;
  readonly sense: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "01-battery-off", test: "battery disconnected, earthed post first, refitted last", value: null, unit: null, sense: "check", source: from["common-practice"], place: "test sequence", confidence: "common practice" },
  { id: "02-visual", test: "crimps, strip, brush, strands, seals, marks", value: null, unit: null, sense: "check", source: from["common-practice"], place: "test sequence", confidence: "common practice" },
  { id: "03-continuity", test: "every from-to pair over the leads, and no other pair", value: 0.5, unit: "ohm", sense: "most", source: from["own-rule"], place: "test sequence", confidence: "own" },
  { id: "04-resistance-factor", test: "measured over calculated resistance", value: 1.3, unit: "ratio", sense: "most", source: from["own-rule"], place: "test sequence", confidence: "derived" },
  { id: "05-resistance-add", test: "added to that for the leads", value: 0.05, unit: "ohm", sense: "most", source: from["own-rule"], place: "test sequence", confidence: "derived" },
  { id: "06-insulation", test: "insulation resistance of the bare loom, nothing connected", value: 100, unit: "Mohm", sense: "least", source: from["sb-740-91-01"], place: "test sequence", confidence: "seen" },
  { id: "07-insulation-volts-least", test: "test volts for that, least", value: 200, unit: "V", sense: "least", source: from["sb-740-91-01"], place: "test sequence", confidence: "seen" },
  { id: "08-insulation-volts-most", test: "test volts for that, most", value: 1000, unit: "V", sense: "most", source: from["sb-740-91-01"], place: "test sequence", confidence: "seen" },
  { id: "09-insulation-meter", test: "with only a multimeter: over-range at", value: 20, unit: "Mohm", sense: "least", source: from["own-rule"], place: "test sequence", confidence: "own" },
  { id: "10-series-lamp-12", test: "lamp in place of the main fuse, 12 V 21 W: current into a dead short", value: 1.75, unit: "A", sense: "most", source: from["power-over-volts"], place: "test sequence", confidence: "derived" },
  { id: "11-series-lamp-6", test: "lamp in place of the main fuse, 6 V 21 W: current into a dead short", value: 3.5, unit: "A", sense: "most", source: from["power-over-volts"], place: "test sequence", confidence: "derived" },
  { id: "12-first-fuse", test: "first fuse, one circuit at a time", value: 5, unit: "A", sense: "most", source: from["own-rule"], place: "test sequence", confidence: "own" },
  { id: "13-drop-joint", test: "drop of a joint in a low-current circuit", value: 0.05, unit: "V", sense: "most", source: from["sae-drop-figures"], place: "test sequence", confidence: "secondary" },
  { id: "14-drop-heavy-joint", test: "drop of a high-current connection", value: 0.1, unit: "V", sense: "most", source: from["sae-drop-figures"], place: "test sequence", confidence: "secondary" },
  { id: "15-drop-cable", test: "drop of a high-current cable", value: 0.2, unit: "V", sense: "most", source: from["sae-drop-figures"], place: "test sequence", confidence: "secondary" },
  { id: "16-drop-switch", test: "drop of a switch or solenoid contact", value: 0.3, unit: "V", sense: "most", source: from["sae-drop-figures"], place: "test sequence", confidence: "secondary" },
  { id: "17-drop-earth", test: "drop of the earth side", value: 0.1, unit: "V", sense: "most", source: from["sae-drop-figures"], place: "test sequence", confidence: "secondary" },
  { id: "18-drop-starter-feed", test: "starter, live side", value: 0.5, unit: "V", sense: "most", source: from["starter-manuals"], place: "test sequence", confidence: "seen" },
  { id: "19-drop-starter-earth", test: "starter, earth side", value: 0.3, unit: "V", sense: "most", source: from["starter-manuals"], place: "test sequence", confidence: "seen" },
  { id: "20-drop-lighting", test: "whole lighting circuit, share of supply", value: 5, unit: "%", sense: "most", source: from["test-tool-note"], place: "test sequence", confidence: "secondary" },
  { id: "21-drop-any", test: "any drop at 12 V", value: 1, unit: "V", sense: "most", source: from["sae-drop-figures"], place: "test sequence", confidence: "secondary" },
  { id: "22-drop-six-volt", test: "6 V machines: share of the 12 V figures", value: 0.5, unit: "ratio", sense: "most", source: from["drop-defaults"], place: "test sequence", confidence: "derived" },
  { id: "23-crimp", test: "crimp to 2.5 mm2", value: 1, unit: "mohm", sense: "most", source: from["own-rule"], place: "test sequence", confidence: "own" },
  { id: "24-pair", test: "connector pair", value: 5, unit: "mohm", sense: "most", source: from["own-rule"], place: "test sequence", confidence: "own" },
  { id: "25-drain-plain", test: "standing drain, no electronics", value: 1.5, unit: "mA", sense: "most", source: from["workshop-2006"], place: "test sequence", confidence: "seen" },
  { id: "26-drain-electronics", test: "standing drain with clock or regulator", value: 5, unit: "mA", sense: "most", source: from["own-rule"], place: "test sequence", confidence: "own" },
  { id: "27-charge-low", test: "charging volts at 2500 rpm, 12 V, least", value: 14, unit: "V", sense: "least", source: from["battery-tester-manual"], place: "test sequence", confidence: "seen" },
  { id: "28-charge-high", test: "charging volts at 2500 rpm, 12 V, most", value: 14.7, unit: "V", sense: "most", source: from["battery-tester-manual"], place: "test sequence", confidence: "seen" },
  { id: "29-charge-tolerance", test: "allowance on both", value: 0.5, unit: "V", sense: "most", source: from["battery-tester-manual"], place: "test sequence", confidence: "seen" },
  { id: "30-lithium-most", test: "charging volts, lithium", value: 14.6, unit: "V", sense: "most", source: from["lithium-notes"], place: "test sequence", confidence: "secondary" },
  { id: "31-wiggle", test: "every branch moved, bars lock to lock: no flicker", value: null, unit: null, sense: "check", source: from["common-practice"], place: "test sequence", confidence: "common practice" },
  { id: "32-functions", test: "every lamp, horn, brake switch, kill, start", value: null, unit: null, sense: "check", source: from["common-practice"], place: "test sequence", confidence: "common practice" },
  { id: "33-current-band", test: "battery current of a state against calculation, either way", value: 0.15, unit: "ratio", sense: "most", source: from["own-rule"], place: "test sequence", confidence: "own" },
] as const satisfies readonly TestsRow[];

export const tests: readonly TestsRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const testsUnits = {
  value: null,
} as const;
