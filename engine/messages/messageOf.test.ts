import { describe, expect, test } from "vitest";
import type { Finding } from "./index.ts";
import { explanationOf, findingCodes, messageOf, severitiesOf } from "./index.ts";
import { numberInWords, quantityInWords } from "./numberInWords.ts";

const finding = (numbers: Finding["numbers"], over: Partial<Finding> = {}): Finding => ({
  code: "fuse-near-its-load",
  severity: "advise",
  subject: { kind: "fuse", id: "F1" },
  also: [],
  state: null,
  numbers,
  limit: null,
  leansOnMemory: false,
  acceptable: true,
  accepted: null,
  working: [],
  remedies: [],
  reproduce: null,
  ...over,
});
const complete = { fuseA: 10, loadA: 9.1, loadPercent: 91, sharePercent: 80 };
const plain = (text: string): string => text.replace(/\u00a0/g, " ");

const limit = {
  value: 2,
  unit: "ratio",
  table: "protectionRules",
  row: "selectivity-usual",
  source: "trade practice",
  place: "rule of thumb",
  confidence: "memory",
} as const;

describe("a finding in words", () => {
  test("every word is filled in with its unit", () => {
    expect(plain(messageOf(finding(complete)))).toBe(
      "F1 of 10.0 A carries 9.1 A for long, 91 % of its rating; 80 % is the most it should.",
    );
  });

  test("one thing is one, more are many", () => {
    const said = (wireCount: number) =>
      messageOf(
        finding({ source: "BAT", unfusedMm: 80, wireCount }, { code: "unfused-lead", limit }),
      );
    expect(said(1)).toContain("(1 piece)");
    expect(said(2)).toContain("(2 pieces)");
    expect(said(1)).not.toMatch(/[[|\]]/);
  });

  test("a word the finding does not say is a bug", () => {
    const { loadA: _, ...without } = complete;
    expect(() => messageOf(finding(without))).toThrow("loadA");
    expect(() => messageOf(finding({ ...complete, loadA: null }))).toThrow("loadA");
  });

  test("a code that is not in the catalogue is a bug", () => {
    expect(() => messageOf(finding(complete, { code: "no-such-thing" }))).toThrow("no-such-thing");
  });

  test("text from a job cannot pass for a placeholder", () => {
    const said = messageOf(finding(complete, { subject: { kind: "fuse", id: "%loadA%" } }));
    expect(said).toContain("%loadA% of 10.0");
  });

  test("a line whose words are missing is left out, a remembered limit said to be remembered", () => {
    const numbers = { mainA: 15, branch: "F2", branchA: 10, timesRatio: 1.5, sureRatio: 3 };
    const said = messageOf(finding(numbers, { code: "fuses-not-selective", limit }));
    expect(said).toContain("remembered, not confirmed");
  });
});

describe("numbers by the last letters of their key", () => {
  test.each([
    ["dropV", 0.21, "0.21 V"],
    ["unfusedMm", 1370, "1\u2009370 mm"],
    ["areaMm2", 1.005, "1.00 mm²"],
    ["loadPercent", 14.4, "14 %"],
    ["wireCount", 12, "12"],
    ["timesRatio", 1.5, "1.50"],
    ["flatH", 2.6, "2.6 h"],
    ["capacityAh", 14, "14.0 Ah"],
    ["ambientC", -5, "−5 °C"],
    ["contactMohm", 3, "3.00 mΩ"],
  ])("%s", (key, value, said) => {
    expect(plain(numberInWords(key, value))).toBe(said);
  });

  test("a key that says no unit is a bug", () => {
    expect(() => numberInWords("size", 3)).toThrow("size");
    expect(() => numberInWords("dropV", Number.NaN)).toThrow();
  });

  test("units nobody prints are written out", () => {
    expect(quantityInWords(3, "A/mm2")).toBe("3 A/mm2");
  });
});

describe("the catalogue", () => {
  test("codes are sorted, explained, and of known severities", () => {
    expect([...findingCodes]).toEqual([...findingCodes].sort());
    for (const code of findingCodes) {
      expect(explanationOf(code).length).toBeGreaterThan(0);
      for (const one of severitiesOf(code)) {
        expect(["stop", "not-proven", "mend", "advise"]).toContain(one);
      }
    }
  });
});
