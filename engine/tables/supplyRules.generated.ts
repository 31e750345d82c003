// Generated from data/supplyRules.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "dynamo-supplier-page": "dynamo supplier's troubleshooting page",
  "own-rule": "own rule of this program",
  "owners-alternator-article": "owners' club article on 6 V to 12 V alternator conversion",
  "question-pages": "question-and-answer pages; weak",
  "remembered-trade": "remembered, common trade listing; not found in a text",
  "service-manuals": "vehicle service manuals",
} as const;

export interface SupplyRulesRow {
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
  { id: "coil-duty", meaning: "share of the time points are closed where the job does not say", value: 0.5, unit: "ratio", source: from["remembered-trade"], place: "charging balance", confidence: "common practice", note: null },
  { id: "stop-duty", meaning: "share of riding time the stop lamp is lit", value: 0.15, unit: "ratio", source: from["own-rule"], place: "charging balance", confidence: "own", note: null },
  { id: "turn-duty", meaning: "share of riding time the indicators are switched on", value: 0.1, unit: "ratio", source: from["own-rule"], place: "charging balance", confidence: "own", note: null },
  { id: "flash-duty", meaning: "share of that time they are lit", value: 0.5, unit: "ratio", source: from["own-rule"], place: "charging balance", confidence: "own", note: null },
  { id: "charge-volts", meaning: "battery volts the balance is struck at for a 12 V machine", value: 13.8, unit: "V", source: from["own-rule"], place: "charging balance", confidence: "own", note: "half for 6 V" },
  { id: "rating-hours", meaning: "time a motorcycle battery's capacity is stated for", value: 10, unit: "h", source: from["remembered-trade"], place: "battery labels", confidence: "common practice", note: "below that current Peukert adds nothing: capacity stands" },
  { id: "ah-efficiency", meaning: "ampere-hours got back over ampere-hours charged", value: 0.9, unit: "ratio", source: from["remembered-trade"], place: "charge acceptance", confidence: "memory", note: "85 to 95 %" },
  { id: "taper-from", meaning: "charge from which a battery at the set volts takes less and less", value: 0.8, unit: "ratio", source: from["remembered-trade"], place: "charge acceptance", confidence: "memory", note: null },
  { id: "bulk-lithium", meaning: "bulk charge current over capacity, lithium iron phosphate", value: 1, unit: "ratio", source: from["remembered-trade"], place: "charge acceptance", confidence: "memory", note: null },
  { id: "point-estimated", meaning: "share an output may differ by, point estimated", value: 0.25, unit: "ratio", source: from["own-rule"], place: "output points", confidence: "own", note: "as wide as the widest service-manual tolerance of alternator volts" },
  { id: "point-stated", meaning: "share an output may differ by, point stated", value: 0.15, unit: "ratio", source: from["own-rule"], place: "output points", confidence: "own", note: "as service-manual tolerance of winding ohms" },
  { id: "point-measured", meaning: "share an output may differ by, point measured", value: 0.05, unit: "ratio", source: from["own-rule"], place: "output points", confidence: "own", note: null },
  { id: "point-low", meaning: "share of the ceiling a lower output point should reach for the line to hold between the points", value: 0.3, unit: "ratio", source: from["own-rule"], place: "output points", confidence: "own", note: "measured against a simulated rectifier: 33 % of the ceiling is within 1 %; 8 % is up to 20 % too hopeful" },
  { id: "point-low-single", meaning: "same, one winding: its pulses meet later", value: 0.45, unit: "ratio", source: from["own-rule"], place: "output points", confidence: "own", note: "measured against a simulated bridge of four: half of the ceiling is within 1 %; a third is up to 6 % too hopeful; a tenth up to 20 %" },
  { id: "crank-least", meaning: "least volts at the posts of a 12 V battery while the starter turns", value: 9.6, unit: "V", source: from["remembered-trade"], place: "commissioning", confidence: "memory", note: null },
  { id: "crank-live", meaning: "most volts lost in the live starter lead, 12 V", value: 0.5, unit: "V", source: from["service-manuals"], place: "starter leads", confidence: "seen", note: "half for 6 V" },
  { id: "crank-earth", meaning: "most volts lost on the earth side of the starter, 12 V", value: 0.3, unit: "V", source: from["service-manuals"], place: "starter leads", confidence: "seen", note: "half for 6 V" },
  { id: "crank-time", meaning: "time a starter cable is held to", value: 10, unit: "s", source: from["own-rule"], place: "starter leads", confidence: "own", note: null },
  { id: "thyristor-drop", meaning: "volts a shunt regulator shorts the winding through", value: 1.2, unit: "V", source: from["remembered-trade"], place: "shunt regulators", confidence: "memory", note: null },
  { id: "led-charge-lamp", meaning: "current of a light-emitting charge lamp", value: 0.02, unit: "A", source: from["question-pages"], place: "charge lamps", confidence: "secondary", note: "10 to 20 mA" },
  { id: "charge-lamp-parallel", meaning: "resistor owners fit across such a lamp", value: 470, unit: "ohm", source: from["question-pages"], place: "charge lamps", confidence: "secondary", note: null },
  { id: "capacitor-least", meaning: "capacitor a kick-start machine is run on without a battery, least, microfarad", value: 4700, unit: "ratio", source: from["owners-alternator-article"], place: "no battery", confidence: "secondary", note: "at 25 V or more" },
  { id: "capacitor-most", meaning: "same, most, microfarad", value: 10000, unit: "ratio", source: from["owners-alternator-article"], place: "no battery", confidence: "secondary", note: null },
  { id: "capacitor-volts", meaning: "volts such a capacitor is made for at least", value: 25, unit: "V", source: from["owners-alternator-article"], place: "no battery", confidence: "secondary", note: null },
  { id: "dynamo-speed-published", meaning: "speed a 6 V dynamo charges from on 12 V over that on 6 V", value: 1.333, unit: "ratio", source: from["dynamo-supplier-page"], place: "30 to 40 mph in top", confidence: "secondary", note: "the job takes 2, the magnetism being the same" },
  { id: "coil-12-volts", meaning: "volts of the coil below which a spark is doubtful over nominal", value: 0.75, unit: "ratio", source: from["own-rule"], place: "ignition", confidence: "own", note: null },
  { id: "ride-town", meaning: "length of a ride in town", value: 1800, unit: "s", source: from["own-rule"], place: "rides", confidence: "own", note: null },
  { id: "ride-mixed", meaning: "length of a mixed ride", value: 3600, unit: "s", source: from["own-rule"], place: "rides", confidence: "own", note: null },
  { id: "ride-night", meaning: "length of a night ride", value: 3600, unit: "s", source: from["own-rule"], place: "rides", confidence: "own", note: null },
  { id: "ride-rally", meaning: "length of a day's rally", value: 21600, unit: "s", source: from["own-rule"], place: "rides", confidence: "own", note: null },
] as const satisfies readonly SupplyRulesRow[];

export const supplyRules: readonly SupplyRulesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const supplyRulesUnits = {
  value: null,
} as const;
