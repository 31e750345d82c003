import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bundleAnswer, bundleOf } from "./bundleAnswer.ts";

const answered = (...texts: string[]) => {
  const bundled = bundleAnswer(texts);
  if (!bundled.ok) throw new Error(bundled.refusals[0]?.message);
  return bundled.answer;
};

describe("n equal wires, in diameters of one", () => {
  // Circle-packing geometry: exact for 2, 3, 4 and 7; 5 to the printed figure.
  test.each([
    [1, 1],
    [2, 2],
    [3, 1 + 2 / Math.sqrt(3)],
    [4, 1 + Math.SQRT2],
    [5, 2.7013],
    [7, 3],
  ])("%i wires: %f", (count, factor) => {
    expect(answered(`2x${count}`).tightestMm / 2).toBeCloseTo(factor, 4);
  });
});

test("reads diameters and counts, refuses what is neither", () => {
  expect(answered("2.1", "2.8x2").wires.map(({ odMm }) => odMm)).toEqual([2.1, 2.8, 2.8]);
  for (const bad of ["", "0", "-2", "2x0", "two", "1e3", "2.1mm", "2,1", "101", "=1+1"]) {
    const bundled = bundleAnswer(["2.1", bad]);
    expect(bundled.ok, bad).toBe(false);
  }
  expect(bundleAnswer([]).ok).toBe(false);
  expect(bundleAnswer(["2x401"]).ok).toBe(false);
});

test("one wire is as thick as it is", () => {
  expect(answered("2.4")).toMatchObject({ tightestMm: 2.4, asLaidMm: 2.4, asLaidFactor: 1 });
});

describe("coverings of a 10 mm bundle", () => {
  const least = (kind: string, odMm: number) =>
    bundleOf([odMm]).sleeve.find((one) => one.kind === kind && one.ok)?.sizeMm;

  test("conduit is at least a quarter wider, which is 64 % of its area", () => {
    expect(least("conduit", 8)).toBe(10);
    expect(least("conduit", 10)).toBe(14);
    const just = bundleOf([8]).sleeve.find(({ kind, ok }) => kind === "conduit" && ok);
    expect(just?.fillPercent).toBeCloseTo(64, 9);
  });

  test("heat-shrink passes over with a fifth to spare and still grips", () => {
    expect(least("heat-shrink", 9)).toBe(12);
    expect(least("heat-shrink", 10)).toBe(18);
    expect(least("heat-shrink", 60)).toBeUndefined();
  });

  test("the size before the first that fits is shown as too small", () => {
    const pvc = bundleOf([10]).sleeve.filter(({ kind }) => kind === "pvc-sleeve");
    expect(pvc.map(({ sizeMm, ok }) => [sizeMm, ok])).toEqual([
      [10, false],
      [12, true],
    ]);
  });
});

test("law: wires do not overlap, all lie within the tightest circle, and it is no less than its bounds", () => {
  const ods = fc.array(fc.constantFrom(1.7, 1.9, 2.1, 2.4, 2.8, 3.4, 6), {
    minLength: 1,
    maxLength: 9,
  });
  fc.assert(
    fc.property(ods, (odsMm) => {
      const { wires, tightestMm, lowerBoundMm, asLaidMm } = bundleOf(odsMm);
      expect(wires.map(({ odMm }) => odMm)).toEqual(odsMm);
      for (const [i, a] of wires.entries()) {
        expect(Math.hypot(a.xMm, a.yMm) + a.odMm / 2).toBeLessThanOrEqual(tightestMm / 2 + 1e-6);
        for (const b of wires.slice(i + 1)) {
          const apartMm = Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);
          expect(apartMm).toBeGreaterThanOrEqual((a.odMm + b.odMm) / 2 - 1e-6);
        }
      }
      expect(tightestMm).toBeGreaterThanOrEqual(lowerBoundMm - 1e-9);
      expect(asLaidMm).toBeGreaterThanOrEqual(tightestMm);
    }),
    { numRuns: 15 },
  );
});
