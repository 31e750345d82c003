import { describe, expect, it } from "vitest";
import { segmentsOf } from "./drawingFaults.fixture.ts";
import { GRID_MM } from "./lineWidth.ts";
import { point } from "./scene.ts";
import { symbolMarks, symbolPins } from "./symbolMarks.ts";
import { SYMBOL_NAMES } from "./symbolName.ts";

const turns = [0, 90, 180, 270] as const;
const isOnGrid = (mm: number): boolean => Math.abs(mm / GRID_MM - Math.round(mm / GRID_MM)) < 1e-9;

describe.each(SYMBOL_NAMES)("%s", (symbol) => {
  it("has every pin on the grid, however it is turned", () => {
    for (const turnDeg of turns) {
      for (const mirrored of [false, true]) {
        const pins = symbolPins({ symbol, at: point(25, 50), turnDeg, mirrored });
        for (const { xMm, yMm } of Object.values(pins)) {
          expect([isOnGrid(xMm), isOnGrid(yMm)]).toEqual([true, true]);
        }
      }
    }
  });

  it("has ink at every pin that is used alone, and none beyond the pins", () => {
    const placement = { symbol, at: point(0, 0) };
    const ends = symbolMarks(placement).flatMap(segmentsOf).flat();
    const pins = Object.entries(symbolPins(placement));
    // A box is drawn for any number of wires: only its middle leads are part of it.
    const drawn = symbol === "box" ? pins.filter(([, pin]) => pin.xMm === 0) : pins;
    for (const [, pin] of drawn) {
      expect(ends.some((end) => Math.hypot(end.xMm - pin.xMm, end.yMm - pin.yMm) < 1e-9)).toBe(
        true,
      );
    }
    for (const { xMm, yMm } of ends) {
      expect(Math.abs(yMm)).toBeLessThanOrEqual(7.5 + 1e-9);
      expect(Math.abs(xMm)).toBeLessThanOrEqual(7.5 + 1e-9);
    }
  });

  it("keeps its body within four grid steps across", () => {
    if (symbol === "joint" || symbol === "crossing") return;
    for (const [from, to] of symbolMarks({ symbol, at: point(0, 0) }).flatMap(segmentsOf)) {
      for (const { xMm } of [from, to]) expect(Math.abs(xMm)).toBeLessThanOrEqual(5.26);
    }
  });
});

it("turns a battery over without turning its letters away", () => {
  const pins = symbolPins({ symbol: "battery", at: point(0, 0), turnDeg: 180 });
  expect(pins.plus!.yMm).toBeCloseTo(7.5, 9);
  expect(pins.minus!.yMm).toBeCloseTo(-7.5, 9);
  const motor = symbolMarks({ symbol: "motor", at: point(0, 0), turnDeg: 90 });
  const letter = motor.find((mark) => mark.kind === "text");
  expect(letter).toMatchObject({ text: "M" });
  expect(letter).not.toHaveProperty("turnDeg");
});
