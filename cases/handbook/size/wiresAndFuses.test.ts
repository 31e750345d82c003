import { describe, expect, test } from "vitest";
import { ambientFactor } from "../../../engine/heat/index.ts";
import {
  bundleTableRatio,
  chooseFuse,
  lampInrush,
  wireAnswer,
  wireDropOf,
} from "../../../engine/size/index.ts";
import { boatAmpacity, boatEngineSpaceFactors, fuseRatings } from "../../../engine/tables/index.ts";
import { MM_PER_FOOT } from "../../../engine/units/index.ts";
import { numberIn, readRows } from "../heat/readRows.ts";

const METRES_PER_FOOT = MM_PER_FOOT / 1000;

describe("volt drop as worked in print", () => {
  const rows = readRows("../size/voltDrops");
  test.each(rows)("$id: $expectedV V ($source)", (row) => {
    const inFeet = row.lengthFt !== "-";
    const lengthM = inFeet ? numberIn(row, "lengthFt") * METRES_PER_FOOT : numberIn(row, "lengthM");
    const ohmPerM = inFeet
      ? numberIn(row, "ohmPerThousandFt") / (1000 * METRES_PER_FOOT)
      : numberIn(row, "ohmPerM");
    const ampsA = numberIn(row, "currentA");
    const found = wireDropOf(ohmPerM, { ampsA, lengthM, oneWay: true });
    const offV = Math.abs(found!.drop.v - numberIn(row, "expectedV"));
    expect(offV).toBeLessThanOrEqual(numberIn(row, "toleranceV"));
  });
});

// An aircraft handbook's chain: 47 A in free air, 0.91 for height, 0.60 for 8 wires at 60 %: 25.7 A. The curve reads
// 0.595 there, half a unit of the printed factor: 0.3 A.
test("a handbook's derating chain", () => {
  const { ratio } = bundleTableRatio({ wireCount: 5, loadedCount: 3 });
  const eight = bundleTableRatio({ wireCount: 8, loadedCount: 4.8 });
  expect(Math.abs(47 * 0.91 * eight.ratio - 25.7)).toBeLessThan(0.3);
  expect(ratio).toBeGreaterThan(eight.ratio);
});

// United States boat law: 14 AWG at 105 °C carries 35 A, in an engine space (50 °C) 0.85 of it. The law's factors for
// 60 to 125 °C follow the square-root rule within 0.01; for 200 °C it takes off nothing.
test("the boat law's engine space factors follow the ambient rule", () => {
  expect(boatAmpacity.find(({ id }) => id === "14")?.at105A).toBe(35);
  for (const { insulationC, engineSpaceRatio } of boatEngineSpaceFactors) {
    if (insulationC > 125) continue;
    const factor = ambientFactor({ limitC: insulationC, ambientC: 50, ratedAmbientC: 30 });
    expect(Math.abs(factor - engineSpaceRatio)).toBeLessThanOrEqual(0.01);
  }
});

// A fuse guide's pulse rule with the 600 % gate as melting bound: 22 % of 0.72 In² is 4.0, 8.9, 15.8 and 35.6 A²s for
// 5, 7.5, 10 and 15 A; a 60/55 W headlamp of 10 to 13 A²s wants 10 A or more, a 21 W lamp of 1.5 A²s is happy on 5 A.
describe("surges of lamps", () => {
  test.each([
    [5, 4.0],
    [7.5, 8.9],
    [10, 15.8],
    [15, 35.6],
  ])("a %f A blade ages above %f A²s", (ratedA, i2tA2s) => {
    const low = fuseRatings.find(
      (row) => row.type === "blade" && row.ratedA === ratedA,
    )?.meltLowA2s;
    expect(Math.abs(0.22 * (low ?? 0) - i2tA2s)).toBeLessThan(0.06);
  });

  test("headlamp 10 A, brake lamp 5 A", () => {
    const headlamp = chooseFuse({ loadA: 5, wireA: 16.5, inrush: lampInrush({ runningA: 5.5 }) });
    expect(headlamp.suggestedA).toBe(10);
    const brake = lampInrush({ runningA: 21 / 12 });
    expect(brake.i2tA2s).toBeGreaterThan(1);
    expect(brake.i2tA2s).toBeLessThan(2);
    expect(chooseFuse({ loadA: 1.75, wireA: 11, inrush: brake, standardA: [5] }).suggestedA).toBe(
      5,
    );
  });
});

// Common practice: 24 W draws 2 A at 12 V and 4 A at 6 V; for the same per cent the area must be four times.
test("6 V and 12 V: four times the copper for the same share of the volts", () => {
  const percentOf = (volts: number, areaMm2: number): number => {
    const found = wireAnswer(`${areaMm2} mm2 thin`, { ampsA: 24 / volts, volts, lengthM: 2 });
    return found.ok ? (found.answer.drop?.percent ?? Number.NaN) : Number.NaN;
  };
  expect(percentOf(6, 1) / percentOf(12, 1)).toBeCloseTo(4, 9);
  // Stocked 4 mm² holds 3.94 times the copper of stocked 1 mm², and their resistance limits are 18.5 and 4.71 Ω/km.
  expect(percentOf(6, 4) / percentOf(12, 1)).toBeCloseTo((4 * 4.71) / 18.5, 9);
});
