import { readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { expect, test } from "vitest";
import { filesBelow, ROOT } from "../sourceFiles.ts";

const FILE_LINES = 250;
const TEST_LINES = 400;
const FORBIDDEN = /^(utils?|helpers?|common|misc|types|shared|lib|tools|constants)\.(ts|tsx|mjs)$/;

const sources = ["engine", "apps", "tools", "cases"]
  .flatMap((folder) => filesBelow(folder, [".ts", ".tsx", ".mjs"]))
  .filter((path) => !path.endsWith(".generated.ts"));

test("no file is longer than it can be held in mind", () => {
  const long = sources
    .map((path) => ({ path, lines: readFileSync(join(ROOT, path), "utf8").split("\n").length - 1 }))
    .filter(({ path, lines }) => lines > (path.endsWith(".test.ts") ? TEST_LINES : FILE_LINES))
    .map(({ path, lines }) => `${path}: ${lines} lines`);
  expect(long).toEqual([]);
});

test("no file is a drawer for odds and ends", () => {
  expect(sources.filter((path) => FORBIDDEN.test(basename(path)))).toEqual([]);
});
