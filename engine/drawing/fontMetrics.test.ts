import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { generateFontMetrics } from "../../tools/generate/fontMetrics.ts";
import { unsettableCharacters } from "./fontRuns.ts";
import { measureTextMm } from "./measureTextMm.ts";

it("holds the widths of the installed fonts", () => {
  for (const [path, text] of generateFontMetrics()) {
    expect(readFileSync(new URL(`../../${path}`, import.meta.url), "utf8")).toBe(text);
  }
});

it("sets figures of one width, so that columns stand under each other", () => {
  for (const weight of [400, 600, 700, 800] as const) {
    const widths = [..."0123456789"].map((figure) => measureTextMm(figure, 2.5, weight));
    expect(Math.max(...widths) - Math.min(...widths)).toBeLessThan(1e-9);
  }
});

it("knows what it cannot set, and lets invisible marks pass", () => {
  expect(unsettableCharacters("a\u200Bb\u00ADc\uFEFF", 400)).toEqual([]);
  expect(unsettableCharacters("שלום 電", 400)).toEqual(["ש", "ל", "ו", "ם", "電"]);
  expect(unsettableCharacters("e\u0301", 400)).toEqual([]);
});
