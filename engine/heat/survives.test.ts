import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  adiabaticEndC,
  type FusePoint,
  heatCapacityJPerMK,
  heatMaterials,
  lossTable,
  peakBehindFuse,
  type SurvivalQuestion,
  steadyConductorTemperatureC,
  survives,
  wireInAirPath,
} from "./index.ts";

const pvc = heatMaterials("pvc");
/** Gates of our own making; no published fuse. */
const points: readonly FusePoint[] = [
  { loadPercent: 110, minS: 100_000, maxS: null },
  { loadPercent: 140, minS: 1, maxS: 500 },
  { loadPercent: 200, minS: 0.2, maxS: 6 },
  { loadPercent: 400, minS: 0.05, maxS: 0.4 },
];
const AMBIENT_C = 40;
const sizes = [
  { areaMm2: 0.503, ohmPerM20: 0.0371, conductorDiameterMm: 1.0, outerDiameterMm: 1.6 },
  { areaMm2: 1.005, ohmPerM20: 0.0185, conductorDiameterMm: 1.3, outerDiameterMm: 2.0 },
  { areaMm2: 1.979, ohmPerM20: 0.00942, conductorDiameterMm: 1.9, outerDiameterMm: 2.7 },
] as const;
const parts = sizes.map((wire) => {
  const metalJPerMK = heatCapacityJPerMK({ ...wire, insulationShareRatio: 0 }, pvc);
  const path = wireInAirPath(wire, { ambientC: AMBIENT_C, materials: pvc });
  const lump = {
    ohmPerM20: wire.ohmPerM20,
    alphaPerK: pvc.conductor.alphaPerK,
    capacityJPerMK: metalJPerMK,
    loss: lossTable(path, { fromC: AMBIENT_C, toC: 400, stepK: 1 }),
  };
  return { wire, lump, metalJPerMK };
});
const question = (sizeIndex: number, ratingA: number): SurvivalQuestion => ({
  lump: parts[sizeIndex]!.lump,
  metalJPerMK: parts[sizeIndex]!.metalJPerMK,
  startC: 70,
  fuse: { points, reading: "interpolated" },
  ratingA,
  largestFaultA: 40 * ratingA,
  limits: { shortS: 5, shortC: 160, longS: 21_600, longC: 150, foreverC: 125 },
  toleranceK: 0.5,
  cellCountMax: 4000,
});

describe("the bound", () => {
  test("no current anywhere is hotter than the peak stated for its class", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 2 }),
        fc.double({ min: 2, max: 40, noNaN: true }),
        fc.double({ min: 1, max: 40, noNaN: true }),
        fc.constantFrom("interpolated", "staircase"),
        (sizeIndex, ratingA, times, reading) => {
          const asked = { ...question(sizeIndex, ratingA), fuse: { points, reading } } as const;
          const answer = survives(asked);
          const met = peakBehindFuse(asked, ratingA * times);
          const stated = answer[met.duration];
          expect(stated).not.toBeNull();
          expect(met.peakC).toBeLessThanOrEqual((stated?.peakC as number) + 1e-6);
          expect(answer.worst.marginK).toBeLessThanOrEqual(met.marginK + 1e-6);
        },
      ),
      { numRuns: 300 },
    );
  });

  test("it is within the tolerance of something that occurs", () => {
    const asked = question(1, 15);
    const answer = survives(asked);
    expect(answer.settled).toBe(true);
    let hottest = { short: 0, long: 0, forever: 0 };
    for (let n = 0; n <= 20_000; n++) {
      const met = peakBehindFuse(asked, 15 * 40 ** (n / 20_000));
      hottest = { ...hottest, [met.duration]: Math.max(hottest[met.duration], met.peakC) };
    }
    for (const duration of ["short", "long", "forever"] as const) {
      const stated = answer[duration]?.peakC as number;
      expect(stated).toBeGreaterThanOrEqual(hottest[duration] - 1e-6);
      // The sweep has steps of 0.02 %, worth a few hundredths of a kelvin.
      expect(stated - hottest[duration]).toBeLessThan(0.6);
    }
  });

  test("a search cut short still bounds", () => {
    const rough = survives({ ...question(1, 15), cellCountMax: 8 });
    const fine = survives(question(1, 15));
    expect(rough.settled).toBe(false);
    for (const duration of ["short", "long"] as const) {
      expect(rough[duration]?.peakC).toBeGreaterThanOrEqual(
        (fine[duration]?.peakC as number) - 0.5,
      );
    }
  });
});

describe("checked by hand", () => {
  test("for ever: the steady temperature at the first guaranteed gate", () => {
    const answer = survives(question(1, 12));
    const steady = steadyConductorTemperatureC({
      ...sizes[1],
      currentA: 16.8,
      ambientC: AMBIENT_C,
      ceilingC: 1000,
      materials: pvc,
    });
    expect(answer.forever?.currentA).toBeCloseTo(16.8, 9);
    expect(
      steady.ok && Math.abs((answer.forever?.peakC as number) - steady.conductorC),
    ).toBeLessThan(0.02);
  });

  test("short: constant I²t beyond the last gate ends where the adiabatic law says", () => {
    const asked = question(0, 10);
    const beyond = peakBehindFuse(asked, 200);
    const endC = adiabaticEndC({
      ...asked.lump,
      capacityJPerMK: asked.metalJPerMK,
      startC: 70,
      i2tA2s: 40 ** 2 * 0.4,
    });
    expect(Math.abs(beyond.peakC - endC)).toBeLessThan(1e-6);
  });

  test("a fault the fuse cannot feel flows for ever", () => {
    const answer = survives({ ...question(1, 30), largestFaultA: 20 });
    expect(answer.worst).toMatchObject({ currentA: 20, timeS: null, duration: "forever" });
    expect(answer.short).toBeNull();
    expect(answer.long).toBeNull();
  });

  test("a fuse that guarantees nothing leaves the largest fault for ever", () => {
    const fuse = { points: [], reading: "interpolated" } as const;
    const answer = survives({ ...question(2, 5), fuse, largestFaultA: 500 });
    expect(answer.ok).toBe(false);
    expect(answer.worst).toMatchObject({ currentA: 500, overCeiling: true, duration: "forever" });
  });

  test("small fuse on a stout wire passes, big fuse on a thin one fails", () => {
    expect(survives(question(2, 10)).ok).toBe(true);
    expect(survives(question(0, 30)).ok).toBe(false);
  });
});

test("a bigger fuse, a hotter start, a thinner wire and a stronger fault are never safer", () => {
  const ratings = fc.double({ min: 3, max: 30, noNaN: true });
  fc.assert(
    fc.property(ratings, ratings, fc.integer({ min: 0, max: 1 }), (a, b, sizeIndex) => {
      const [small, big] = [Math.min(a, b), Math.max(a, b)];
      const base = { ...question(sizeIndex, small), largestFaultA: 400 };
      // Each bound may lie half a kelvin above what occurs.
      const margin = (asked: SurvivalQuestion): number => survives(asked).worst.marginK;
      const slackK = base.toleranceK + 1e-6;
      expect(margin({ ...base, ratingA: big })).toBeLessThanOrEqual(margin(base) + slackK);
      expect(margin({ ...base, startC: 85 })).toBeLessThanOrEqual(margin(base) + slackK);
      expect(margin({ ...base, largestFaultA: 800 })).toBeLessThanOrEqual(margin(base) + slackK);
      const thick = { ...question(sizeIndex + 1, small), largestFaultA: 400 };
      expect(margin(base)).toBeLessThanOrEqual(margin(thick) + slackK);
    }),
    { numRuns: 60 },
  );
});

test("limits that grow with time, or a table that ends inside them, are a bug of the caller", () => {
  const asked = question(1, 10);
  const wrong = { ...asked.limits, foreverC: 200 };
  expect(() => survives({ ...asked, limits: wrong })).toThrow(/longer time/);
  const hot = { ...asked.limits, shortC: 900 };
  expect(() => survives({ ...asked, limits: hot })).toThrow(/ends at/);
});
