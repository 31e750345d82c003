import { expect, test } from "vitest";
import {
  ambientFactor,
  heatMaterials,
  steadyConductorTemperatureC,
  steadyCurrentA,
} from "../../../engine/heat/index.ts";
import { surfaceLoss } from "../../../engine/heat/thermalPath.ts";
import { allTables, figure } from "../../../engine/tables/index.ts";

/** Worked examples of the aircraft maintenance handbook AC 43.13-1B, chapter 11, and a split of heat worked apart from this program. */
const pvc = heatMaterials("pvc");

// N05, worked apart: 2.0 mm cylinder at 80 °C in air at 25 °C, emissivity 0.9. One per cent, as printed to three figures.
test("radiation beside convection: 2.45 W/m and 6.56 W/m", () => {
  const path = {
    outerDiameterMm: 2,
    emissivityRatio: 0.9,
    ambientC: 25,
    air: pvc.air,
    sharedKMPerW: 0,
    ownKMPerW: 0,
    otherKMPerW: 0,
    otherHeatWPerM: 0,
  };
  const loss = surfaceLoss(path, 80);
  expect(Math.abs(loss.radiationWPerM / 2.45 - 1)).toBeLessThan(0.01);
  expect(Math.abs(loss.convectionWPerM / 6.56 - 1)).toBeLessThan(0.01);
  expect(loss.totalWPerM).toBeCloseTo(loss.convectionWPerM + loss.radiationWPerM, 12);
});

// T01, paragraph 11-66d: T2 = T1 + (TR − T1) √(I2 / Imax) = 181.6 °C for 20 A of 26 A between 50 and 200 °C.
test("the handbook's quick estimate lies over the heat balance, which follows the square of the current", () => {
  const estimateC = 50 + (200 - 50) * Math.sqrt(20 / 26);
  expect(estimateC).toBeCloseTo(181.6, 1);
  const squareC = 50 + (200 - 50) * (20 / 26) ** 2;
  expect(squareC).toBeCloseTo(138.8, 1);
  // Any wire will do: AWG 14 as tables/wires has it nearest, 2 mm².
  const wire = { ohmPerM20: 0.00942, conductorDiameterMm: 1.85, outerDiameterMm: 2.8 };
  const place = { ambientC: 50, materials: pvc };
  const most = steadyCurrentA({ ...wire, ...place, limitC: 200 })!;
  const state = steadyConductorTemperatureC({
    ...wire,
    ...place,
    currentA: (most.currentA * 20) / 26,
    ceilingC: 1000,
  });
  if (state === null || !("conductorC" in state)) throw new Error("it has a temperature");
  // Colder copper resists less, cooler surfaces shed less: the two nearly cancel, and both are far under the estimate.
  expect(Math.abs(state.conductorC - squareC)).toBeLessThan(10);
  expect(state.conductorC).toBeLessThan(estimateC - 30);
});

// T04, paragraph 11-69 example 2: twelve No. 12 wires of the 200 °C class, all loaded: 68 A alone at 25 °C, 61 A at 60 °C, factor 0.43.
test("twelve wires all loaded: 29.2 A each at 25 °C, 26.2 A at 60 °C", () => {
  const factor = figure("bundleFactors", "12-wires", "loaded100Ratio").value;
  expect(Math.abs(68 * factor - 29.2)).toBeLessThan(0.2);
  expect(Math.abs(12 * 68 * factor - 350.4)).toBeLessThan(1);
  const at60A = 68 * ambientFactor({ limitC: 200, ambientC: 60, ratedAmbientC: 25 });
  expect(Math.abs(at60A - 61)).toBeLessThan(0.5);
  expect(Math.abs(at60A * factor - 26.2)).toBeLessThan(0.2);
  // At 20 000 ft the handbook leaves 0.91 of it, 23.8 A: thin air is not this program's business.
});

// V17, example 2: a wire allowed 15.5 ft at 20 °C may be 9.5 ft long at 182 °C: L2 = 254.5 L1 / (234.5 + T2).
test("a hot wire may be shorter: 15.5 ft becomes 9.5 ft at 182 °C", () => {
  const { alphaPerK } = pvc.conductor;
  const byTable = 15.5 / (1 + alphaPerK * (182 - 20));
  expect(byTable).toBeCloseTo((254.5 * 15.5) / (234.5 + 182), 3);
  expect(Math.abs(byTable - 9.5)).toBeLessThan(0.05);
});

// V16, marine standard formula CM = K I L / E with K = 10.75: 5972 circular mils for 10 A over 20 ft and 0.36 V.
test("circular mils: AWG 12 by its own area, AWG 10 by the least area of vehicle cable of that gauge", () => {
  const neededCircularMils = (10.75 * 10 * 20) / 0.36;
  expect(Math.abs(neededCircularMils - 5972)).toBeLessThan(1);
  const thinnest = (areaOf: (row: (typeof allTables.awgGauges.rows)[number]) => number | null) =>
    allTables.awgGauges.rows
      .filter((row) => (areaOf(row) ?? 0) >= neededCircularMils)
      .toSorted((a, b) => b.gaugeIndex - a.gaugeIndex)[0]!.id;
  expect(thinnest((row) => row.areaCircularMils)).toBe("12");
  // 12 AWG is 5833 circular mils there, and 11 is not made.
  const madeGauges = (row: (typeof allTables.awgGauges.rows)[number]): number | null =>
    row.saeMinCircularMils;
  expect(thinnest(madeGauges)).toBe("10");
  // K is the resistance of a foot of one circular mil: copper at about 30 °C.
  const { resistivityOhmM, alphaPerK } = pvc.conductor;
  const circularMilM2 = (Math.PI / 4) * 25.4e-6 ** 2;
  const kAt = (temperatureC: number): number =>
    (resistivityOhmM * (1 + alphaPerK * (temperatureC - 20)) * 0.3048) / circularMilM2;
  expect(kAt(20)).toBeLessThan(10.75);
  expect(kAt(30)).toBeCloseTo(10.75, 0);
});
