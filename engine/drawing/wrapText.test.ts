import fc from "fast-check";
import { expect, it } from "vitest";
import { measureTextMm } from "./measureTextMm.ts";
import { wrapText } from "./wrapText.ts";

const words = fc.array(fc.stringMatching(/^[A-Za-z0-9/\-ŁжΩ]{1,14}$/), { maxLength: 12 });

it("loses no character and breaks only where something is dropped that is a space", () => {
  fc.assert(
    fc.property(words, fc.double({ min: 5, max: 80, noNaN: true }), (list, widthMm) => {
      const text = list.join(" ");
      const lines = wrapText(text, widthMm, 2.5, 400);
      expect(lines.join("").replaceAll(" ", "")).toBe(text.replaceAll(" ", ""));
    }),
  );
});

it("makes no line wider than asked, unless one character alone is", () => {
  fc.assert(
    fc.property(words, fc.double({ min: 1, max: 80, noNaN: true }), (list, widthMm) => {
      for (const line of wrapText(list.join(" "), widthMm, 2.5, 700)) {
        const isNarrow = measureTextMm(line, 2.5, 700) <= widthMm + 1e-6;
        expect(isNarrow || [...line].length === 1).toBe(true);
      }
    }),
  );
});

it("keeps short hyphened words and no-break spaces together", () => {
  const wide = (text: string): number => measureTextMm(text, 2.5, 400) + 0.1;
  expect(wrapText("shell, 6-way", wide("shell, 6-"), 2.5, 400)).toEqual(["shell,", "6-way"]);
  expect(wrapText("mid-range", wide("mid-ra"), 2.5, 400)).toEqual(["mid-", "range"]);
  expect(wrapText("about 12.3\u00A0V", wide("about 12.3"), 2.5, 400)).toEqual([
    "about",
    "12.3\u00A0V",
  ]);
});

it("keeps line ends and gives one line for nothing", () => {
  expect(wrapText("one\ntwo\r\nthree", 50, 2.5, 400)).toEqual(["one", "two", "three"]);
  expect(wrapText("", 50, 2.5, 400)).toEqual([""]);
});
