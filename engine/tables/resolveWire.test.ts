import fc from "fast-check";
import { expect, test } from "vitest";
import { strandAreaMm2 } from "../units/index.ts";
import { resolveWire, type WireReading } from "./index.ts";

const ids = (reading: WireReading): string[] => reading.candidates.map((row) => row.id);

// Areas are N·π·d²/4 worked by hand to three decimals; tolerance half of the last.
test.each([
  ["32/0.20", 1.005, ["thin-1.0", "isothick-1.0"]],
  ["28/0.30", 1.979, ["thin-2.0", "thick-2.0"]],
  ["65/0.30", 4.595, ["thin-4.5", "thick-4.5"]],
  ["14/0.30", 0.99, ["thick-1.0"]],
  ["14/.012", 1.022, ["imp-14/.012"]],
  ["44/.012 in", 3.211, ["imp-44/.012"]],
  ["23/36", 0.673, ["imp-23/36"]],
  ["35/40", 0.409, ["imp-35/40"]],
  ["4 mm auto", 1.838, ["auto-4"]],
  ["GXL 16", 1.255, ["gxl-16"]],
  ["AV 0.85", 0.849, ["av-0.85"]],
  ["18 SWG", 1.167, []],
])("%s holds %d mm²", (text, areaMm2, rows) => {
  const reading = resolveWire(text);
  expect(Math.abs(reading.areaMm2! - areaMm2)).toBeLessThanOrEqual(0.0006);
  expect(ids(reading)).toEqual(expect.arrayContaining(rows));
  expect(reading.refusal).toBeNull();
  expect(reading.ask).toBeNull();
});

test("twisted copper of 1.2 mm is a range and a question, never 1.13 mm²", () => {
  const reading = resolveWire("copper 1.2 mm");
  expect(reading.areaMm2).toBeNull();
  expect(reading.areaRangeMm2![0]).toBeCloseTo(0.735, 3);
  expect(reading.areaRangeMm2![1]).toBeCloseTo(1.018, 3);
  expect(ids(reading)).toEqual(expect.arrayContaining(["thin-0.75", "thin-1.0"]));
  expect(reading.ask).toMatch(/how many strands/i);
});

test("16 gauge car wire is never 1.31 mm² (SAE minimum 2336 circular mils, 1.18 mm²)", () => {
  expect(resolveWire("16 gauge car wire").areaMm2).toBeCloseTo(1.184, 3);
  expect(resolveWire("16 gauge").areaMm2).toBeNull();
  const byDefinition = resolveWire("16 AWG");
  expect(byDefinition.areaMm2).toBeCloseTo(1.309, 3);
  expect(byDefinition.areaRangeMm2![0]).toBeCloseTo(1.184, 3);
  expect(byDefinition.ask).toMatch(/vehicle cable/i);
});

test("strands over whole hundredths that are also a gauge number ask which", () => {
  const reading = resolveWire("14/30");
  expect(reading.areaMm2).toBeNull();
  expect(reading.ask).toMatch(/30 SWG, or 0.30 mm/);
});

test("an area sold in several strandings gives the span of their copper and asks which", () => {
  const reading = resolveWire("2 mm2");
  expect(reading.areaRangeMm2![0]).toBeLessThan(1.98);
  expect(reading.areaRangeMm2![1]).toBeGreaterThan(2.12);
  expect(reading.ask).toMatch(/Which is it/);
});

test("3 mm auto asks, because sellers disagree; a size nobody lists is refused", () => {
  expect(resolveWire("3 mm auto")).toMatchObject({ areaMm2: null, refusal: null });
  expect(resolveWire("3 mm auto").ask).not.toBeNull();
  expect(resolveWire("7 mm auto").refusal?.code).toBe("no-such-make");
});

test("over the insulation gives makes and asks for the copper", () => {
  const reading = resolveWire("over insulation 2.1 mm");
  expect(ids(reading)).toContain("thin-1.0");
  expect(ids(reading)).not.toContain("thin-3.0");
  expect(reading.areaMm2).toBeNull();
  expect(reading.ask).not.toBeNull();
});

test("a bare 2 mm is refused with the three ways to say it", () => {
  const { refusal, areaMm2 } = resolveWire("2 mm");
  expect(areaMm2).toBeNull();
  expect(refusal?.code).toBe("area-or-diameter");
  expect(refusal?.remedy).toMatch(/2 mm2, copper 2 mm/);
});

test("hostile text is refused shortly and clearly", () => {
  for (const text of ["=1+1", "<b>", "\u0000", "'; DROP", "x".repeat(1e6), "1".repeat(1e6)]) {
    const reading = resolveWire(text);
    expect(reading.refusal?.message.length).toBeGreaterThan(10);
    expect(reading.refusal!.found.length).toBeLessThanOrEqual(40);
    expect(reading.candidates).toEqual([]);
  }
});

test("what is read is refused, asked about, or one area inside its own range", () => {
  const pieces = [
    "16",
    "2",
    "awg",
    " mm",
    " mm2",
    "/",
    "0.3",
    "36",
    " auto",
    "copper ",
    "gxl ",
    " swg",
  ];
  const text = fc.array(fc.constantFrom(...pieces), { maxLength: 5 }).map((p) => p.join(""));
  fc.assert(
    fc.property(text, (typed) => {
      const reading = resolveWire(typed);
      const isAnswered = reading.refusal !== null || reading.ask !== null;
      expect(isAnswered || reading.areaMm2 !== null, typed).toBe(true);
      if (reading.areaRangeMm2 === null) return;
      const [least, most] = reading.areaRangeMm2;
      expect(least).toBeLessThanOrEqual(most);
      if (reading.strandCount === null || reading.strandDiameterMm === null) return;
      const { strandCount, strandDiameterMm } = reading;
      const counted = strandAreaMm2({ strandCount, strandDiameterMm });
      expect(reading.areaMm2, typed).toBeCloseTo(counted, 9);
    }),
    { numRuns: 1000 },
  );
});
