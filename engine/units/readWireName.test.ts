import fc from "fast-check";
import { expect, test } from "vitest";
import { readWireName, type WireName } from "./index.ts";

const strands = (strandCount: number, strandDiameterMm: number): WireName => ({
  kind: "strands",
  strandCount,
  strandDiameterMm,
});

test.each<[string, WireName]>([
  ["32/0.20", strands(32, 0.2)],
  ["32x0.20", strands(32, 0.2)],
  ["32 \u00d7 0,20 mm", strands(32, 0.2)],
  ["14/.30", strands(14, 0.3)],
  ["14/.012", strands(14, 0.012 * 25.4)],
  ["14/.012in", strands(14, 0.012 * 25.4)],
  ['14/0.012"', strands(14, 0.012 * 25.4)],
  ["7/.064 in", strands(7, 0.064 * 25.4)],
  ["35 strands of 0.30", strands(35, 0.3)],
  ["23/36", { kind: "strands-swg", strandCount: 23, gauge: "36" }],
  ["1 mm2", { kind: "area", areaMm2: 1 }],
  ["1mm\u00b2", { kind: "area", areaMm2: 1 }],
  ["1.0 sq mm", { kind: "area", areaMm2: 1 }],
  ["1,5 mm^2 cable", { kind: "area", areaMm2: 1.5 }],
  ["16 AWG", { kind: "awg", gaugeIndex: 16, isVehicleCable: false }],
  ["AWG 2/0", { kind: "awg", gaugeIndex: -1, isVehicleCable: false }],
  ["4/0", { kind: "awg", gaugeIndex: -3, isVehicleCable: false }],
  ["16 gauge", { kind: "gauge", gaugeIndex: 16, isVehicleCable: false }],
  ["16 gauge car wire", { kind: "gauge", gaugeIndex: 16, isVehicleCable: true }],
  ["18 SWG", { kind: "swg", gauge: "18" }],
  ["4 mm auto", { kind: "auto", sizeMm: 4 }],
  ["4mm auto cable", { kind: "auto", sizeMm: 4 }],
  ["copper 1.2 mm", { kind: "copper", diameterMm: 1.2 }],
  ["\u00f81.2 mm copper", { kind: "copper", diameterMm: 1.2 }],
  ["over insulation 2.4 mm", { kind: "insulation", diameterMm: 2.4 }],
  ["2.4 mm od", { kind: "insulation", diameterMm: 2.4 }],
  ["GXL 16", { kind: "make", family: "gxl", size: "16" }],
  ["16 AWG GXL", { kind: "make", family: "gxl", size: "16" }],
  ["AV 0.85", { kind: "make", family: "av", size: "0.85" }],
  ["AVS0,5f", { kind: "make", family: "avs", size: "0.5f" }],
  ["JASO", { kind: "make", family: "jaso", size: null }],
])("%s", (text, name) => {
  const reading = readWireName(text);
  expect(reading.ok && reading.name).toEqual(name);
});

test.each([
  ["2 mm", "area-or-diameter"],
  ["1.5", "bare-number"],
  ["7/0.075", "strand-unit"],
  ["0/0.20", "strand-bounds"],
  ["32/9", "strand-bounds"],
  ["9999 mm2", "size-bounds"],
  ["-1 mm2", "size-bounds"],
  ["60 AWG", "size-bounds"],
  ["=1+1", "unread"],
  ["<b>32/0.20</b>", "unread"],
  ["32/0.20; 1 mm2", "unread"],
  ["3\u202e2/0.20", "unread"],
  ["", "unread"],
  ["9".repeat(100_000), "too-long"],
])("%.20s is refused as %s", (text, reason) => {
  const reading = readWireName(text);
  expect(reading.ok ? "read" : reading.reason).toBe(reason);
});

test("the wall beside a size is kept and changes nothing else", () => {
  expect(readWireName("1 mm2 thin wall")).toEqual({
    ok: true,
    name: { kind: "area", areaMm2: 1 },
    wall: "thin",
  });
  expect(readWireName("16 mm2 battery cable")).toMatchObject({ wall: "battery" });
});

test("any separator and any decimal sign give the same strands", () => {
  const separator = fc.constantFrom("/", "x", " x ", "\u00d7", "*");
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 900 }),
      fc.integer({ min: 10, max: 99 }),
      separator,
      fc.constantFrom(".", ","),
      (count, hundredths, between, point) => {
        const reading = readWireName(`${count}${between}0${point}${hundredths}`);
        expect(reading.ok && reading.name).toEqual(strands(count, hundredths / 100));
      },
    ),
  );
});

test("no text throws, and every number read is finite and above nothing", () => {
  const pieces = [
    "16",
    "awg",
    "mm",
    "mm2",
    "/",
    "x",
    ".",
    ",",
    "0",
    "auto",
    "copper",
    " ",
    "<",
    "=",
  ];
  const likely = fc.array(fc.constantFrom(...pieces), { maxLength: 12 }).map((p) => p.join(""));
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: "binary", maxLength: 300 }), likely), (text) => {
      const reading = readWireName(text);
      if (!reading.ok) return;
      for (const [key, value] of Object.entries(reading.name)) {
        if (typeof value !== "number") continue;
        expect(Number.isFinite(value), `${text}: ${key}`).toBe(true);
        if (key !== "gaugeIndex") expect(value, `${text}: ${key}`).toBeGreaterThan(0);
      }
    }),
    { numRuns: 2000 },
  );
});
