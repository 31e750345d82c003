import { describe, expect, test } from "vitest";
import { quoted, valueInWords } from "./quoted.ts";
import { refusal, refusalCatalogue } from "./refusals.ts";

describe("refusals in words", () => {
  test("words are filled in, in the message and in the remedy", () => {
    const place = { pointer: "/wires/0/to", line: 12, found: "SLP.L" };
    const words = {
      place: "wire W1, to",
      ref: "SLP.L",
      owner: "SLP",
      suggestion: 'Did you mean "SPL"?',
    };
    const { message, remedy, ...rest } = refusal("unknown-pin-owner", place, words);
    expect(message).toBe(
      'wire W1, to names the pin "SLP.L", and there is no part, joint, connector or body "SLP".',
    );
    expect(remedy).toBe('Did you mean "SPL"?');
    expect(rest).toEqual({ code: "unknown-pin-owner", ...place });
  });

  test("a word that itself looks like a blank is not filled in again", () => {
    const place = { pointer: "", line: null, found: "" };
    expect(refusal("json-reserved-name", place, { key: "{found}" }).message).toContain("{found}");
  });

  test("every entry says what happened in a sentence and what to do", () => {
    for (const [code, { message, remedy }] of Object.entries(refusalCatalogue)) {
      expect(code).toMatch(/^[a-z]+(-[a-z]+)+$/);
      expect(message).toMatch(/[.]$/);
      expect(remedy).toMatch(/([.]|[}])$/);
    }
  });

  test("what was met is quoted, cut and without control characters", () => {
    expect(quoted("a\nb")).toBe('"a\\nb"');
    expect(quoted("x".repeat(100))).toHaveLength(63);
    expect(valueInWords([1, 2])).toBe("a list of 2");
    expect(valueInWords(undefined)).toBe("nothing");
  });
});
