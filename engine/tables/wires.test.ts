import { expect, test } from "vitest";
import { awgAreaMm2, circleAreaMm2, strandAreaMm2 } from "../units/index.ts";
import {
  allTables,
  awgGauges,
  copper,
  figure,
  fuseRatings,
  fuseStandardRatings,
  fuseTimeCurrent,
  lamps,
  terminalCurrents,
  type WiresRow,
  wires,
} from "./index.ts";

/** Sizes whose trade name is more than 5 % from the copper counted, and why. */
const knownOutliers: Readonly<Record<string, string>> = {
  "thin-0.35": "12 strands of 0.20 are 0.377",
  "thin-2.0-30": "the ISO stranding of 2 mm² is 2.121",
  "thin-3.0-45": "the ISO stranding of 3 mm² is 3.181",
  "isothick-2.0": "as thin-2.0-30",
  "isothick-3.0": "as thin-3.0-45",
  "thinx-0.35": "as thin-0.35",
  "thinx-2.0": "as thin-2.0-30",
  "thina-0.35": "7 strands of 0.26 are 0.372",
  "thina-0.5": "19 strands of 0.19 are 0.539",
  "thina-0.75": "19 strands of 0.23 are 0.789",
  "av-0.5": "7 strands of 0.32 are 0.563",
  "av-3": "41 strands of 0.32 are 3.297",
  "av-15": "84 strands of 0.45 are 13.36",
  "av-30": "70 strands of 0.80 are 35.19",
  "avs-0.3": "7 strands of 0.26 are 0.372",
  "avs-0.5": "as av-0.5",
  "avs-3": "as av-3",
  "avss-0.3": "as avs-0.3",
  "avss-0.5": "as av-0.5",
};

test("trade area is within 5 % of the copper counted strand by strand, outliers named", () => {
  const outliers = wires
    .filter((row) => row.nominalMm2 !== null)
    .filter((row) => Math.abs(strandAreaMm2(row) / row.nominalMm2! - 1) >= 0.05)
    .map((row) => row.id);
  expect(outliers.sort()).toEqual(Object.keys(knownOutliers).sort());
});

test("no published maximum resistance is under that of pure copper of its counted area", () => {
  const resistivityOhmM = figure("copper", "resistivity-20", "value").value;
  for (const row of wires) {
    if (row.maxOhmPerKm20 === null) continue;
    const pure = (resistivityOhmM * 1e9) / strandAreaMm2(row);
    const ratio = row.maxOhmPerKm20 / pure;
    // The British list prints its resistances to two or three figures and without allowance.
    const least = row.family === "ordinary British PVC" ? 1.07 : 1.05;
    expect(ratio, row.id).toBeGreaterThan(least);
    expect(ratio, row.id).toBeLessThan(1.25);
  }
});

// A published conductor diameter is printed to 0.1 mm, which is a sixth of seven thin strands.
test("copper fits its circle: N d² / D² of 0.65 to 0.80 from thirty strands, 0.55 to 0.85 below", () => {
  for (const row of wires) {
    const fill = strandAreaMm2(row) / circleAreaMm2(row.conductorDiameterMm);
    const isFine = row.strandCount >= 30;
    expect(fill, row.id).toBeGreaterThan(isFine ? 0.65 : 0.55);
    expect(fill, row.id).toBeLessThan(isFine ? 0.8 : 0.85);
  }
});

test("a wire is thicker over its insulation than its copper, and grows with copper in a family", () => {
  const families = new Map<string, WiresRow[]>();
  for (const row of wires) {
    const odMm = row.odMaxMm ?? row.odNominalMm;
    if (odMm !== null) expect(odMm, row.id).toBeGreaterThan(row.conductorDiameterMm + 0.3);
    families.set(row.family, [...(families.get(row.family) ?? []), row]);
  }
  for (const rows of families.values()) {
    const rated = rows.filter((row) => row.ratedA !== null);
    rated.sort((a, b) => strandAreaMm2(a) - strandAreaMm2(b));
    for (let i = 1; i < rated.length; i++)
      expect(rated[i]!.ratedA, rated[i]!.id).toBeGreaterThanOrEqual(rated[i - 1]!.ratedA!);
  }
});

test("SAE vehicle cable of a gauge holds less than the gauge by definition", () => {
  for (const row of awgGauges) {
    // Half a unit in the last printed place.
    expect(Math.abs(row.areaMm2 - awgAreaMm2(row.gaugeIndex)), row.id).toBeLessThan(6e-5);
    if (row.saeMinMm2 !== null) expect(row.saeMinMm2, row.id).toBeLessThan(row.areaMm2);
  }
});

test("no vehicle cable row holds less than the SAE minimum of its gauge", () => {
  for (const row of awgGauges) {
    const cables = wires.filter((one) => one.tradeName.includes(` ${row.id} AWG`));
    if (row.saeMinMm2 === null) continue;
    // Printed strand diameters are rounded to 0.01 mm: up to 4 % of area in a 0.23 mm strand.
    for (const cable of cables)
      expect(strandAreaMm2(cable), cable.id).toBeGreaterThan(row.saeMinMm2 * 0.96);
  }
});

test("a terminal's current rises with its wire and intermittent is twice continuous", () => {
  for (const series of ["blade-6.3", "blade-2.8"]) {
    const rows = terminalCurrents
      .filter((row) => row.series === series)
      .sort((a, b) => a.areaMm2 - b.areaMm2);
    expect(rows.length).toBeGreaterThan(3);
    for (const [i, row] of rows.entries()) {
      expect(row.intermittentA).toBe(2 * row.continuousA);
      if (i > 0) expect(row.continuousA).toBeGreaterThan(rows[i - 1]!.continuousA);
    }
  }
});

test("fuse gates close as the load grows, and no gate opens after it must have opened", () => {
  const families = new Set(fuseTimeCurrent.map((row) => `${row.family} ${row.ratingFromA}`));
  for (const family of families) {
    const rows = fuseTimeCurrent
      .filter((row) => `${row.family} ${row.ratingFromA}` === family)
      .sort((a, b) => a.loadPercent - b.loadPercent);
    let before = Number.POSITIVE_INFINITY;
    for (const row of rows) {
      if (row.minTimeS !== null && row.maxTimeS !== null)
        expect(row.minTimeS, row.id).toBeLessThan(row.maxTimeS);
      if (row.maxTimeS !== null) expect(row.maxTimeS, row.id).toBeLessThan(before);
      before = row.maxTimeS ?? before;
    }
  }
});

test("a fuse warms: volt drop at rating is 1.4 to 1.8 times rating times cold resistance", () => {
  for (const row of fuseRatings) {
    if (row.coldMohm === null || row.dropAtRatedMv === null) continue;
    const ratio = row.dropAtRatedMv / (row.ratedA * row.coldMohm);
    expect(ratio, row.id).toBeGreaterThan(1.3);
    expect(ratio, row.id).toBeLessThan(1.8);
  }
});

test("melting figures lie between their bounds, and every rated fuse is a standard one", () => {
  for (const row of fuseRatings) {
    expect(
      fuseStandardRatings.some((one) => one.id === row.id),
      row.id,
    ).toBe(true);
    if (row.meltTypicalA2s === null || row.meltLowA2s === null) continue;
    expect(row.meltTypicalA2s, row.id).toBeGreaterThan(row.meltLowA2s);
    expect(row.meltTypicalA2s, row.id).toBeLessThan(row.meltHighA2s!);
  }
});

test("a lamp at its test volts takes no less than its name says", () => {
  for (const row of lamps)
    if (row.testW !== null) expect(row.testW, row.id).toBeGreaterThanOrEqual(row.nominalW);
});

test("copper's temperature coefficient is one over 254.5", () => {
  const tempco = copper.find((row) => row.id === "tempco-20")!.value;
  const below = copper.find((row) => row.id === "zero-resistance-below")!.value;
  expect(tempco * (below + 20)).toBeCloseTo(1, 12);
});

test("what is only remembered is said to be", () => {
  const confidences = new Set<string>();
  for (const { rows } of Object.values(allTables))
    for (const row of rows) confidences.add(row.confidence);
  expect(confidences.has("memory")).toBe(true);
  expect(figure("lamps", "h4-12-dip", "testW").confidence).toBe("memory");
  expect(figure("wires", "battery-40", "ratedA").confidence).toBe("memory");
});
