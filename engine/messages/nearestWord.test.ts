import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nearestWord } from "./nearestWord.ts";

describe("the nearest word", () => {
  test("one letter wrong, missing, extra or swapped", () => {
    const known = ["brown", "blue", "black"];
    expect(nearestWord("brovn", known)).toBe("brown");
    expect(nearestWord("brwn", known)).toBe("brown");
    expect(nearestWord("browwn", known)).toBe("brown");
    expect(nearestWord("borwn", known)).toBe("brown");
    expect(nearestWord("BROWN", known)).toBe("brown");
  });

  test("nothing alike gives nothing", () => {
    expect(nearestWord("violet", ["brown", "blue"])).toBeNull();
    expect(nearestWord("brown", [])).toBeNull();
    expect(nearestWord("x".repeat(1000), ["x".repeat(999)])).toBeNull();
  });

  test("short words must be closer than long ones", () => {
    expect(nearestWord("ab", ["cd"])).toBeNull();
    expect(nearestWord("lenghtmm", ["lengthMm"])).toBe("lengthMm");
  });

  test("of equals the first in code-point order, in whatever order they come", () => {
    expect(nearestWord("F3", ["F2", "F1"])).toBe("F1");
    expect(nearestWord("F3", ["F1", "F2"])).toBe("F1");
  });

  test("a word that is there is its own nearest", () => {
    const word = fc.string({ minLength: 1, maxLength: 20, unit: "grapheme-ascii" });
    fc.assert(
      fc.property(word, fc.array(word), (wanted, others) => {
        const nearest = nearestWord(wanted, [...others, wanted]);
        expect(nearest?.toLowerCase()).toBe(wanted.toLowerCase());
      }),
    );
  });

  test("taking one letter out of a long word is always found again", () => {
    const word = fc.stringMatching(/^[a-z]{4,20}$/);
    fc.assert(
      fc.property(word, fc.nat(), (wanted, place) => {
        const k = place % wanted.length;
        const cut = wanted.slice(0, k) + wanted.slice(k + 1);
        expect(nearestWord(cut, [wanted])).toBe(wanted);
      }),
    );
  });
});
