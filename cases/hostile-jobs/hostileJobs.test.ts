import { readFileSync } from "node:fs";
import { afterAll, describe, expect, test } from "vitest";
import { readJob } from "../../engine/job/index.ts";
import type { Refusal } from "../../engine/messages/index.ts";
import { refusalsOfFields } from "../../engine/messages/refusalsOfFields.ts";
import { refusalsOfReferences } from "../../engine/messages/refusalsOfReferences.ts";
import { refusalsOfText } from "../../engine/messages/refusalsOfText.ts";

type Path = readonly (string | number)[];

interface ChangedJob {
  readonly claim: string;
  readonly set?: readonly (readonly [Path, unknown])[];
  readonly take?: readonly Path[];
  readonly refused: readonly (readonly [code: string, pointer: string])[];
  readonly says?: readonly string[];
}

interface HostileText {
  readonly claim: string;
  readonly text: string;
  readonly refused: readonly (readonly [code: string, line: number | null])[];
}

const here = (name: string): string => readFileSync(new URL(name, import.meta.url), "utf8");
const changes: readonly ChangedJob[] = JSON.parse(here("changes.json"));
const texts: readonly HostileText[] = JSON.parse(here("texts.json"));
const demo = here("../../demos/accessory-five-wires.json");

const seen = new Set<string>();

function refusalsOf(text: string): readonly Refusal[] {
  const read = readJob(text);
  const refusals = read.ok ? [] : read.refusals;
  for (const { code, message, remedy, found } of refusals) {
    seen.add(code);
    for (const words of [message, remedy, found]) expect(words).toMatch(/\S/);
    expect(message.length + remedy.length + found.length).toBeLessThan(3000);
    expect(message + remedy).not.toMatch(/\{[a-zA-Z]+\}|undefined|\[object|NaN/);
  }
  return refusals;
}

function changed({ set = [], take = [] }: ChangedJob): string {
  const job = JSON.parse(demo);
  const holder = (path: Path) =>
    path.slice(0, -1).reduce((value, step) => value[step as keyof typeof value], job);
  for (const [path, value] of set) holder(path)[path.at(-1)!] = value;
  for (const path of take) delete holder(path)[path.at(-1)!];
  return JSON.stringify(job, null, 1);
}

/** Line on which the innermost name or item of a pointer stands in text of one value a line, found without our reader. */
function lineOfUnique(text: string, word: string): number {
  const lines = text.split("\n");
  const found = lines.findIndex((line) => line.includes(word));
  expect(lines.filter((line) => line.includes(word))).toHaveLength(1);
  return found + 1;
}

describe("a job with one thing wrong", () => {
  for (const change of changes) {
    test(change.claim, () => {
      const refusals = refusalsOf(changed(change));
      const places = refusals.map(({ code, pointer }) => [code, pointer]);
      const byPlace = (a: unknown, b: unknown) => (String(a) < String(b) ? -1 : 1);
      expect([...places].sort(byPlace)).toEqual([...change.refused].sort(byPlace));
      const said = refusals.map(({ message, remedy }) => `${message} ${remedy}`).join("\n");
      for (const words of change.says ?? []) expect(said).toContain(words);
      for (const { line } of refusals) expect(line).toBeGreaterThan(0);
    });
  }

  test("the line is the line of the value", () => {
    const text = changed({ claim: "", set: [[["wires", 2, "to"], "SLP.L"]], refused: [] });
    expect(refusalsOf(text)[0]?.line).toBe(lineOfUnique(text, '"SLP.L"'));
  });
});

describe("a text that is no job", () => {
  for (const { claim, text, refused } of texts) {
    test(claim, () => {
      expect(refusalsOf(text).map(({ code, line }) => [code, line])).toEqual(refused);
    });
  }

  test("reserved names pollute nothing", () => {
    readJob('{"__proto__": {"polluted": true}, "a": {"__proto__": {"polluted": true}}}');
    expect(Reflect.get({}, "polluted")).toBeUndefined();
  });

  test("something that is not text", () => {
    for (const value of [undefined, null, 7, {}, []]) {
      expect(refusalsOf(value as unknown as string)[0]?.code).toBe("text-not-text");
    }
  });
});

describe("a text made to cost much", () => {
  const job = JSON.parse(demo);
  const wires = (count: number, to: (i: number) => string) =>
    Array.from({ length: count }, (_, i) => ({ ...job.wires[i % 5], id: `W${i}`, to: to(i) }));
  const codes = (text: string) => [...new Set(refusalsOf(text).map(({ code }) => code))];

  test("10,000 wires read", () => {
    const many = { ...job, wires: wires(10_000, (i) => job.wires[i % 5].to) };
    expect(refusalsOf(JSON.stringify(many))).toEqual([]);
  });

  test("a name of 10 MB, as a value and as a key", () => {
    const long = "x".repeat(10_000_000);
    expect(codes(JSON.stringify({ ...job, name: long }))).toEqual(["field-text-too-long"]);
    expect(codes(JSON.stringify({ ...job, [long]: 1 }))).toEqual(["field-unknown"]);
  });

  test("brackets 100,000 deep", () => {
    expect(codes("[".repeat(100_000))).toEqual(["text-too-deep"]);
    expect(codes('{"a":'.repeat(100_000))).toEqual(["text-too-deep"]);
  });

  test("more than 20 MB, counted in bytes", () => {
    expect(codes(" ".repeat(20_000_001))).toEqual(["text-too-large"]);
    expect(codes(`"${"€".repeat(7_000_000)}"`)).toEqual(["text-too-large"]);
  });

  test("more wires than are read", () => {
    const many = { ...job, wires: wires(20_001, () => "F1.1") };
    expect(codes(JSON.stringify(many))).toEqual(["json-list-too-long"]);
  });

  test("six million empty things", () => {
    const text = `{"copperwrightJob":1,"parts":[${"{},".repeat(6_000_000)}{}]}`;
    expect(codes(text)).toEqual(["json-list-too-long", "json-too-many-values"]);
  });

  test("a million faults: 200 are listed and the rest counted", () => {
    const lists = Object.entries(job).map(([key, value]) => [
      key,
      Array.isArray(value) ? Array(20_000).fill({}) : value,
    ]);
    const refusals = refusalsOf(JSON.stringify(Object.fromEntries(lists)));
    expect(refusals).toHaveLength(201);
    expect(refusals.at(-1)?.code).toBe("more-problems");
  });

  test("one thing holding a hundred thousand values", () => {
    const positions = Array.from({ length: 20_000 }, (_, i) => ({ id: `P${i}`, joins: [] }));
    const parts = [...job.parts.slice(0, 4), { ...job.parts[4], positions }];
    expect(codes(JSON.stringify({ ...job, parts }))).toEqual(["item-too-large"]);
  });

  test("20,000 wires to names that are almost right", () => {
    const joints = Array.from({ length: 20_000 }, (_, i) => ({
      id: `JOINT-IN-THE-HEADLAMP-${i}`,
      kind: "bus",
      ways: ["1"],
    }));
    const many = { ...job, joints, wires: wires(20_000, (i) => `JOINT-IN-THE-HEADLAMB-${i}.1`) };
    const refusals = refusalsOf(JSON.stringify(many));
    expect(refusals[0]?.remedy).toBe('Did you mean "JOINT-IN-THE-HEADLAMP-0"?');
    expect(refusals).toHaveLength(201);
  });
});

afterAll(() => {
  const catalogue = { ...refusalsOfText, ...refusalsOfFields, ...refusalsOfReferences };
  expect(Object.keys(catalogue).filter((code) => !seen.has(code))).toEqual([]);
});
