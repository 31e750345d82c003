import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readJob } from "./readJob.ts";

const demo = readFileSync("demos/accessory-five-wires.json", "utf8");

describe("a job from its text", () => {
  test("the accessory job reads", () => {
    const read = readJob(demo);
    if (!read.ok) throw new Error(JSON.stringify(read.refusals));
    expect(read.upgradedFrom).toBeNull();
    expect(read.fingerprint).toMatch(/^[0-9a-f]{64}$/);
    expect(read.job.wires.map((wire) => wire.id)).toEqual(["W1", "W2", "W3", "W4", "W5"]);
  });

  test("a byte-order mark and Windows line ends change nothing", () => {
    const plain = readJob(demo);
    expect(readJob(`\ufeff${demo.replaceAll("\n", "\r\n")}`)).toEqual(plain);
  });

  test("all problems of a file at once, in the order of its lines", () => {
    const bad = demo
      .replace('"revision": 1', '"revision": 0')
      .replace('"earthPolarity": "negative"', '"earthPolarity": "minus"')
      .replace('"ratingA": 10', '"ratingA": "ten"');
    const read = readJob(bad);
    const refusals = read.ok ? [] : read.refusals;
    expect(refusals.map(({ pointer }) => pointer)).toEqual([
      "/revision",
      "/supply/earthPolarity",
      "/parts/1/ratingA",
    ]);
    const lines = bad.split("\n");
    for (const [i, word] of ['"revision"', '"earthPolarity"', '"ratingA"'].entries()) {
      expect(lines[refusals[i]!.line! - 1]).toContain(word);
    }
  });

  test("whatever the text, there is an answer and never an exception", () => {
    const pieces = fc.constantFrom(...demo.match(/"[^"]*"|[{}[\],:]|[0-9.]+|\s+/g)!.slice(0, 400));
    const texts = fc.oneof(
      fc.string(),
      fc.json(),
      fc.array(pieces, { maxLength: 60 }).map((all) => all.join("")),
      fc
        .tuple(fc.nat(demo.length), fc.nat(40), fc.string({ maxLength: 10 }))
        .map(([at, length, put]) => demo.slice(0, at) + put + demo.slice(at + length)),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const read = readJob(text);
        expect(read.ok || read.refusals.length > 0).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  test("any value in any one place of the job is read or refused", () => {
    const whole = JSON.parse(demo);
    const places: (string | number)[][] = [];
    const walk = (value: unknown, path: (string | number)[]): void => {
      places.push(path);
      if (typeof value !== "object" || value === null) return;
      for (const [key, member] of Object.entries(value)) {
        walk(member, [...path, Array.isArray(value) ? Number(key) : key]);
      }
    };
    walk(whole, []);
    const values = fc.oneof(fc.jsonValue({ maxDepth: 3 }), fc.constantFrom("hub", "W1", "+", -1));
    fc.assert(
      fc.property(fc.constantFrom(...places.slice(1)), values, (path, value) => {
        const job = structuredClone(whole);
        const holder = path.slice(0, -1).reduce((at, step) => at[step], job);
        holder[path.at(-1)!] = value;
        const read = readJob(JSON.stringify(job));
        expect(read.ok || read.refusals.length > 0).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
