import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { documentToPdf } from "./documentToPdf.ts";
import { textAreaMm } from "./measureTextMm.ts";
import { readPaperFonts } from "./readPaperFonts.fixture.ts";
import { type Mark, point, type TextMark } from "./scene.ts";

const fonts = readPaperFonts();
const folder = mkdtempSync(join(tmpdir(), "content-"));
const DOTS_PER_MM = 10;

/** Columns and rows with ink, mm, of a page with these marks. */
async function inkMm(marks: readonly Mark[]) {
  const page = { widthMm: 100, heightMm: 100, title: "Test", bookmark: [], marks };
  const document = { title: "Test", subject: "", date: "2026-03-01", pages: [page] };
  const path = join(folder, "page");
  writeFileSync(`${path}.pdf`, await documentToPdf(document, fonts));
  execFileSync("pdftoppm", ["-r", "254", "-gray", "-singlefile", `${path}.pdf`, path]);
  const image = readFileSync(`${path}.pgm`);
  const header = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(image.subarray(0, 40).toString("latin1"))!;
  const width = Number(header[1]);
  const [xMm, yMm]: [number[], number[]] = [[], []];
  image.subarray(header[0].length).forEach((grey, i) => {
    if (grey > 127) return;
    xMm.push((i % width) / DOTS_PER_MM);
    yMm.push(Math.floor(i / width) / DOTS_PER_MM);
  });
  const ends = (of: readonly number[]) =>
    of.reduce(([least, most], mm) => [Math.min(least!, mm), Math.max(most!, mm)], [1e9, -1e9]);
  return { x: ends(xMm), y: ends(yMm), dots: xMm.length };
}

const text = (turnDeg: number, anchor: TextMark["anchor"], words = "HEMHEM"): TextMark => ({
  kind: "text",
  at: point(50, 50),
  text: words,
  capHeightMm: 3.5,
  weight: 700,
  anchor,
  colour: "ink",
  turnDeg,
});

it.each([0, 90, 180, 270, 37])("turns letters by %s degrees about their anchor", async (deg) => {
  for (const anchor of ["start", "middle", "end"] as const) {
    const mark = text(deg, anchor);
    const { x, y } = await inkMm([mark]);
    const area = textAreaMm(mark);
    // Capitals leave the box of tall letters and tails free by at most a third of their height, and each letter its own small margin.
    const slackMm = 3.5 / 3 + 0.5;
    expect(x[0]! - area.xMm).toBeGreaterThanOrEqual(-0.1);
    expect(x[0]! - area.xMm).toBeLessThan(slackMm);
    expect(area.xMm + area.widthMm - x[1]!).toBeGreaterThanOrEqual(-0.1);
    expect(area.xMm + area.widthMm - x[1]!).toBeLessThan(slackMm);
    expect(y[0]! - area.yMm).toBeGreaterThanOrEqual(-0.1);
    expect(y[0]! - area.yMm).toBeLessThan(slackMm);
    expect(area.yMm + area.heightMm - y[1]!).toBeGreaterThanOrEqual(-0.1);
    expect(area.yMm + area.heightMm - y[1]!).toBeLessThan(slackMm);
  }
});

it("sets an accent that has no letter of its own on the letter it rides on", async () => {
  const plain = await inkMm([text(0, "start", "R")]);
  const accented = await inkMm([text(0, "start", "R\u0304")]);
  expect(accented.dots).toBeGreaterThan(plain.dots);
  expect(accented.y[0]!).toBeLessThan(plain.y[0]! - 0.3);
  expect(accented.x[1]! - plain.x[1]!).toBeLessThan(0.5);
});

it("dashes one line and not the next, and rounds the corners of a box", async () => {
  const line = (yMm: number, dashMm?: readonly number[]): Mark => ({
    kind: "line",
    from: point(10, yMm),
    to: point(90, yMm),
    stroke: { widthMm: 1, colour: "ink", dashMm },
  });
  const both = await inkMm([line(20, [2, 2]), line(40)]);
  // 80 mm by 1 mm at 100 dots a square millimetre: half of it, then all of it.
  expect(both.dots / 100).toBeGreaterThan(116);
  expect(both.dots / 100).toBeLessThan(124);
  const area = { xMm: 20, yMm: 30, widthMm: 40, heightMm: 20 };
  const box = await inkMm([{ kind: "rect", area, cornerMm: 5, fill: "ink" }]);
  // Four corners lose (4 - π) r² together.
  expect(Math.abs(box.dots / 100 - (800 - (4 - Math.PI) * 25))).toBeLessThan(3);
});
