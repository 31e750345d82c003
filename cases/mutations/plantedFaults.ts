import type { Operation } from "../../engine/index.ts";
import type { Demo } from "../prove/proofOfDemo.ts";

/** A mistake somebody could make, as edits of the job, and the findings any of which tells it. */
export interface PlantedFault {
  readonly fault: string;
  readonly operations: readonly Operation[];
  readonly told: readonly string[];
}

const move = (id: string, end: "from" | "to", pin: string): Operation => ({
  op: "set",
  list: "wires",
  id,
  path: [end],
  value: pin,
});
const rated = (id: string, ratingA: number): Operation => ({
  op: "set",
  list: "parts",
  id,
  path: ["ratingA"],
  value: ratingA,
});
const thin = (id: string): Operation => ({
  op: "set",
  list: "wires",
  id,
  path: ["size"],
  value: { make: "thin-0.35", basis: "chosen" },
});
/** No strap, and an engine that hangs in rubber. */
const unstrapped = (strap: string): readonly Operation[] => [
  { op: "remove", list: "wires", id: strap },
  { op: "set", list: "bonds", id: "ENG-FR", path: ["kind"], value: "none" },
];

const NOT_SAVED = ["proof-wire-not-saved", "proof-wire-unfused"] as const;
const WRONG_LOAD = ["proof-load-lit-when-off", "proof-load-dead-when-on"] as const;

export const PLANTED: Readonly<Record<Demo, readonly PlantedFault[]>> = {
  "aldreth-single": [
    { fault: "missing fuse", operations: [move("A03", "from", "F1.IN")], told: NOT_SAVED },
    { fault: "blow-rated fuse", operations: [rated("F1", 35)], told: NOT_SAVED },
    {
      fault: "shared earth",
      operations: [move("A30a", "from", "SPL.E")],
      told: [...WRONG_LOAD, "proof-stray"],
    },
    { fault: "mis-pinned button", operations: [move("A22", "from", "HB.1")], told: WRONG_LOAD },
    { fault: "lamp back-fed", operations: [move("A16", "from", "J1.2")], told: WRONG_LOAD },
    {
      fault: "fuse in the earthed pole",
      operations: [
        move("A01", "to", "F1.IN"),
        move("A03", "to", "FR.BAT"),
        move("A02", "to", "J3.1"),
      ],
      told: NOT_SAVED,
    },
    { fault: "thin earth", operations: [thin("A01")], told: NOT_SAVED },
  ],
  "minazuru-four": [
    { fault: "missing fuse", operations: [move("C83", "from", "F3.IN")], told: NOT_SAVED },
    { fault: "blow-rated fuse", operations: [rated("F3", 40)], told: NOT_SAVED },
    { fault: "shared earth", operations: [move("C78", "to", "RLI.E")], told: ["proof-stray"] },
    {
      fault: "mis-pinned start button",
      operations: [move("C25a", "to", "STB.H1")],
      told: WRONG_LOAD,
    },
    { fault: "lamp back-fed", operations: [move("C63", "from", "F3.OUT")], told: WRONG_LOAD },
    {
      fault: "fuse in the earthed pole",
      operations: [
        move("C01", "to", "F0.IN"),
        move("C07", "to", "FR.BAT"),
        move("C06", "to", "J1.1"),
      ],
      told: NOT_SAVED,
    },
    {
      fault: "starter returns through thin earths",
      operations: unstrapped("C02"),
      told: [...NOT_SAVED, "proof-hot-starting", ...WRONG_LOAD],
    },
  ],
  "orivesta-enduro": [
    { fault: "missing fuse", operations: [move("D04", "from", "F1.IN")], told: NOT_SAVED },
    { fault: "blow-rated fuse", operations: [rated("F1", 30)], told: NOT_SAVED },
    { fault: "shared earth", operations: [move("D58", "to", "RLI.E")], told: ["proof-stray"] },
    { fault: "mis-pinned button", operations: [move("D30a", "from", "HB.1")], told: WRONG_LOAD },
    { fault: "lamp back-fed", operations: [move("D27a", "from", "J9.1")], told: WRONG_LOAD },
    {
      fault: "fuse in the earthed pole",
      operations: [
        move("D01", "to", "F1.IN"),
        move("D04", "to", "FR.BAT"),
        move("D03", "to", "J9.1"),
      ],
      told: NOT_SAVED,
    },
    { fault: "thin earth", operations: [thin("D01")], told: NOT_SAVED },
  ],
  "brenzach-twin": [
    { fault: "missing fuse", operations: [move("E28", "from", "F3.IN")], told: NOT_SAVED },
    { fault: "blow-rated fuse", operations: [rated("F3", 30)], told: NOT_SAVED },
    { fault: "shared earth", operations: [move("E126", "to", "RLI.E")], told: ["proof-stray"] },
    {
      fault: "mis-pinned start button",
      operations: [move("E81", "from", "STB.15K")],
      told: WRONG_LOAD,
    },
    { fault: "charge lamp back-fed", operations: [move("E96", "from", "J30.2")], told: WRONG_LOAD },
    {
      fault: "fuse in the earthed pole",
      operations: [
        move("E01", "to", "F0.IN"),
        move("E08", "to", "FR.BAT"),
        move("E07", "to", "J30.1"),
      ],
      told: NOT_SAVED,
    },
    {
      fault: "starter returns through thin earths",
      operations: unstrapped("E02"),
      told: [...NOT_SAVED, "proof-hot-starting", ...WRONG_LOAD],
    },
  ],
};

/** Edits that change nothing electrical. */
export const NEUTRAL: Readonly<Record<Demo, Operation>> = {
  "aldreth-single": { op: "set", list: "wires", id: "A03", path: ["number"], value: "77" },
  "minazuru-four": { op: "set", list: "wires", id: "C83", path: ["number"], value: "77" },
  "orivesta-enduro": { op: "set", list: "wires", id: "D04", path: ["number"], value: "77" },
  "brenzach-twin": { op: "set", list: "wires", id: "E28", path: ["number"], value: "77" },
};
