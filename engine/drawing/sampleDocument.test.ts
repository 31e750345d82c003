import { describe, expect, it } from "vitest";
import { marksOutside, struckTexts, textOverlaps } from "./drawingFaults.fixture.ts";
import { CAP_MM } from "./lineWidth.ts";
import { missingGlyphs, textMarks } from "./missingGlyphs.ts";
import { sampleDocument } from "./sampleDocument.fixture.ts";
import { area, point } from "./scene.ts";
import { TEXT_STYLE, textMark } from "./textBlock.ts";

const pages = sampleDocument().pages.map((page, i) => ({
  ...page,
  label: `page ${i + 1}, ${page.title}`,
}));

describe.each(pages)("$label", (page) => {
  it("has no text over another", () => {
    expect(textOverlaps(page.marks)).toEqual([]);
  });
  it("has no stroke through a text", () => {
    expect(struckTexts(page.marks)).toEqual([]);
  });
  it("keeps to its paper", () => {
    expect(marksOutside(page.marks, area(0, 0, page.widthMm, page.heightMm))).toEqual([]);
  });
  it("has nothing smaller than 1.8 mm", () => {
    const small = textMarks(page.marks).filter(({ capHeightMm }) => capHeightMm < CAP_MM.fine);
    expect(small).toEqual([]);
  });
});

it("sets every character of the sample", () => {
  expect(missingGlyphs(sampleDocument())).toEqual([]);
});

it("finds faults where there are some", () => {
  const a = textMark("one", 10, 10, TEXT_STYLE.text);
  const b = textMark("two", 12, 10, TEXT_STYLE.text);
  const line = {
    kind: "line",
    from: point(0, 9),
    to: point(50, 9),
    stroke: { widthMm: 0.5, colour: "ink" },
  } as const;
  expect(textOverlaps([a, b])).toHaveLength(1);
  expect(struckTexts([a, line])).toEqual(["one"]);
  expect(marksOutside([a], area(0, 0, 12, 20))).toEqual(["one"]);
});
