import { describe, expect, test } from "vitest";
import {
  adiabaticAreaMm2,
  adiabaticEndC,
  adiabaticK,
  adiabaticTimeS,
  adiabaticWithstandA2s,
  heatMaterials,
  steadyCurrentA,
} from "../../../engine/heat/index.ts";
import { figure } from "../../../engine/tables/index.ts";
import { numberIn, readRows } from "./readRows.ts";

const metal = {
  constantAS05PerMm2: figure("copper", "adiabatic-226", "value").value,
  betaC: figure("copper", "zero-resistance-below", "value").value,
};
const MM_PER_INCH = 25.4;
/** One circular mil is the area of a circle one thousandth of an inch across; exact. */
const MM2_PER_CIRCULAR_MIL = (Math.PI / 4) * (MM_PER_INCH / 1000) ** 2;

/** I = A · √( log10(1 + (Tm − Ta) / (234 + Ta)) / (33 · t) ), A in circular mils: a second form of the same law. */
function onderdonkA(at: { circularMils: number; timeS: number; startC: number; endC: number }) {
  const ratio = 1 + (at.endC - at.startC) / (234 + at.startC);
  return at.circularMils * Math.sqrt(Math.log10(ratio) / (33 * at.timeS));
}

/** I = 80 · d^1.5, d in mm: what melts bare copper in open air. A melting current, so never a rating. */
const preeceA = (diameterMm: number): number =>
  figure("copper", "preece-mm", "value").value * diameterMm ** 1.5;

test.each(readRows("adiabaticK"))("k $id, $startC to $endC °C: $expectedAS05PerMm2", (row) => {
  const k = adiabaticK({ ...metal, startC: numberIn(row, "startC"), endC: numberIn(row, "endC") });
  expect(Math.abs(k - numberIn(row, "expectedAS05PerMm2"))).toBeLessThanOrEqual(
    numberIn(row, "toleranceAS05PerMm2"),
  );
});

test.each(readRows("adiabaticSizes"))("size $id: $expectedMm2 mm²", (row) => {
  const areaMm2 = adiabaticAreaMm2({
    ...metal,
    startC: numberIn(row, "startC"),
    endC: numberIn(row, "endC"),
    currentA: numberIn(row, "currentA"),
    timeS: numberIn(row, "timeS"),
  });
  expect(Math.abs(areaMm2 - numberIn(row, "expectedMm2"))).toBeLessThanOrEqual(
    numberIn(row, "toleranceMm2"),
  );
});

// K11, worked apart: 1 mm², 100 A, PVC 70 → 160 °C takes (115/100)² = 1.32 s; printed to a hundredth.
test("time to the limit", () => {
  const timeS = adiabaticTimeS({ ...metal, startC: 70, endC: 160, areaMm2: 1, currentA: 100 });
  expect(Math.abs(timeS - 1.32)).toBeLessThanOrEqual(0.01);
});

describe("melting currents", () => {
  const rows = readRows("fusing");
  test.each(rows.filter((row) => row.law === "onderdonk"))("$id: the law's other form", (row) => {
    const at = {
      circularMils: numberIn(row, "circularMils"),
      timeS: numberIn(row, "timeS"),
      startC: numberIn(row, "startC"),
      endC: numberIn(row, "endC"),
    };
    const offPercent = 100 * Math.abs(onderdonkA(at) / numberIn(row, "expectedA") - 1);
    expect(offPercent).toBeLessThanOrEqual(numberIn(row, "tolerancePercent"));
    const areaMm2 = at.circularMils * MM2_PER_CIRCULAR_MIL;
    const oursA = Math.sqrt(adiabaticWithstandA2s({ ...metal, ...at, areaMm2 }) / at.timeS);
    // Onderdonk's 234 and 33 against 234.5 and 226: 0.3 % as worked out for K14, plus the rounding of the row.
    expect(100 * Math.abs(oursA / numberIn(row, "expectedA") - 1)).toBeLessThanOrEqual(0.42);
  });

  // K14, worked apart with both forms: 288.7 A against 288.1 A for 1 mm², 1 s, 25 → 1083 °C.
  test("the two forms agree within 0.3 %", () => {
    const melt = { startC: 25, endC: 1083 };
    const oursA = Math.sqrt(adiabaticWithstandA2s({ ...metal, ...melt, areaMm2: 1 }));
    const theirsA = onderdonkA({ ...melt, timeS: 1, circularMils: 1 / MM2_PER_CIRCULAR_MIL });
    expect(Math.abs(oursA - 288.1)).toBeLessThan(0.05);
    expect(Math.abs(theirsA - 288.7)).toBeLessThan(0.05);
    expect(Math.abs(oursA / theirsA - 1)).toBeLessThan(0.003);
  });

  // A widely repeated answer of 178 A for the K12 wire comes from 234 − Ta in place of 234 + Ta: it must not be ours.
  test("a misprinted 178 A is not reproduced", () => {
    const wrongA = 2581 * Math.sqrt(Math.log10(1 + (1083 - 25) / (234 - 25)) / (33 * 5));
    expect(Math.abs(wrongA - 178)).toBeLessThan(1.5);
    const areaMm2 = 2581 * MM2_PER_CIRCULAR_MIL;
    const oursA = Math.sqrt(
      adiabaticWithstandA2s({ ...metal, startC: 25, endC: 1083, areaMm2 }) / 5,
    );
    expect(Math.abs(oursA - 178)).toBeGreaterThan(7);
  });

  test.each(rows.filter((row) => row.law === "preece"))("$id: $expectedA A melts it", (row) => {
    const meltA = preeceA(numberIn(row, "diameterInch") * MM_PER_INCH);
    const offPercent = 100 * Math.abs(meltA / numberIn(row, "expectedA") - 1);
    expect(offPercent).toBeLessThanOrEqual(numberIn(row, "tolerancePercent"));
  });

  // The insulation gives way long before: 160 °C in still air comes at 28-34 % of the melting current, worked apart for
  // 1, 2 and 3 mm². The band below is that, widened by a point for the choice of ambient (25 °C here).
  test.each([
    {
      id: "1 mm²",
      areaMm2: 1.005,
      ohmPerM20: 0.0185,
      conductorDiameterMm: 1.3,
      outerDiameterMm: 2,
    },
    {
      id: "2 mm²",
      areaMm2: 1.979,
      ohmPerM20: 0.00942,
      conductorDiameterMm: 1.9,
      outerDiameterMm: 2.7,
    },
    {
      id: "3 mm²",
      areaMm2: 3.11,
      ohmPerM20: 0.00615,
      conductorDiameterMm: 2.4,
      outerDiameterMm: 3.3,
    },
  ])("$id: melting is no rating", (wire) => {
    const meltA = preeceA(Math.sqrt((4 * wire.areaMm2) / Math.PI));
    const heldA = steadyCurrentA({
      ...wire,
      limitC: 160,
      ambientC: 25,
      materials: heatMaterials("pvc"),
    })?.currentA as number;
    expect(heldA / meltA).toBeGreaterThan(0.27);
    expect(heldA / meltA).toBeLessThan(0.35);
  });
});

// Worked apart by stepping the heat balance: 40 → 160 °C without loss takes 1.8474 s (0.5 mm² at 50 A), 29.559 s (2 mm²
// at 50 A), 14.831 s (8.5 mm² at 300 A). Tolerance 0.1 %: the steps were 0.2 K.
test.each([
  { areaMm2: 0.5, currentA: 50, timeS: 1.8474 },
  { areaMm2: 2, currentA: 50, timeS: 29.559 },
  { areaMm2: 8.5, currentA: 300, timeS: 14.831 },
])("$areaMm2 mm² at $currentA A without loss", ({ areaMm2, currentA, timeS }) => {
  const { conductor } = heatMaterials("pvc");
  const endC = adiabaticEndC({
    ohmPerM20: conductor.resistivityOhmM / (areaMm2 * 1e-6),
    alphaPerK: conductor.alphaPerK,
    capacityJPerMK: conductor.volumetricHeatJPerM3K * areaMm2 * 1e-6,
    startC: 40,
    i2tA2s: currentA ** 2 * timeS,
  });
  expect(Math.abs(endC - 160) / 120).toBeLessThan(0.001);
  const printedS = adiabaticTimeS({ ...metal, startC: 40, endC: 160, areaMm2, currentA });
  expect(Math.abs(printedS / timeS - 1)).toBeLessThan(0.005);
});
