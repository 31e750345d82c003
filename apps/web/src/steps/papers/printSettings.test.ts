import { describe, expect, test } from "vitest";
import { choiceOf, readSettings, takenReadings, USUAL_SETTINGS } from "./printSettings.ts";

describe("two readings of the bar", () => {
  const measured = { readAcrossMm: 98, readDownMm: 99.5 };

  test("of a sheet that was not corrected are kept as they are", () => {
    expect(takenReadings(measured, null)).toEqual({ ok: true, readings: measured });
  });

  test("of a corrected sheet add to what was kept", () => {
    const taken = takenReadings({ readAcrossMm: 100.5, readDownMm: 100 }, measured);
    // The sheet's bar was drawn 100 x 100 / 98 mm long and came out 100.5: of 100 mm the printer makes 98 x 1.005.
    expect(taken.ok && taken.readings.readAcrossMm).toBeCloseTo(98.49, 9);
    expect(taken.ok && taken.readings.readDownMm).toBeCloseTo(99.5, 9);
  });

  test("that no printer makes are refused", () => {
    expect(
      takenReadings({ readAcrossMm: 95, readDownMm: 100 }, { readAcrossMm: 92, readDownMm: 100 }),
    ).toMatchObject({ ok: false });
  });
});

describe("settings of the device", () => {
  const garage = { readAcrossMm: 98, readDownMm: 99.5 };
  const kept = { ...USUAL_SETTINGS, printer: "garage", printers: { garage }, hasPrices: false };

  test("come back as they were kept", () => {
    expect(readSettings(JSON.stringify(kept))).toEqual(kept);
  });

  test.each([
    ["nothing", null],
    ["no JSON", "{"],
    ["another kind", "[1]"],
    ["a printer nobody measured", '{"printer":"a"}'],
    [
      "a reading of no bar",
      '{"printer":"a","printers":{"a":{"readAcrossMm":72,"readDownMm":100}}}',
    ],
    ["a board no loom fits on", '{"boardWidthMm":5}'],
    ["an inherited name", '{"printer":"constructor"}'],
  ])("%s: as usual", (_, text) => {
    expect(readSettings(text)).toEqual(USUAL_SETTINGS);
  });

  test("ask for the printer's correction, and for prices only where both are wished and known", () => {
    expect(choiceOf(kept, "list")).toEqual({
      paper: "a4",
      ink: "colour",
      board: { boardWidthMm: 1200, marginMm: 10, overlapMm: 10, ...garage },
      stockText: null,
      issue: null,
    });
    const choice = choiceOf(USUAL_SETTINGS, "list");
    expect(choice.board).toMatchObject({ readAcrossMm: 100, readDownMm: 100 });
    expect(choice.stockText).toBe("list");
  });
});
