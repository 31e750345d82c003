import { describe, expect, test } from "vitest";
import {
  findingRows,
  fuseOf,
  headlineOf,
  type SpokenFinding,
  stationsOf,
  touching,
} from "./findingRows.ts";
import type { Whereabouts } from "./whereabouts.ts";

const finding = (
  severity: SpokenFinding["severity"],
  id: string,
  more: Partial<SpokenFinding> = {},
): SpokenFinding => ({
  code: "some-code",
  severity,
  subject: { kind: "wire", id },
  also: [],
  state: null,
  numbers: {},
  limit: null,
  leansOnMemory: false,
  acceptable: true,
  accepted: null,
  working: [],
  remedies: [],
  reproduce: null,
  message: `${severity} at ${id}.`,
  ...more,
});
const lists = (check: SpokenFinding[], proof: SpokenFinding[]) =>
  findingRows({ findings: check } as never, { findings: proof } as never);
const where: Whereabouts = {
  stations: { HL: ["HL"], TL: ["TL"], W1: ["HL", "TL"], REAR: ["TL"] },
  runs: { W1: ["HL-TL"] },
  fuses: { W1: ["F2"] },
};

test("worst first, stop before not proven before mend before advise; what is answered for last", () => {
  const accepted = { reason: "known", by: "K" };
  const rows = lists(
    [finding("advise", "A"), finding("mend", "B", { accepted }), finding("mend", "C")],
    [finding("not-proven", "D"), finding("stop", "E")],
  );
  expect(rows.map(({ finding: { subject } }) => subject.id)).toEqual(["E", "D", "C", "A", "B"]);
});

test("the same sentence from check and proof is told once; two findings of one kind at one place keep their own ids", () => {
  const rows = lists([finding("mend", "A")], [finding("mend", "A"), finding("stop", "A")]);
  expect(rows).toHaveLength(2);
  expect(new Set(rows.map(({ id }) => id)).size).toBe(2);
});

describe("touching", () => {
  const rows = lists([finding("mend", "W1"), finding("mend", "REAR:TAIL-E")], []);
  test.each([
    ["W1", ["W1"]],
    ["REAR", ["REAR:TAIL-E"]],
    ["TL", ["W1", "REAR:TAIL-E"]],
    ["HL-TL", ["W1"]],
  ])("%s", (thing, ids) => {
    expect(touching(rows, thing, where).map((row) => row.finding.subject.id)).toEqual(ids);
  });
});

test("a load is where its part is", () => {
  expect(stationsOf(finding("mend", "REAR:TAIL-E"), where)).toEqual(["TL"]);
});

test("a figure's point and a make's point end no sentence", () => {
  expect(
    headlineOf("C35 of 0.38 mm² carries 5.8 A for long. In air of 90 °C it may carry 2.8 A."),
  ).toEqual(["C35 of 0.38 mm² carries 5.8 A for long", "In air of 90 °C it may carry 2.8 A."]);
  expect(headlineOf("Nothing more.")).toEqual(["Nothing more", ""]);
});

test("the fuse of a finding: its own, the one named, the guard of its wire, or none", () => {
  expect(fuseOf(finding("mend", "F1", { subject: { kind: "fuse", id: "F1" } }), where)).toBe("F1");
  expect(fuseOf(finding("stop", "W9", { numbers: { cut: "F0" } }), where)).toBe("F0");
  expect(fuseOf(finding("stop", "W1"), where)).toBe("F2");
  const unfused = finding("advise", "W1", { code: "unfused-starter-cable" });
  expect(fuseOf(unfused, where)).toBeNull();
  expect(
    fuseOf(finding("advise", "job", { subject: { kind: "job", id: "job" } }), where),
  ).toBeNull();
});
