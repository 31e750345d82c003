import { describe, expect, test } from "vitest";
import {
  ambientFactor,
  bundleFactor,
  filmCoefficient,
  heatMaterials,
  loomMaterials,
  nusseltChurchillChu,
  steadyConductorTemperatureC,
  steadyCurrentA,
} from "../../../engine/heat/index.ts";
import { type HandbookRow, numberIn, readRows } from "./readRows.ts";

const pvc = heatMaterials("pvc");
const CEILING_C = 1000;

describe("Churchill and Chu's equation, against another library's printed examples", () => {
  test.each(readRows("nusselt"))("$id: $expectedRatio", (row) => {
    const prandtlRatio = numberIn(row, "prandtlRatio");
    const rayleighRatio = prandtlRatio * numberIn(row, "grashofRatio");
    const nusselt = nusseltChurchillChu({ rayleighRatio, prandtlRatio });
    expect(Math.abs(nusselt - numberIn(row, "expectedRatio"))).toBeLessThan(
      numberIn(row, "toleranceRatio"),
    );
  });
});

// N05, worked apart from this program: 2.0 mm cylinder at 80 °C in air at 25 °C. One per cent, as printed to three figures.
test("film coefficient and the split of the heat", () => {
  const film = filmCoefficient({ diameterMm: 2, surfaceC: 80, ambientC: 25, air: pvc.air });
  expect(Math.abs(film.rayleighRatio / 28.3 - 1)).toBeLessThan(0.01);
  expect(Math.abs((film.coefficientWPerM2K as number) / 19.0 - 1)).toBeLessThan(0.01);
  const girthM = Math.PI * 0.002;
  expect(Math.abs((girthM * (film.coefficientWPerM2K as number) * 55) / 6.56 - 1)).toBeLessThan(
    0.01,
  );
});

// Air at 45 °C film, worked apart from this program to the figures shown.
test("air at 45 degrees", () => {
  const film = filmCoefficient({ diameterMm: 1, surfaceC: 45, ambientC: 45, air: pvc.air });
  expect(Math.abs(film.prandtlRatio - 0.703)).toBeLessThan(0.0006);
  // No rise, no flow: Nu = 0.60² and h = Nu · k / D with k = 0.02765.
  expect(Math.abs((film.coefficientWPerM2K as number) / (0.36 * 27.65) - 1)).toBeLessThan(0.0005);
});

function wireOf(row: HandbookRow) {
  const conductivityWPerMK = numberIn(row, "conductivityWPerMK");
  return {
    ohmPerM20: numberIn(row, "ohmPerM20"),
    conductorDiameterMm: numberIn(row, "conductorDiameterMm"),
    outerDiameterMm: numberIn(row, "outerDiameterMm"),
    ambientC: numberIn(row, "ambientC"),
    materials: { ...pvc, insulation: { ...pvc.insulation, conductivityWPerMK } },
  };
}

describe("one wire in still air", () => {
  test.each(readRows("singleWires"))("$id by $law: $expectedA A", (row) => {
    const current = steadyCurrentA({ ...wireOf(row), limitC: numberIn(row, "limitC") });
    const currentA = row.law === "morgan" ? current?.morganCurrentA : current?.currentA;
    const offPercent = 100 * ((currentA as number) / numberIn(row, "expectedA") - 1);
    expect(offPercent).toBeGreaterThanOrEqual(numberIn(row, "lowPercent"));
    expect(offPercent).toBeLessThanOrEqual(numberIn(row, "highPercent"));
  });

  test.each(readRows("singleWires"))("$id: temperature and current undo each other", (row) => {
    const limitC = numberIn(row, "limitC");
    const current = steadyCurrentA({ ...wireOf(row), limitC });
    const state = steadyConductorTemperatureC({
      ...wireOf(row),
      currentA: current?.currentA as number,
      ceilingC: CEILING_C,
    });
    expect(state.ok && Math.abs(state.conductorC - limitC)).toBeLessThan(1e-6);
  });
});

describe("equal wires in a loom, all loaded", () => {
  const loom = loomMaterials();
  const wire = { ohmPerM20: 0.0185, conductorDiameterMm: 1.3, outerDiameterMm: 2 };
  test.each(readRows("bunched"))("$id: $wireCount wires, $expectedRatio", (row) => {
    const wireCount = numberIn(row, "wireCount");
    const factor = bundleFactor({
      wire,
      wireCount,
      loadedCount: wireCount,
      limitC: numberIn(row, "limitC"),
      ambientC: numberIn(row, "ambientC"),
      materials: pvc,
      bundleDiameterMm: null,
      packingRatio: loom.packingRatio,
      conductivityWPerMK: loom.conductivityWPerMK,
      sleeve: null,
      ceilingC: CEILING_C,
    });
    const offPercent = Math.abs(100 * (factor / numberIn(row, "expectedRatio") - 1));
    expect(offPercent).toBeLessThanOrEqual(numberIn(row, "tolerancePercent"));
  });
});

test.each(readRows("ambientFactors"))("ambient factor $id: $expectedRatio", (row) => {
  const factor = ambientFactor({
    limitC: numberIn(row, "limitC"),
    ambientC: numberIn(row, "ambientC"),
    ratedAmbientC: numberIn(row, "ratedAmbientC"),
  });
  expect(Math.abs(factor - numberIn(row, "expectedRatio"))).toBeLessThanOrEqual(
    numberIn(row, "toleranceRatio"),
  );
});
