// Generated from data/loomRules.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "aircraft-wiring-manual": "aircraft standard wiring practices manual 20-30-12",
  "car-repair-splicing": "1990s car repair manual, splicing wire",
  "circle-geometry": "circle packing geometry",
  "common-practice": "common practice of the trade",
  "diesel-harness-guide": "heavy diesel harness guide",
  "faa-ac43-13-1b": "FAA AC 43.13-1B Change 1 (2001), chapter 11",
  "harness-layout-article": "commercial vehicle harness layout article",
  "mil-w-5088l-text": "MIL-W-5088L",
  "nasa-workmanship": "NASA workmanship standard pages",
  "own-rule": "own rule of this program",
  "remembered-trade": "remembered, common trade listing; not found in a text",
  "shrink-guides": "heat-shrink makers' and sellers' size guides",
  "tm-1-1500": "US Army TM 1-1500-204-23-4",
  "van-builder-manual": "light van body-builder manual V1.0 (2015)",
} as const;

export interface LoomRulesRow {
  readonly id: string;
  readonly meaning: string;
  readonly value: number;
  readonly unit: string;
  readonly sense: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
  readonly note: string | null;
}

const rows = [
  { id: "bend-fixed", meaning: "fixed loom bend radius over outside diameter", value: 10, unit: "ratio", sense: "least", source: from["tm-1-1500"], place: "item 27", confidence: "seen", note: null },
  { id: "bend-absolute", meaning: "absolute shortest bend radius over outside diameter", value: 6, unit: "ratio", sense: "least", source: from["nasa-workmanship"], place: "4.03", confidence: "seen", note: null },
  { id: "bend-terminal", meaning: "bend beside a supported terminal strip, over diameter", value: 3, unit: "ratio", sense: "least", source: from["faa-ac43-13-1b"], place: "11-96", confidence: "memory", note: null },
  { id: "bend-flex", meaning: "bend radius in the steering head over diameter, full lock", value: 10, unit: "ratio", sense: "least", source: from["faa-ac43-13-1b"], place: "11-115", confidence: "memory", note: "prefer 15; the bundle twists, it does not fold" },
  { id: "support", meaning: "distance between supports on a vehicle", value: 300, unit: "mm", sense: "most", source: from["van-builder-manual"], place: "p. 219", confidence: "seen", note: null },
  { id: "support-outer", meaning: "distance between primary clamps, aircraft outer limit", value: 610, unit: "mm", sense: "most", source: from["faa-ac43-13-1b"], place: "11-96a", confidence: "seen", note: null },
  { id: "tie-pitch", meaning: "tie pitch where supports are far apart", value: 305, unit: "mm", sense: "most", source: from["faa-ac43-13-1b"], place: "11-158b", confidence: "seen", note: null },
  { id: "first-fixing", meaning: "first fixing behind a connector", value: 120, unit: "mm", sense: "most", source: from["harness-layout-article"], place: "layout rules", confidence: "secondary", note: null },
  { id: "sag", meaning: "sag between supports under hand pressure", value: 12.7, unit: "mm", sense: "most", source: from["faa-ac43-13-1b"], place: "11-118", confidence: "seen", note: null },
  { id: "retermination", meaning: "spare re-terminations at each end", value: 2, unit: "count", sense: "least", source: from["faa-ac43-13-1b"], place: "11-118", confidence: "seen", note: "on top of drip loop and movement" },
  { id: "exhaust", meaning: "clearance to exhaust, unless shielded", value: 200, unit: "mm", sense: "least", source: from["van-builder-manual"], place: "p. 219", confidence: "seen", note: null },
  { id: "exhaust-shielded", meaning: "clearance behind a heat shield", value: 50, unit: "mm", sense: "least", source: from["harness-layout-article"], place: "layout rules", confidence: "secondary", note: null },
  { id: "rotating", meaning: "clearance to rotating parts", value: 50, unit: "mm", sense: "least", source: from["harness-layout-article"], place: "layout rules", confidence: "secondary", note: null },
  { id: "edge", meaning: "clearance to edges and bolt heads", value: 10, unit: "mm", sense: "least", source: from["harness-layout-article"], place: "layout rules", confidence: "secondary", note: null },
  { id: "hole", meaning: "hole edge to bundle, or grommet", value: 9.5, unit: "mm", sense: "least", source: from["faa-ac43-13-1b"], place: "11-115", confidence: "seen", note: null },
  { id: "fuel", meaning: "distance to a fuel line", value: 152, unit: "mm", sense: "least", source: from["faa-ac43-13-1b"], place: "11-96 v, w", confidence: "seen", note: "above it, never tied to it" },
  { id: "fuel-absolute", meaning: "distance to a fuel line with close clamps", value: 51, unit: "mm", sense: "least", source: from["faa-ac43-13-1b"], place: "11-96 v, w", confidence: "seen", note: null },
  { id: "battery", meaning: "distance to the battery", value: 50, unit: "mm", sense: "least", source: from["van-builder-manual"], place: "p. 219", confidence: "seen", note: null },
  { id: "control", meaning: "distance to a moving control, bundle pushed by hand", value: 12.7, unit: "mm", sense: "least", source: from["faa-ac43-13-1b"], place: "11-125", confidence: "memory", note: null },
  { id: "joints-per-segment", meaning: "joints in one wire between disconnects", value: 1, unit: "count", sense: "most", source: from["faa-ac43-13-1b"], place: "11-167c", confidence: "seen", note: "many to one and a change of size excepted" },
  { id: "joint-spacing", meaning: "joint to next joint, branch or connector", value: 40, unit: "mm", sense: "least", source: from["car-repair-splicing"], place: "splicing wire", confidence: "seen", note: null },
  { id: "joint-in-flex", meaning: "joints in the flex zone", value: 0, unit: "count", sense: "most", source: from["common-practice"], place: "common practice", confidence: "common practice", note: null },
  { id: "joint-shrink", meaning: "heat-shrink past the joint each side", value: 6, unit: "mm", sense: "least", source: from["diesel-harness-guide"], place: "8.10.2", confidence: "seen", note: null },
  { id: "nicked-strands", meaning: "nicked strands allowed", value: 0, unit: "count", sense: "most", source: from["own-rule"], place: "stricter than 11-13", confidence: "own", note: null },
  { id: "solder-support", meaning: "insulation support past the wick of a soldered joint", value: 10, unit: "mm", sense: "least", source: from["remembered-trade"], place: "working default", confidence: "memory", note: null },
  { id: "sleeve-fit", meaning: "sleeve inside diameter over bundle diameter", value: 1.25, unit: "ratio", sense: "least", source: from["faa-ac43-13-1b"], place: "11-249", confidence: "seen", note: null },
  { id: "sleeve-fill", meaning: "area fill of a sleeve", value: 64, unit: "%", sense: "most", source: from["faa-ac43-13-1b"], place: "11-249", confidence: "seen", note: null },
  { id: "pvc-sleeve-least", meaning: "PVC sleeve over a dry loom, inside over bundle diameter", value: 1.15, unit: "ratio", sense: "least", source: from["own-rule"], place: "working default", confidence: "derived", note: null },
  { id: "pvc-sleeve-most", meaning: "PVC sleeve over a dry loom, inside over bundle diameter", value: 1.25, unit: "ratio", sense: "most", source: from["own-rule"], place: "working default", confidence: "derived", note: null },
  { id: "tape-lap", meaning: "tape overlap", value: 50, unit: "%", sense: "least", source: from["aircraft-wiring-manual"], place: "p. 152", confidence: "seen", note: null },
  { id: "tape-past", meaning: "tape past a sleeve end and each way at a branch", value: 25, unit: "mm", sense: "least", source: from["diesel-harness-guide"], place: "17.6", confidence: "seen", note: null },
  { id: "tape-hot", meaning: "vinyl tape temperature", value: 80, unit: "C", sense: "most", source: from["diesel-harness-guide"], place: "17.6.1", confidence: "seen", note: null },
  { id: "shrink-supplied", meaning: "object over supplied inside diameter", value: 0.8, unit: "ratio", sense: "most", source: from["shrink-guides"], place: "size choice", confidence: "seen", note: null },
  { id: "shrink-recovered", meaning: "object over recovered inside diameter", value: 1.1, unit: "ratio", sense: "least", source: from["shrink-guides"], place: "size choice", confidence: "seen", note: null },
  { id: "shrink-length", meaning: "length allowance of heat-shrink", value: 15, unit: "%", sense: "least", source: from["shrink-guides"], place: "5 to 15 %", confidence: "secondary", note: null },
  { id: "label-end", meaning: "wire mark from its termination", value: 76, unit: "mm", sense: "most", source: from["mil-w-5088l-text"], place: "3.9", confidence: "seen", note: null },
  { id: "label-repeat", meaning: "repeat of marks along a wire", value: 914, unit: "mm", sense: "most", source: from["mil-w-5088l-text"], place: "3.9", confidence: "seen", note: null },
  { id: "label-short", meaning: "wire that needs no mark is shorter than", value: 152, unit: "mm", sense: "most", source: from["mil-w-5088l-text"], place: "3.9", confidence: "seen", note: null },
  { id: "bundle-estimate", meaning: "mixed bundle diameter over root of sum of squares, as laid", value: 1.2, unit: "ratio", sense: "least", source: from["remembered-trade"], place: "working rule", confidence: "memory", note: null },
  { id: "bundle-three", meaning: "the same for exactly three wires", value: 1.25, unit: "ratio", sense: "least", source: from["circle-geometry"], place: "three equal circles", confidence: "derived", note: null },
  { id: "fold-radius", meaning: "radius of a fold the machine does not have, over loom diameter", value: 6, unit: "ratio", sense: "least", source: from["own-rule"], place: "loom board", confidence: "own", note: null },
] as const satisfies readonly LoomRulesRow[];

export const loomRules: readonly LoomRulesRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const loomRulesUnits = {
  value: null,
} as const;
