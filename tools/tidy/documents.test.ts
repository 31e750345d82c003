import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { filesBelow, ROOT } from "../sourceFiles.ts";
import { ROOMS } from "./rooms.ts";

const read = (path: string) => readFileSync(join(ROOT, path), "utf8");
const documents = [
  ...["README.md", "ARCHITECTURE.md", "CONTRIBUTING.md", "GLOSSARY.md", "NOTICES.md"],
  ...filesBelow("docs", [".md"]),
];

describe("documents", () => {
  test("the architecture page lists the rooms in the order the code keeps", () => {
    const rows = [...read("ARCHITECTURE.md").matchAll(/^\| (\w+) \|/gm)].map((match) => match[1]!);
    expect(rows.filter((row) => ROOMS.includes(row as never))).toEqual([...ROOMS]);
  });

  test("every link leads somewhere", () => {
    const broken = documents.flatMap((path) =>
      [...read(path).matchAll(/\]\((?!https?:|#|mailto:)([^)#]+)/g)]
        .map((match) => match[1]!)
        .filter((target) => !existsSync(join(ROOT, dirname(path), target)))
        .map((target) => `${path}: ${target}`),
    );
    expect(broken).toEqual([]);
  });

  test("a decision is numbered once, says whether it stands, and fits forty lines", () => {
    const decisions = filesBelow("docs/decisions", [".md"]);
    const numbers = decisions.map((path) => /\/(\d{4})-[a-z0-9-]+\.md$/.exec(path)?.[1]);
    expect(numbers).not.toContain(undefined);
    expect(new Set(numbers).size).toBe(numbers.length);
    for (const path of decisions) {
      const text = read(path);
      expect(text, path).toMatch(/^# \d{4} .+\((accepted|superseded by \d{4})\)/);
      expect(text.trimEnd().split("\n").length, path).toBeLessThanOrEqual(40);
    }
  });

  test("the engine's version is the package's", () => {
    const { version } = JSON.parse(read("engine/package.json"));
    expect(read("engine/version.ts")).toContain(`"${version}"`);
  });
});
