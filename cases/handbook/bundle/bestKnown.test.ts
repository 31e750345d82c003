import { expect, test } from "vitest";
import { packCircles, packingStepCount } from "../../../engine/geometry/index.ts";
import { bestKnownRimRatio } from "./bestKnown.ts";

const excessPercent = (count: number): number => {
  const packed = packCircles({
    diametersMm: Array.from({ length: count }, () => 2),
    seed: 1,
    stepCount: packingStepCount(count),
  });
  const best = bestKnownRimRatio.get(count)!;
  // The table is cut to ten places: a result below it by more than 1e-9 would be an overlap, a bound above it a false proof.
  expect(packed.tightestMm / 2).toBeGreaterThan(best - 1e-9);
  expect(packed.lowerBoundMm / 2).toBeLessThanOrEqual(best + 1e-9);
  return 100 * (packed.tightestMm / 2 / best - 1);
};

test("2 to 60 equal circles lie within half a per cent of the best known on average, none over 2.5 %", () => {
  const excesses = Array.from({ length: 59 }, (_, i) => excessPercent(i + 2));
  const mean = excesses.reduce((sum, excess) => sum + excess, 0) / excesses.length;
  expect(mean).toBeLessThanOrEqual(0.5);
  expect(Math.max(...excesses)).toBeLessThanOrEqual(2.5);
});

test.each([1, 2, 3, 4])("%i circles are exact to the printed places", (count) => {
  expect(excessPercent(count)).toBeLessThan(1e-7);
});

test("61 to 100 circles too stay above the table and the bounds below it", () => {
  for (const count of [61, 75, 91, 100]) expect(excessPercent(count)).toBeLessThanOrEqual(4);
});
