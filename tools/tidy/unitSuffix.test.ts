import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parseSync } from "oxc-parser";
import { expect, test } from "vitest";
import { filesBelow, ROOT } from "../sourceFiles.ts";
import { endsInUnit } from "./endsInUnit.ts";
import { isBeside } from "./isBeside.ts";

/** Rooms where x, y, i, j stand beside their equation: anonymous mathematics and drawing. */
const MATHEMATICS = /^engine\/(network|geometry|drawing)\//;

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

/** Names of every field and parameter of plain type `number` in a file. */
function numericNames(path: string): readonly string[] {
  const { program } = parseSync(path, readFileSync(join(ROOT, path), "utf8"));
  const names: string[] = [];
  const visit = (node: unknown): void => {
    if (node === null || typeof node !== "object") return;
    const { type, key, name, typeAnnotation } = node as Node;
    const annotation = (typeAnnotation as Node | null)?.typeAnnotation as Node | undefined;
    if (annotation?.type === "TSNumberKeyword") {
      if (type === "TSPropertySignature") names.push(String((key as Node)?.name));
      if (type === "Identifier") names.push(String(name));
    }
    Object.values(node).forEach(visit);
  };
  visit(program);
  return names;
}

test("every numeric field and parameter of the engine ends in its unit", () => {
  const wrong: string[] = [];
  for (const path of filesBelow("engine", [".ts"])) {
    if (isBeside(path) || MATHEMATICS.test(path)) continue;
    for (const name of numericNames(path)) if (!endsInUnit(name)) wrong.push(`${path}: ${name}`);
  }
  expect([...new Set(wrong)]).toEqual([]);
});
