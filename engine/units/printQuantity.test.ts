import { expect, test } from "vitest";
import { printedUnits, printQuantity, printWire } from "./index.ts";

test.each([
  [0.213, "V", "0.21\u00a0V"],
  [12.26, "V", "12.3\u00a0V"],
  [5.96, "A", "6.0\u00a0A"],
  [1370.4, "mm", "1\u2009370\u00a0mm"],
  [1_234_567, "mm", "1\u2009234\u2009567\u00a0mm"],
  [1.0053, "mm2", "1.01\u00a0mm²"],
  [-12.34, "A", "\u221212.3\u00a0A"],
  [-0.001, "A", "0.0\u00a0A"],
  [85.4, "C", "85\u00a0°C"],
  [0.0184, "ohm", "0.018\u00a0Ω"],
])("%d %s", (value, unit, printed) => expect(printQuantity(value, unit)).toBe(printed));

test("what is no figure, or in no unit known, is a bug and not a text", () => {
  expect(() => printQuantity(Number.NaN, "V")).toThrow(/not a figure/);
  expect(() => printQuantity(Number.POSITIVE_INFINITY, "V")).toThrow(/not a figure/);
  expect(() => printQuantity(1, "furlong")).toThrow(/no manner/);
});

test("every unit prints a no-break space and never an ASCII hyphen", () => {
  for (const unit of printedUnits) {
    expect(printQuantity(-42, unit)).toMatch(/^\u221242(\.0+)?\u00a0\S/);
  }
});

test("a wire prints as strands over diameter with its counted copper", () => {
  expect(printWire({ strandCount: 32, strandDiameterMm: 0.2 })).toBe("32/0.20 (1.01\u00a0mm²)");
  expect(printWire({ strandCount: 14, strandDiameterMm: 0.012 * 25.4 })).toBe(
    "14/.012 in (1.02\u00a0mm²)",
  );
  expect(printWire({ strandCount: 23, strandDiameterMm: 0.0076 * 25.4 })).toBe(
    "23/0.193 (0.67\u00a0mm²)",
  );
});
