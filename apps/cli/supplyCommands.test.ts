import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { runWith } from "./worldForTests.fixture.ts";

const single = "demos/aldreth-single.json";
const four = "demos/minazuru-four.json";
const tooWide = (text: string) => text.split("\n").filter((line) => [...line].length > 100);

describe("supply", () => {
  test("answers in words, a line never wider than a terminal", async () => {
    const { code, out } = await runWith(["supply", four]);
    expect(code).toBe(0);
    expect(tooWide(out)).toEqual([]);
    for (const word of [
      "balance rpm",
      "town",
      "starter",
      "to empty",
      "Key left on",
      "remembered",
    ]) {
      expect(out).toContain(word);
    }
  });

  test("answers in one object with the same balance, every figure with its source", async () => {
    const { code, out } = await runWith(["supply", single, "--json"]);
    expect(code).toBe(0);
    const answer = JSON.parse(out);
    expect(answer.contract).toBe("copperwright/supply/1");
    expect(answer.refusals).toEqual([]);
    expect(answer.noCranking).toBe("no starter");
    const main = answer.balances.find(({ state }: { state: string }) => state === "main-riding");
    expect(main.balanceLowRpm).toBeLessThan(main.balanceRpm);
    expect(main.balanceRpm).toBeLessThan(main.balanceHighRpm);
    for (const figure of answer.figures) {
      expect(figure.source).not.toBe("");
      expect(figure.confidence).not.toBe("");
    }
  });

  test("loads thought of move the balance, and both speeds are told", async () => {
    const { out } = await runWith(["supply", four, "--add", "36", "--json"]);
    const answer = JSON.parse(out);
    answer.balances.forEach((one: { balanceRpm: number }, k: number) => {
      expect(one.balanceRpm).toBeGreaterThan(answer.beforeChanges[k].balanceRpm);
    });
    const led = JSON.parse((await runWith(["supply", four, "--led", "HEAD=20", "--json"])).out);
    expect(led.balances[0].demandA).toBeLessThan(led.beforeChanges[0].demandA - 2);
  });

  test("a ride of one's own replaces the ready ones", async () => {
    const trace =
      "timeS,speedRpm,lights\n0,1200,dip-riding\n600,4000,dip-riding\n1200,0,off\n1800,0,off\n";
    const { code, out } = await runWith(["supply", four, "--trace", "ride.csv", "--json"], {
      "ride.csv": trace,
    });
    expect(code).toBe(0);
    const { rides } = JSON.parse(out);
    expect(rides.map(({ ride }: { ride: string }) => ride)).toEqual(["trace"]);
    expect(rides[0].durationS).toBe(1800);
  });

  test.each([
    ["--volts", "many"],
    ["--start", "120"],
    ["--add", "-3"],
    ["--led", "NONE=3"],
    ["--trace", "no-such.csv"],
  ])("%s %s is refused", async (option, value) => {
    const { code, err } = await runWith(["supply", single, option, value]);
    expect(code).toBe(2);
    expect(err).toContain(option);
  });
});

describe("convert", () => {
  test("writes a job that reads and checks, and says what becomes of every part", async () => {
    const { code, out } = await runWith(["convert", single, "--to", "12", "--out", "new.json"]);
    expect(code).toBe(0);
    expect(tooWide(out)).toEqual([]);
    for (const { id } of JSON.parse(readFileSync(single, "utf8")).parts) expect(out).toContain(id);
    expect(out).toContain("Wrote new.json");
  });

  test.each([
    [["--to", "24"], "--to"],
    [[], "--to"],
    [["--earth", "up"], "--earth"],
  ])("%j is refused", async (words, named) => {
    const { code, err } = await runWith(["convert", single, ...words]);
    expect(code).toBe(2);
    expect(err).toContain(named);
  });
});
