import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readJob, writeJob } from "../../engine/job/index.ts";

const here = (name: string): string => readFileSync(new URL(name, import.meta.url), "utf8");
const names = (folder: string): readonly string[] =>
  readdirSync(new URL(folder, import.meta.url)).filter((name) => name.endsWith(".json"));

describe("documents of version 0", () => {
  for (const name of names("v0/").filter((file) => !file.includes(".as-v1."))) {
    test(`${name} becomes the version 1 document written beside it`, () => {
      const read = readJob(here(`v0/${name}`));
      if (!read.ok) throw new Error(JSON.stringify(read.refusals));
      expect(read.upgradedFrom).toBe(0);
      const expected = here(`v0/${name.replace(".json", ".as-v1.json")}`);
      expect(writeJob(read.job)).toBe(expected);
      const again = readJob(expected);
      expect(again).toEqual({ ...read, upgradedFrom: null });
    });
  }

  const old = JSON.parse(here("v0/side-lamp.json"));
  const refusalsOf = (change: object) => {
    const read = readJob(JSON.stringify({ ...old, ...change }, null, 1));
    return read.ok ? [] : read.refusals.map(({ code, pointer, line }) => [code, pointer, line]);
  };

  test("what version 0 itself would not have is refused in its own terms, with lines", () => {
    const [refused, ...others] = refusalsOf({ earth: "positive" });
    expect(others).toEqual([]);
    expect(refused).toEqual(["field-not-a-choice", "/earth", 9]);
    expect(refusalsOf({ supply: {} })[0]?.[0]).toBe("field-unknown");
  });

  test("what the upgraded document cannot be is refused without a line", () => {
    const wires = [{ id: "1", from: "BAT.-", to: "FUSE.1" }];
    expect(refusalsOf({ wires })).toEqual([["unknown-pin-owner", "/wires/0/to", null]]);
    const parts = [{ id: "SW", kind: "switch", name: "", pins: ["A"] }];
    expect(refusalsOf({ parts, wires: [] })[0]?.[0]).toBe("field-too-few-items");
  });
});

describe("documents of version 1, frozen", () => {
  const fingerprints: Readonly<Record<string, string>> = JSON.parse(here("v1/fingerprints.json"));
  const frozen = names("v1/").filter((name) => name !== "fingerprints.json");

  test("each has its fingerprint recorded, and there are some", () => {
    expect(frozen.length).toBeGreaterThan(0);
    expect([...frozen].sort()).toEqual(Object.keys(fingerprints).sort());
  });

  for (const name of frozen) {
    test(`${name} still reads, as the same job`, () => {
      const read = readJob(here(`v1/${name}`));
      if (!read.ok) throw new Error(JSON.stringify(read.refusals));
      expect(read.fingerprint).toBe(fingerprints[name]);
      expect(read.upgradedFrom).toBeNull();
    });
  }
});
