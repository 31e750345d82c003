import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lineAt } from "./placesInText.ts";
import { readJson } from "./readJson.ts";
import { scanText } from "./scanText.ts";

/** The platform's own parser, as the second opinion on what is JSON. */
function platform(text: string): { readonly ok: boolean; readonly value?: unknown } {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch {
    return { ok: false };
  }
}

/** Refusals of what is good JSON and still not read. */
const BEYOND_SYNTAX = new Set([
  "json-duplicate-key",
  "json-number-too-big",
  "json-number-too-small",
  "json-broken-character",
  "json-reserved-name",
]);

function agrees(text: string): void {
  if (scanText(text) !== null) return;
  const ours = readJson(text);
  const theirs = platform(text);
  if (ours.ok) {
    expect(theirs.ok).toBe(true);
    expect(JSON.stringify(ours.value)).toBe(JSON.stringify(theirs.value));
  } else {
    const isSyntax = ours.refusals.some(({ code }) => !BEYOND_SYNTAX.has(code));
    expect(isSyntax).toBe(!theirs.ok);
  }
}

describe("JSON with its lines", () => {
  test("any JSON value reads as the platform reads it", () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 8 }), (text) => agrees(text)),
      { numRuns: 300 },
    );
  });

  test("texts of JSON's own signs are JSON here exactly when the platform says so", () => {
    const sign = fc.constantFrom(
      ...'{}[],:"\\ \n\t'.split(""),
      ..."01-+.eEx".split(""),
      ...["true", "null", "tru", '"a"', "\\u0041", "//", "/*", "\u00a0", "\ufeff", "\r", "\u2028"],
    );
    const texts = fc.array(sign, { maxLength: 12 }).map((signs) => signs.join(""));
    fc.assert(
      fc.property(texts, (text) => agrees(text)),
      { numRuns: 5000 },
    );
  });

  test("one character changed in a good text", () => {
    const good = '{"a": [1, -2.5e3, "x\\n\\u00e9"], "b": {"c": null, "d": true}}';
    const any = fc.constantFrom(...'{}[],:"\\ 0-.eutn\n');
    fc.assert(
      fc.property(fc.nat(good.length - 1), any, (place, letter) =>
        agrees(good.slice(0, place) + letter + good.slice(place + 1)),
      ),
      { numRuns: 1000 },
    );
  });

  test("each value knows its line, and a missing one the line of its holder", () => {
    const read = readJson('{\n"a": [\n1,\n{"b":\n2}\n],\r\n"c": 3}');
    if (!read.ok) throw new Error("should read");
    const line = (...path: (string | number)[]) => lineAt(read.value, read.lines, path);
    expect(line()).toBe(1);
    expect(line("a")).toBe(2);
    expect(line("a", 0)).toBe(3);
    expect(line("a", 1, "b")).toBe(5);
    expect(line("a", 1, "missing")).toBe(4);
    expect(line("c")).toBe(7);
    expect(line("missing")).toBe(1);
  });

  test("pointers count the item they are in", () => {
    const read = readJson('{"a": [0, {"b": [7, 1e999]}, {"b": 1, "b": 2}], "x/y": {"~": -1e999}}');
    const pointers = read.ok ? [] : read.refusals.map(({ pointer }) => pointer);
    expect(pointers).toEqual(["/a/1/b/1", "/a/2/b", "/x~1y/~0"]);
  });

  test("minus nought is nought", () => {
    const read = readJson("[-0, -0.0]");
    expect(read.ok && Object.is((read.value as number[])[0], 0)).toBe(true);
  });
});
