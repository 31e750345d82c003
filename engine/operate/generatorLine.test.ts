import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lawCurrentA } from "../network/index.ts";
import {
  fitGeneratorLine,
  generatorCurrentA,
  openCircuitV,
  shortedCurrentA,
} from "./generatorLine.ts";
import { kneeV, regulatedCurve } from "./regulatedCurve.ts";

describe("a generator's line", () => {
  test("goes through a published wound-field unit's three points within 5 %", () => {
    // Marine engine technical data p. 83: 16 / 41 / 48 A hot at 1300 / 2500 / 5000 rpm, 13.5 V. Three points, two unknowns.
    const points = [
      { speedRpm: 1300, currentA: 16, atV: 13.5 },
      { speedRpm: 2500, currentA: 41, atV: 13.5 },
      { speedRpm: 5000, currentA: 48, atV: 13.5 },
    ];
    const line = fitGeneratorLine(points, { windingOhm: 0, diodeV: 1.4 })!;
    for (const { speedRpm, currentA, atV } of points) {
      const sharePercent = 100 * (generatorCurrentA(line, speedRpm, atV) / currentA - 1);
      expect(Math.abs(sharePercent)).toBeLessThan(5);
    }
    // With small resistance I = (k/c) sqrt(1 - (n0/n)^2), n0 the cut-in speed.
    const ceilingA = line.emfPerRpmRatio / line.reactancePerRpmRatio;
    const cutInRpm = (13.5 + 1.4) / line.emfPerRpmRatio;
    const closedA = ceilingA * Math.sqrt(1 - (cutInRpm / 2500) ** 2);
    expect(generatorCurrentA(line, 2500, 13.5)).toBeCloseTo(closedA, 9);
  });

  test("goes exactly through two points, obeys its ellipse, and its current falls with the volts", () => {
    const point = {
      speedRpm: fc.integer({ min: 800, max: 2500 }),
      currentA: fc.double({ min: 1, max: 10, noNaN: true }),
    };
    fc.assert(
      fc.property(
        fc.record(point),
        fc.record({
          moreRpm: fc.integer({ min: 1000, max: 5000 }),
          moreA: fc.double({ min: 2, max: 20, noNaN: true }),
        }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        ({ speedRpm, currentA }, { moreRpm, moreA }, windingOhm) => {
          const points = [
            { speedRpm, currentA, atV: 13 },
            { speedRpm: speedRpm + moreRpm, currentA: currentA + moreA, atV: 13 },
          ];
          const line = fitGeneratorLine(points, { windingOhm, diodeV: 1.4 });
          // Some pairs ask for more than any such machine gives; then there is no line.
          fc.pre(line !== null);
          for (const one of points) {
            expect(generatorCurrentA(line, one.speedRpm, one.atV)).toBeCloseTo(one.currentA, 6);
          }
          const I = generatorCurrentA(line, speedRpm, 5);
          const E = line.emfPerRpmRatio * speedRpm;
          const X = line.reactancePerRpmRatio * speedRpm;
          expect((5 + 1.4 + windingOhm * I) ** 2 + (X * I) ** 2).toBeCloseTo(E * E, 6);
          expect(generatorCurrentA(line, speedRpm, 6)).toBeLessThan(I);
          expect(shortedCurrentA(line, speedRpm)).toBeGreaterThan(I);
          expect(generatorCurrentA(line, speedRpm, openCircuitV(line, speedRpm))).toBe(0);
        },
      ),
    );
  });

  test("is refused where the points fix none", () => {
    const at = (speedRpm: number, currentA: number) => ({ speedRpm, currentA, atV: 13 });
    const fit = (...points: ReturnType<typeof at>[]) =>
      fitGeneratorLine(points, { windingOhm: 0, diodeV: 0 });
    expect(fit()).toBeNull();
    expect(fit(at(3000, 10))).toBeNull();
    expect(fit(at(3000, 10), at(3000, 10))).toBeNull();
    expect(fit(at(2000, 10), at(5000, 8))).toBeNull();
  });
});

describe("with a regulator", () => {
  const line = fitGeneratorLine(
    [
      { speedRpm: 1800, currentA: 6.5, atV: 13.8 },
      { speedRpm: 5000, currentA: 14.5, atV: 13.8 },
    ],
    { windingOhm: 0.4, diodeV: 1.4 },
  )!;

  test("it gives what the line gives below the knee and nothing at the set volts", () => {
    const curve = regulatedCurve(line, 5000, 14.4)!;
    for (const v of [0, 5, 10, 13.5]) {
      // Thirty-two straight pieces along the ellipse lie within a thousandth of it this far from its end.
      expect(-lawCurrentA(curve, v) / generatorCurrentA(line, 5000, v)).toBeCloseTo(1, 3);
    }
    expect(lawCurrentA(curve, 14.4)).toBeCloseTo(0, 12);
    expect(lawCurrentA(curve, kneeV(14.4))).toBeCloseTo(
      -generatorCurrentA(line, 5000, kneeV(14.4)),
      9,
    );
    expect(lawCurrentA(curve, 20)).toBeGreaterThan(0);
    expect(lawCurrentA(curve, 20)).toBeLessThan(1e-4);
  });

  test("it gives nothing standing still, and stops at its own open volts when they are under the set volts", () => {
    expect(regulatedCurve(line, 0, 14.4)).toBeNull();
    const idleV = openCircuitV(line, 1100);
    expect(idleV).toBeLessThan(14.4);
    expect(lawCurrentA(regulatedCurve(line, 1100, 14.4)!, idleV)).toBeCloseTo(0, 12);
  });
});
