import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type FusePoint, fuseOpeningTimeS } from "./index.ts";

/** Gates with round numbers of our own, so that every expectation below can be done in the head. */
const points: readonly FusePoint[] = [
  { loadPercent: 100, minS: 100_000, maxS: null },
  { loadPercent: 200, minS: 1, maxS: 100 },
  { loadPercent: 800, minS: 0.25, maxS: 1 },
];
const at = (currentA: number, reading: "interpolated" | "staircase" = "interpolated") =>
  fuseOpeningTimeS({ points, reading, ratingA: 10, currentA });

describe("interpolated", () => {
  test("at a gate it is the gate", () => {
    expect(at(20)).toEqual({ minS: 1, maxS: 100 });
    expect(at(80)).toEqual({ minS: 0.25, maxS: 1 });
  });
  test("half-way on log paper is the geometric mean", () => {
    // √(200 · 800) = 400 %: √(100 · 1) = 10 s and √(1 · 0.25) = 0.5 s.
    expect(at(40).maxS).toBeCloseTo(10, 9);
    expect(at(40).minS).toBeCloseTo(0.5, 9);
  });
  test("beyond the last gate I²t stays the same: twice the current, a quarter of the time", () => {
    expect(at(160).maxS).toBeCloseTo(0.25, 12);
    expect(at(160).minS).toBeCloseTo(0.0625, 12);
  });
  test("below the first guaranteed gate it may never open", () => {
    expect(at(19.999).maxS).toBeNull();
    expect(at(15).minS).toBeGreaterThan(1);
  });
  test("below the first gate of all it is not expected to open", () => {
    expect(at(9.9)).toEqual({ minS: null, maxS: null });
  });
});

describe("staircase", () => {
  test("the longest time of the gate below, the shortest of the gate above", () => {
    expect(at(40, "staircase")).toEqual({ minS: 0.25, maxS: 100 });
    expect(at(15, "staircase")).toEqual({ minS: 1, maxS: null });
    expect(at(200, "staircase")).toEqual({ minS: 0, maxS: 1 });
  });
});

describe("gates that say less", () => {
  const glass: readonly FusePoint[] = [
    { loadPercent: 100, minS: "never", maxS: null },
    { loadPercent: 135, minS: null, maxS: 3600 },
    { loadPercent: 200, minS: null, maxS: 120 },
  ];
  const glassAt = (currentA: number) =>
    fuseOpeningTimeS({ points: glass, reading: "interpolated", ratingA: 10, currentA });
  test("it carries its rating for good", () =>
    expect(glassAt(10)).toEqual({ minS: null, maxS: null }));
  test("over it nothing promises that it holds", () => {
    expect(glassAt(10.1)).toEqual({ minS: 0, maxS: null });
    expect(glassAt(20)).toEqual({ minS: 0, maxS: 120 });
  });
  test("a shortest time is not stretched past gates that state none", () => {
    const carries: readonly FusePoint[] = [
      { loadPercent: 110, minS: 14_400, maxS: null },
      { loadPercent: 135, minS: null, maxS: 3600 },
    ];
    const band = { points: carries, reading: "interpolated", ratingA: 10 } as const;
    expect(fuseOpeningTimeS({ ...band, currentA: 11 }).minS).toBe(14_400);
    expect(fuseOpeningTimeS({ ...band, currentA: 12 }).minS).toBe(0);
  });
  test("gates out of order are a bug of the table", () => {
    const wrong = [...points].reverse();
    const band = { points: wrong, reading: "interpolated", ratingA: 10, currentA: 20 } as const;
    expect(() => fuseOpeningTimeS(band)).toThrow(/out of order/);
    const crossed: readonly FusePoint[] = [{ loadPercent: 200, minS: 5, maxS: 1 }];
    expect(() => fuseOpeningTimeS({ ...band, points: crossed })).toThrow(/shortest/);
  });
});

test("more current never takes longer, and the staircase encloses the other reading up to the last gate", () => {
  const inf = (timeS: number | null): number => timeS ?? Number.POSITIVE_INFINITY;
  const amps = fc.double({ min: 1, max: 300, noNaN: true });
  fc.assert(
    fc.property(amps, amps, (i, j) => {
      const [low, high] = [Math.min(i, j), Math.max(i, j)];
      for (const reading of ["interpolated", "staircase"] as const) {
        expect(inf(at(high, reading).maxS)).toBeLessThanOrEqual(inf(at(low, reading).maxS));
        expect(inf(at(high, reading).minS)).toBeLessThanOrEqual(inf(at(low, reading).minS));
        expect(inf(at(low, reading).minS)).toBeLessThanOrEqual(inf(at(low, reading).maxS));
      }
      expect(inf(at(low, "staircase").maxS)).toBeGreaterThanOrEqual(inf(at(low).maxS) - 1e-9);
      expect(inf(at(low, "staircase").minS)).toBeLessThanOrEqual(inf(at(low).minS) + 1e-9);
    }),
  );
});
