import type { Figure, Finding } from "@copperwright/engine";
import { expect, test } from "vitest";
import { figureText, inputChosen, sumOfFigure, sumOfFinding } from "./sumOf.ts";

const limit: Figure = {
  value: 0.5,
  unit: "V",
  table: "voltDropLimits",
  row: "headlamp",
  source: "a sheet",
  place: "page 2",
  confidence: "memory",
};
const finding: Finding & { message: string } = {
  code: "x",
  severity: "mend",
  subject: { kind: "load", id: "HEAD:HI-E" },
  also: [],
  state: null,
  numbers: {},
  limit,
  leansOnMemory: true,
  acceptable: true,
  accepted: null,
  working: [
    {
      name: "volts lost",
      equation: "feed + return",
      inputs: [{ name: "feed", value: 0.4, unit: "V", from: "wire W7" }],
      value: 0.6,
      unit: "V",
    },
  ],
  remedies: [],
  reproduce: null,
  message: "Too much is lost.",
};
const plain = (text: string | undefined): string => (text ?? "").replace(/[\u00a0\u2009]/g, " ");

test("a finding's sum: the last line against its limit, each input leading to what it came from", () => {
  const sum = sumOfFinding(finding, (id) => (id === "W7" ? "wire" : null));
  expect(plain(sum.result)).toBe("0.60 V");
  expect(sum.usedRatio).toBeCloseTo(1.2, 12);
  expect(sum.inputs.map(({ goTo }) => goTo)).toEqual([
    { kind: "part", id: "HEAD" },
    { kind: "wire", id: "W7" },
  ]);
  expect(plain(sum.note)).toBe("limit 0.50 V · a sheet, page 2 · from memory");
});

test("without working the sentence itself is the sum", () => {
  expect(sumOfFinding({ ...finding, working: [], limit: null }).result).toBe("Too much is lost.");
});

test("an input from a table leads nowhere in the job", () => {
  const from = { name: "class", from: "tables/wires thin-1.0" };
  expect(inputChosen(from, finding.subject, () => null)).toBeNull();
});

test("a unit without a manner of printing stands behind its number; nothing is printed as not a number", () => {
  expect(plain(figureText(2.5, "furlong"))).toBe("2.500 furlong");
  expect(figureText(15, "count")).toBe("15");
  expect(figureText(Number.POSITIVE_INFINITY, "s")).toBe("without end");
  expect(sumOfFigure({ name: "n", value: null, unit: "V" }).result).toBe("not known");
});
