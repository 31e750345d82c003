import fc from "fast-check";
import { expect, it } from "vitest";
import { mmText } from "./pathText.ts";

it("writes a length as its number of thousandths is written", () => {
  for (const mm of [0, -0, 0.5, -0.5, 1e-4, -1e-4, 1.9995, 12.05, -3.001, 100, 1e7, 5e12]) {
    expect(mmText(mm)).toBe(String(Math.round(mm * 1000) / 1000 + 0));
  }
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (mm) => {
      expect(mmText(mm)).toBe(String(Math.round(mm * 1000) / 1000 + 0));
    }),
  );
});
