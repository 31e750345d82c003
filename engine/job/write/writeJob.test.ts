import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Job } from "../job.ts";
import { readJob } from "../read/readJob.ts";
import { fingerprint } from "./fingerprint.ts";
import { writeJob } from "./writeJob.ts";

const FILES = [
  ...readdirSync("demos").map((name) => `demos/${name}`),
  ...readdirSync("cases/reference-machines").map(
    (name) => `cases/reference-machines/${name}/job.json`,
  ),
].filter((file) => file.endsWith(".json") && existsSync(file));

function jobOf(text: string): Job {
  const read = readJob(text);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals.slice(0, 3)));
  return read.job;
}

const LISTS_OF_MEANT_ORDER = new Set(["pins", "positions", "ways", "cavities", "via", "joins"]);

/** The same document with its fields in another order, and its lists too where their order means nothing. */
function shuffled(value: unknown, key: string, depth: number, random: () => number): unknown {
  const mixed = <T>(items: readonly T[]): T[] =>
    items
      .map((item) => ({ item, at: random() }))
      .sort((a, b) => a.at - b.at)
      .map(({ item }) => item);
  if (Array.isArray(value)) {
    const items = value.map((item) => shuffled(item, "", depth + 1, random));
    return depth === 1 && !LISTS_OF_MEANT_ORDER.has(key) ? mixed(items) : items;
  }
  if (typeof value !== "object" || value === null) return value;
  const fields = Object.entries(value).map(
    ([name, field]) => [name, shuffled(field, name, depth + 1, random)] as const,
  );
  return Object.fromEntries(mixed(fields));
}

describe("the canonical text", () => {
  for (const file of FILES) {
    const job = jobOf(readFileSync(file, "utf8"));
    const text = writeJob(job);

    test(`${file}: read and written again, the same bytes and the same job`, () => {
      expect(jobOf(text)).toEqual(job);
      expect(writeJob(jobOf(text))).toBe(text);
      expect(text.endsWith("}\n")).toBe(true);
    });

    test(`${file}: nothing is lost or added by writing`, () => {
      expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(job)));
    });

    test(`${file}: the order of fields and of plain lists does not matter`, () => {
      fc.assert(
        fc.property(fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })), (stream) => {
          const random = () => stream.next().value as number;
          const mixed = shuffled(JSON.parse(text), "", 0, random);
          expect(writeJob(jobOf(JSON.stringify(mixed)))).toBe(text);
        }),
        { numRuns: 3 },
      );
    });
  }

  const demo = jobOf(readFileSync("demos/accessory-five-wires.json", "utf8"));

  test("the order of switch positions, of pins and of ways is kept, for it means something", () => {
    const joints = [{ id: "J", kind: "bus" as const, ways: ["b", "a"] }];
    const reversed = demo.parts.map((part) =>
      part.kind === "switch" ? { ...part, positions: [...part.positions].reverse() } : part,
    );
    const read = jobOf(writeJob({ ...demo, joints, parts: reversed }));
    expect(read.joints[0]?.ways).toEqual(["b", "a"]);
    const part = read.parts.find((item) => item.kind === "switch");
    expect(part?.kind === "switch" && part.positions.map(({ id }) => id)).toEqual(["ON", "OFF"]);
  });

  test("each wire is one line, and one change of a wire changes one line", () => {
    const [first, ...others] = demo.wires;
    const changed = { ...demo, wires: [{ ...first!, note: "x" }, ...others] };
    const before = writeJob(demo).split("\n");
    const after = writeJob(changed).split("\n");
    expect(after.length).toBe(before.length);
    expect(after.filter((line, i) => line !== before[i])).toHaveLength(1);
  });

  test("a field that is undefined is absent", () => {
    expect(writeJob({ ...demo, note: undefined })).not.toContain('"note": "The smallest');
  });

  test("the fingerprint is the SHA-256 of the text, as another library counts it", () => {
    const other = createHash("sha256").update(writeJob(demo), "utf8").digest("hex");
    expect(fingerprint(demo)).toBe(other);
  });
});
