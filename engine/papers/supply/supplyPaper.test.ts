import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Mark } from "../../drawing/index.ts";
import { readJob } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { paperInput } from "../paperInput.ts";
import { supplyPaper } from "./supplyPaper.ts";

function paperOf(demo: string) {
  const path = new URL(`../../../demos/${demo}.json`, import.meta.url);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error("the demo reads");
  const { design, result } = checkedJob(read.job);
  const input = paperInput(design, result, { fingerprint: read.fingerprint, paper: "a4" });
  return supplyPaper(input, "12-supply");
}

const textsOf = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark) =>
    mark.kind === "text" ? [mark.text] : mark.kind === "group" ? textsOf(mark.marks) : [],
  );

test("a machine with a starter: both curves with their meeting, rides, two waterfalls, tables", () => {
  const { sheets, rows } = paperOf("minazuru-four");
  const texts = sheets.flatMap(({ marks }) => textsOf(marks)).join("\n");
  expect(texts).toMatch(/it can give/);
  expect(texts).toMatch(/balance 2.\d{3} rpm/u);
  for (const ride of ["town", "mixed", "night", "rally"])
    expect(texts).toMatch(new RegExp(`${ride} \\d`));
  expect(texts).toMatch(/starter motor gets/);
  expect(texts).toMatch(/headlamp bulb gets/);
  expect(texts).toMatch(/memory/);
  // One row a state and speed under the heading.
  expect(rows!.length).toBeGreaterThan(20);
  for (const row of rows!) expect(row.length).toBe(rows![0]!.length);
});

test("nothing stands outside its sheet", () => {
  for (const demo of ["aldreth-single", "brenzach-twin", "orivesta-enduro"]) {
    for (const { marks } of paperOf(demo).sheets) {
      for (const mark of marks) {
        const points =
          mark.kind === "polyline" ? mark.points : mark.kind === "line" ? [mark.from, mark.to] : [];
        for (const { xMm, yMm } of points) {
          expect(xMm).toBeGreaterThanOrEqual(20);
          expect(xMm).toBeLessThanOrEqual(200);
          expect(yMm).toBeGreaterThanOrEqual(10);
          expect(yMm).toBeLessThanOrEqual(287);
        }
      }
    }
  }
});

test("where the watts go, and what a capacitor in place of the battery does", () => {
  const textOf = (demo: string): string =>
    paperOf(demo)
      .sheets.flatMap(({ marks }) => textsOf(marks))
      .join("\n")
      .replace(/\s/gu, " ");
  const four = textOf("minazuru-four");
  expect(four).toMatch(/Heat of ALT, battery nearly full/);
  expect(four).toMatch(/shorts the winding: switching lamps off does not cool it/);
  expect(four).toMatch(/Not on this machine: an electric start needs a battery/);
  expect(four).not.toMatch(/Pole pairs/);
  const enduro = textOf("orivesta-enduro");
  const [, amps, farads] = /Here ([\d.]+) A at .* rpm on ([\d ]+) µF/.exec(enduro)!;
  const rows = enduro
    .slice(enduro.indexOf("Volts up and down"))
    .matchAll(/ (\d) (\d+) ([\d.]+) V/g);
  const read = [...rows].map(([, pairs, pulses, volts]) => [pairs, pulses, volts].map(Number));
  expect(read.map(([pairs]) => pairs)).toEqual([2, 3, 4, 6]);
  for (const [, pulseHz, volts] of read) {
    // Amps over farads and pulses a second; the amps are printed to a tenth.
    const expectedV = Number(amps) / ((Number(farads!.replaceAll(" ", "")) / 1e6) * pulseHz!);
    expect(Math.abs(volts! - expectedV)).toBeLessThan((expectedV * 0.05) / Number(amps) + 0.05);
  }
});
