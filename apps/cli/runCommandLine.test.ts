import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { runWith } from "./worldForTests.fixture.ts";

const demos = readdirSync("demos")
  .filter((name) => name.endsWith(".json"))
  .map((name) => name.replace(".json", ""));
const single = "demos/aldreth-single.json";

const tooWide = (text: string) => text.split("\n").filter((line) => [...line].length > 100);

describe("words that make no command", () => {
  test("no word: help, and the shell is told", async () => {
    const { code, out } = await runWith([]);
    expect(code).toBe(2);
    expect(out).toContain("check");
  });

  test("an unknown command is refused in words", async () => {
    const { code, err } = await runWith(["chekc", single]);
    expect(code).toBe(2);
    expect(err).toMatch(/unknown command/);
    expect(err).not.toMatch(/\n\s+at /);
  });

  test("an unknown option with --json still answers with one object", async () => {
    const { code, out } = await runWith(["check", single, "--bogus", "--json"]);
    expect(code).toBe(2);
    expect(JSON.parse(out).refusals).toHaveLength(1);
  });

  test("help names every command there is and no other", async () => {
    const { code, out } = await runWith(["--help"]);
    expect(code).toBe(0);
    for (const name of ["demo", "check", "pack", "operate", "spice", "wire", "bundle"]) {
      expect(out).toContain(name);
    }
    expect(out).not.toMatch(/\bsupply\b.*volts/);
  });
});

describe("a job that cannot be read", () => {
  test.each([
    ["no such file", "nowhere.json", {}],
    ["not JSON", "bad.json", { "bad.json": "{" }],
    ["another document", "bad.json", { "bad.json": "[]" }],
  ])("%s: exit 2, place and remedy", async (_, path, files) => {
    for (const command of ["check", "operate"]) {
      const { code, out } = await runWith([command, path, "--json"], files);
      expect(code).toBe(2);
      const { refusals, contract } = JSON.parse(out);
      expect(contract).toBe(`copperwright/${command}/1`);
      expect(refusals.length).toBeGreaterThan(0);
      for (const refusal of refusals) {
        expect(refusal.message).not.toBe("");
        expect(refusal.remedy).not.toBe("");
      }
      expect(Object.keys(JSON.parse(out))).toEqual([
        "contract",
        "engineVersion",
        "job",
        "refusals",
      ]);
    }
  });
});

describe("operate", () => {
  test("every wrong word is named at once", async () => {
    const { code, out } = await runWith([
      "operate",
      single,
      "--json",
      "--set",
      "LSW",
      "--engine",
      "fast",
      "--battery",
      "empty",
      "--short",
      "A=B=C",
    ]);
    expect(code).toBe(2);
    expect(
      JSON.parse(out)
        .refusals.map((one: { pointer: string }) => one.pointer)
        .sort(),
    ).toEqual(["--battery", "--engine", "--set", "--short"]);
  });

  test("an unknown position is refused with those there are", async () => {
    const { code, err } = await runWith(["operate", single, "--set", "LSW=X"]);
    expect(code).toBe(2);
    expect(err).toContain("LSW");
    expect(err).toMatch(/\bH\b/);
  });

  test("main beam: the lamp is lit and the answer carries the whole contract", async () => {
    const { code, out } = await runWith(["operate", single, "--set", "LSW=H", "--json"]);
    expect(code).toBe(0);
    const answer = JSON.parse(out);
    for (const field of [
      "state",
      "reference",
      "converged",
      "kclResidualA",
      "pins",
      "elements",
      "wires",
      "lamps",
      "relays",
      "fuses",
      "batteries",
      "strayLit",
      "afterFuses",
    ]) {
      expect(answer).toHaveProperty(field);
    }
    expect(
      answer.lamps.find(
        (lamp: { filament: string; part: string }) =>
          lamp.part === "HEAD" && lamp.filament === "MAIN-E",
      ).lit,
    ).toBe(true);
    expect(out).not.toMatch(/NaN|Infinity/);
  });
});

describe("the simulator's text", () => {
  test("begins and ends as the contract says, in ASCII", async () => {
    const { code, out } = await runWith(["spice", single, "--set", "LSW=H"]);
    expect(code).toBe(0);
    expect(out).toMatch(/^\* copperwright spice 1, job [0-9a-f]{64}, state/);
    expect(out.trimEnd().endsWith(".end")).toBe(true);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the point is that there are none
    expect(out).not.toMatch(/[^\x00-\x7f]/);
  });
});

describe("demos", () => {
  test("the first word of each line is a name that opens", async () => {
    const { out } = await runWith(["demo"]);
    const names = out
      .trimEnd()
      .split("\n")
      .map((line) => line.split(" ")[0]!);
    expect(names).toEqual([...demos].sort());
    for (const name of names)
      expect((await runWith(["demo", name])).out.startsWith("{")).toBe(true);
  });

  test.each(demos)(
    "%s: check and operate fit a hundred columns, and check agrees with its JSON",
    async (name) => {
      const path = `demos/${name}.json`;
      const words = await runWith(["check", path]);
      const json = await runWith(["check", path, "--json"]);
      expect(tooWide(words.out)).toEqual([]);
      expect(words.code).toBe(json.code);
      const answer = JSON.parse(json.out);
      expect(json.code).toBe(answer.verdict === "fit" ? 0 : 1);
      expect(tooWide((await runWith(["operate", path])).out)).toEqual([]);
    },
  );
});

describe("wire and bundle", () => {
  test("32/0.20 is read, a bare 2 mm is asked about", async () => {
    const good = await runWith(["wire", "32/0.20", "--json"]);
    expect(JSON.parse(good.out).areaMm2).toBeCloseTo(1.0053, 4);
    const bare = await runWith(["wire", "2", "mm", "--json"]);
    expect(bare.code).toBe(2);
    expect(JSON.parse(bare.out).refusals[0].message).toMatch(/area|diameter/i);
  });

  test("seven equal wires lie in three diameters", async () => {
    const { code, out } = await runWith(["bundle", "2x7", "--json"]);
    expect(code).toBe(0);
    expect(JSON.parse(out).tightestMm).toBeCloseTo(6, 6);
  });
});
