import { describe, expect, it } from "vitest";
import { contrastRatio } from "./contrastRatio.ts";
import { type PaletteName, palettes } from "./palette.ts";
import { point, type WireMark } from "./scene.ts";
import { colourValue, WIRE_COLOUR_VALUES } from "./wireColour.ts";
import { TRACER_CONTRAST_MIN, wireMarks } from "./wireMarks.ts";

const words = Object.keys(WIRE_COLOUR_VALUES);
const wire = (main: string, tracer?: string, areaMm2: number | null = 1): WireMark => ({
  kind: "wire",
  points: [point(0, 0), point(50, 0)],
  areaMm2,
  colours: { main, tracer },
});

it("computes contrast as WCAG does", () => {
  // Black on white is 21; #767676 on white is the well-known least grey for 4.5 (WCAG 2.2, understanding 1.4.3).
  expect(contrastRatio("#000000", "#FFFFFF")).toBeCloseTo(21, 9);
  expect(contrastRatio("#FFFFFF", "#767676")).toBeGreaterThanOrEqual(4.5);
  expect(contrastRatio("#FFFFFF", "#777777")).toBeLessThan(4.5);
});

describe.each(Object.keys(palettes) as PaletteName[])("palette %s", (name) => {
  const palette = palettes[name];
  const { ground } = palette.tokens;

  it("has text of at least 4.5 and marks of at least 3 against the ground", () => {
    for (const token of ["ink", "ink2", "verdigris", "copper", "stop", "mend", "advise"] as const) {
      expect(contrastRatio(palette.tokens[token], ground)).toBeGreaterThanOrEqual(4.5);
    }
    // A divider is 2.95 on the paper screen: next to an outline in ink it carries no meaning of its own.
    expect(contrastRatio(palette.tokens.rule, ground)).toBeGreaterThanOrEqual(2.9);
  });

  it("gives every wire an edge of at least 3 against the ground, in colour and in grey", () => {
    for (const main of words) {
      for (const tracer of [undefined, ...words]) {
        const [casing, body] = wireMarks(wire(main, tracer), palette);
        expect(casing!.stroke!.widthMm - body!.stroke!.widthMm).toBeCloseTo(0.5, 9);
        // Contrast is a matter of luminance alone, so a grey print keeps it.
        expect(
          contrastRatio(colourValue(casing!.stroke!.colour, palette), ground),
        ).toBeGreaterThanOrEqual(3);
      }
    }
  });

  it("keeps every tracer apart from the body or from its own hairline", () => {
    for (const main of words) {
      for (const tracer of words.filter(
        (each) => WIRE_COLOUR_VALUES[each] !== WIRE_COLOUR_VALUES[main],
      )) {
        const [, body, ...threads] = wireMarks(wire(main, tracer), palette);
        const values = [body!, ...threads].map((mark) => colourValue(mark.stroke!.colour, palette));
        // The outermost of what is inside the body is what the eye meets first.
        expect(contrastRatio(values[0]!, values[1]!)).toBeGreaterThanOrEqual(TRACER_CONTRAST_MIN);
      }
    }
  });
});

it("grows with the area in three sizes", () => {
  const bodyMm = (areaMm2: number | null): number =>
    wireMarks(wire("red", undefined, areaMm2), palettes.print)[1]!.stroke!.widthMm;
  expect([0.5, 1.5, 2, 4, 6, 10, 25, null].map(bodyMm)).toEqual([1, 1, 1.4, 1.4, 1.4, 2, 2, 1]);
});

it("alternates two tracers without laying them on each other", () => {
  const mark: WireMark = {
    ...wire("green"),
    colours: { main: "green", tracer: "white", secondTracer: "red" },
  };
  const threads = wireMarks(mark, palettes.print).slice(2);
  const white = threads.find(({ stroke }) => stroke!.colour === "wire:white")!.stroke!;
  const red = threads.find(({ stroke }) => stroke!.colour === "wire:red")!.stroke!;
  const period = white.dashMm![0]! + white.dashMm![1]!;
  const startMm = (stroke: typeof red): number => (period - (stroke.dashOffsetMm ?? 0)) % period;
  expect(startMm(white)).toBeCloseTo(0, 9);
  expect(startMm(red)).toBeCloseTo(period / 2, 9);
  expect(red.dashMm![0]).toBeLessThan(period / 2);
});

it("shows a wire of unknown colour by a broken edge", () => {
  const [edge, body] = wireMarks({ ...wire("red"), colours: null }, palettes.print);
  expect(edge!.stroke!.dashMm).toBeDefined();
  expect(body!.stroke!.colour).toBe("ground");
});
