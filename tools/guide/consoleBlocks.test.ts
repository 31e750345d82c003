import { expect, test } from "vitest";
import { consoleBlocks, matchesShown, shellWords } from "./consoleBlocks.ts";

test("what is shown whole must be the whole output", () => {
  expect(matchesShown("a\nb\n", "a\nb\n")).toBe(true);
  expect(matchesShown("a\nb\n", "a\n")).toBe(false);
  expect(matchesShown("a\n", "")).toBe(false);
});

test("lines left out are marked, and what is shown keeps its order and its end", () => {
  expect(matchesShown("a\nb\nc\n", "a\n…\nc\n")).toBe(true);
  expect(matchesShown("a\nb\nc\n", "a\n…\n")).toBe(true);
  expect(matchesShown("a\nb\nc\n", "…\nb\n…\n")).toBe(true);
  expect(matchesShown("a\nb\nc\n", "c\n…\na\n")).toBe(false);
  expect(matchesShown("a\nb\nc\n", "a\n…\nb\n")).toBe(false);
  expect(matchesShown("a\nb\n", "…\n")).toBe(false);
});

test("blocks and words are read as a person would type them", () => {
  const [block] = consoleBlocks('x\n```console\n$ copperwright wire "1 mm2"\nout\n```\n');
  expect(block).toMatchObject({ command: 'copperwright wire "1 mm2"', expected: "out\n" });
  expect(shellWords(block!.command)).toEqual(["copperwright", "wire", "1 mm2"]);
});
