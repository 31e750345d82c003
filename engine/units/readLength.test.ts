import fc from "fast-check";
import { expect, test } from "vitest";
import { readLength } from "./index.ts";

const lengthOf = (text: string): number | string => {
  const reading = readLength(text);
  return reading.kind === "length" ? reading.lengthMm : reading.kind;
};

test.each([
  ["1.6 m", 1600],
  ["160 cm", 1600],
  ["1600", 1600],
  ["1600mm", 1600],
  ["1,6 m", 1600],
  ["63 in", 1600.2],
  ['63"', 1600.2],
  ["5'3\"", 1600.2],
  ["5 ft 3 in", 1600.2],
  ["2 feet", 609.6],
  ["\uff11\uff16\uff10\uff10", 1600],
])("%s is one length and no other", (text, lengthMm) => {
  expect(lengthOf(text)).toBeCloseTo(lengthMm, 9);
});

test("a bare doubtful number is a question that lists what it could be", () => {
  expect(readLength("1.6")).toEqual({
    kind: "ask",
    couldBe: [
      { unit: "mm", lengthMm: 1.6 },
      { unit: "cm", lengthMm: 16 },
      { unit: "m", lengthMm: 1600 },
      { unit: "in", lengthMm: 1.6 * 25.4 },
    ],
  });
  for (const text of ["12", "0", "160.5", "50000"]) expect(lengthOf(text), text).toBe("ask");
});

test.each(["", "-3 mm", "1,600 mm", "1e9 m", "5'14\"", "abc", "=1+1", "<b>1 m</b>", "1 furlong"])(
  "%s is refused",
  (text) => expect(lengthOf(text)).toBe("refusal"),
);

test("the same length in any unit reads the same", () => {
  fc.assert(
    fc.property(fc.integer({ min: 30, max: 20_000 }), (mm) => {
      for (const text of [`${mm}`, `${mm} mm`, `${mm / 10} cm`, `${mm / 1000} m`])
        expect(lengthOf(text), text).toBeCloseTo(mm, 9);
    }),
  );
});

test("no text throws, and what is read is never negative or endless", () => {
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: "binary", maxLength: 200 }), hostile), (text) => {
      const reading = readLength(text);
      if (reading.kind !== "length") return;
      expect(reading.lengthMm).toBeGreaterThanOrEqual(0);
      expect(reading.lengthMm).toBeLessThanOrEqual(100_000);
    }),
  );
});

const hostile = fc
  .array(fc.constantFrom(..."0123456789.,'\"-+ mcin\u00b2/ft"), { maxLength: 60 })
  .map((signs) => signs.join(""));
