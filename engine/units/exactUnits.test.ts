import { expect, test } from "vitest";
import { circleAreaMm2, circleDiameterMm, MM2_PER_CIRCULAR_MIL, strandAreaMm2 } from "./index.ts";

test("a circular mil is 5.067075e-4 mm² (published to seven figures)", () => {
  expect(Math.abs(MM2_PER_CIRCULAR_MIL - 5.067075e-4)).toBeLessThan(0.5e-10);
});

test("area and diameter of a round undo each other", () => {
  for (const diameterMm of [0.05, 0.3048, 1, 17.5])
    expect(circleDiameterMm(circleAreaMm2(diameterMm))).toBeCloseTo(diameterMm, 12);
});

test("copper of strands grows with their count and with the square of their diameter", () => {
  const one = strandAreaMm2({ strandCount: 14, strandDiameterMm: 0.3 });
  expect(strandAreaMm2({ strandCount: 28, strandDiameterMm: 0.3 })).toBeCloseTo(2 * one, 12);
  expect(strandAreaMm2({ strandCount: 14, strandDiameterMm: 0.6 })).toBeCloseTo(4 * one, 12);
});
