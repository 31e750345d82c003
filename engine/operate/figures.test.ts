import { describe, expect, test } from "vitest";
import type { PartOf } from "../job/index.ts";
import { lawCurrentA } from "../network/index.ts";
import { batterySource } from "./batterySource.ts";
import { fuseBand, fuseOpensS } from "./fuseBand.ts";
import { filamentLaw, lampAnchor, ledLaw } from "./lampLaw.ts";

const stated = (value: number) => ({ value, basis: "stated" as const });

describe("battery", () => {
  const battery: PartOf<"battery"> = {
    id: "B",
    name: "b",
    kind: "battery",
    pins: [],
    positivePin: "+",
    negativePin: "-",
    chemistry: "flooded",
    nominalV: 12,
    capacityAh: stated(14),
  };
  test("volts by charge are the open-circuit table's", () => {
    // Flooded 100 / 50 / 25 %: 12.7 / 12.2 / 12.0 V, two vehicle-battery tables that agree.
    expect(batterySource(battery, "full", 25).emfV).toBeCloseTo(12.7, 12);
    expect(batterySource(battery, "half", 25).emfV).toBeCloseTo(12.2, 12);
    expect(batterySource(battery, "weak", 25).emfV).toBeCloseTo(12.0, 12);
    expect(batterySource({ ...battery, nominalV: 6 }, "full", 25).emfV).toBeCloseTo(6.35, 12);
    expect(batterySource({ ...battery, restV: stated(12.6) }, "half", 25).emfV).toBeCloseTo(
      12.1,
      12,
    );
  });
  test("resistance: as stated, from cold-cranking amperes, or from capacity", () => {
    expect(batterySource({ ...battery, internalOhm: stated(0.02) }, "full", 25).internalOhm).toBe(
      0.02,
    );
    // 5.5 V / 200 A at -18 C, of which 0.40 to 0.50 warm: 11.0 to 13.8 mohm.
    const byCca = batterySource({ ...battery, coldCrankingA: stated(200) }, "full", 25).internalOhm;
    expect(byCca).toBeGreaterThan(0.011);
    expect(byCca).toBeLessThan(0.0138);
    // 0.32 ohm Ah over 14 Ah.
    expect(batterySource(battery, "full", 25).internalOhm).toBeCloseTo(0.32 / 14, 12);
  });
  test("cold takes power away: 40 % is left at -18 C", () => {
    const [warm, cold] = [25, -18].map((c) => batterySource(battery, "full", c).internalOhm);
    // Technical manual table 3: 100 % at 27 C, 40 % at -18 C; at 25 C the straight line gives 97.4 %.
    expect(cold! / warm!).toBeCloseTo(0.974 / 0.4, 2);
    expect(batterySource(battery, { emfV: 11, internalOhm: 0.1 }, -18)).toEqual({
      label: "11 V",
      emfV: 11,
      internalOhm: 0.1,
    });
  });
});

describe("lamp", () => {
  const filament = { pins: ["A", "E"] as [string, string], ratedV: 12, ratedW: 21 };
  test("is anchored at the job's test point, the table's, or nominal, and says which", () => {
    expect(lampAnchor(filament)).toEqual({ v: 12, powerW: 21, from: "nominal" });
    const tested = { ...filament, testV: 13.5, testW: 25 };
    expect(lampAnchor(tested)).toEqual({ v: 13.5, powerW: 25, from: "test point of the job" });
    // Directive 97/24/EC, sheet P21/5W: 26.5 W at most at 13.5 V.
    expect(lampAnchor({ ...filament, category: "p21-5w-12-brake" })).toEqual({
      v: 13.5,
      powerW: 26.5,
      from: "test point of the table",
    });
  });
  test("from 14 to 12 V a 4 A lamp goes to 3.67 A by the published 0.55 power", () => {
    const law = filamentLaw({ ...filament, testV: 14, testW: 56 }, 0.55);
    expect(lawCurrentA(law, 14)).toBeCloseTo(4, 4);
    expect(lawCurrentA(law, 12)).toBeCloseTo(3.67, 2);
    // Smooth at no volts: the cold filament carries twelve times the rated conductance at eps 0.004.
    expect(lawCurrentA(law, 1e-6) / 1e-6 / (4 / 14)).toBeCloseTo(0.004 ** -0.45, 3);
  });
  test("an LED takes its rated current at its rated volts and none the wrong way round", () => {
    const law = ledLaw({ ...filament, ratedW: 3 });
    expect(lawCurrentA(law, 12)).toBeCloseTo(0.25, 9);
    expect(Math.abs(lawCurrentA(law, -12))).toBeLessThan(1e-9);
    expect(lawCurrentA(law, 6)).toBeLessThan(0.01);
  });
});

describe("fuse", () => {
  const fuse = (more: Partial<PartOf<"fuse">> = {}): PartOf<"fuse"> => ({
    id: "F",
    name: "f",
    kind: "fuse",
    pins: [],
    ratingA: 10,
    marking: "continuous",
    type: "blade",
    ...more,
  });
  test("opens within its published gates", () => {
    // ATO blade sheets: 135 % 0.75 to 600 s, 200 % 0.15 to 5 s, 600 % at most 0.1 s; 110 % carried 100 h.
    expect(fuseOpensS(fuse(), 13.5)).toEqual({ minS: 0.75, maxS: 600 });
    expect(fuseOpensS(fuse(), -20)).toEqual({ minS: 0.15, maxS: 5 });
    expect(fuseOpensS(fuse(), 60).maxS).toBeCloseTo(0.1, 12);
    expect(fuseOpensS(fuse(), 10)).toEqual({ minS: null, maxS: null });
  });
  test("a number nobody can explain is read both ways", () => {
    const both = fuseBand(fuse({ ratingA: 35, marking: "unknown", type: "glass-british" }));
    // Old chart: 35 blow is 25 continuous; half is 17.5; a printed label says 35 blow, 17 continuous: the lowest.
    expect(both).toMatchObject({ smallestA: 17, largestA: 35, family: "glass" });
    expect(fuseBand(fuse({ ratingA: 35, marking: "blow", type: "glass-british" }))).toMatchObject({
      smallestA: 17,
      largestA: 17,
    });
    expect(fuseBand(fuse({ ratingA: 40 })).family).toBe("blade-large");
  });
});
