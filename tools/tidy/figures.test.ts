import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { filesBelow, ROOT } from "../sourceFiles.ts";
import { isBeside } from "./isBeside.ts";

/** Exact definitions and constants of nature, each in a file of its own that says so. */
const DEFINITIONS = /^engine\/(units|drawing)\/|physicalConstants\.ts$/;
/** A decimal with four or more significant figures looks like somebody's measurement. */
const FIGURE = /(?<![\w.#])\d*\.\d+(?:e[+-]?\d+)?/gi;

test("no figure from outside lives in a .ts file of the engine", () => {
  const wrong: string[] = [];
  for (const path of filesBelow("engine", [".ts"])) {
    if (isBeside(path) || DEFINITIONS.test(path)) continue;
    const text = readFileSync(join(ROOT, path), "utf8")
      .replace(/\/\*[\s\S]*?\*\//g, "")
      .replace(/\/\/.*$/gm, "")
      .replace(/"(?:[^"\\\n]|\\.)*"/g, '""');
    for (const [literal] of text.matchAll(FIGURE)) {
      const significant = literal
        .replace(/e.*$/i, "")
        .replace(".", "")
        .replace(/^0+/, "")
        .replace(/0+$/, "");
      if (significant.length >= 4) wrong.push(`${path}: ${literal}`);
    }
  }
  expect(wrong).toEqual([]);
});
