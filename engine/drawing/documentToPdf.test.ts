import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, expect, it, vi } from "vitest";
import { documentToPdf } from "./documentToPdf.ts";
import { measureSquare, scaleBar } from "./measureMarks.ts";
import { measureTextMm } from "./measureTextMm.ts";
import { missingGlyphs } from "./missingGlyphs.ts";
import { palettes } from "./palette.ts";
import { readPaperFonts } from "./readPaperFonts.fixture.ts";
import { sampleDocument } from "./sampleDocument.fixture.ts";
import { type DrawingDocument, type Mark, point } from "./scene.ts";
import { TEXT_STYLE, textMark } from "./textBlock.ts";

const fonts = readPaperFonts();
const folder = mkdtempSync(join(tmpdir(), "paper-"));

const onePage = (marks: readonly Mark[]): DrawingDocument => ({
  title: "Test",
  subject: "job 1, revision 1",
  date: "2026-03-01",
  pages: [{ widthMm: 210, heightMm: 297, title: "Test", bookmark: [], marks }],
});

async function written(document: DrawingDocument, name: string): Promise<string> {
  const path = join(folder, `${name}.pdf`);
  writeFileSync(path, await documentToPdf(document, fonts));
  return path;
}

const run = (command: string, ...args: string[]): string =>
  execFileSync(command, args, { encoding: "utf8", maxBuffer: 1e9 });

afterEach(() => {
  vi.useRealTimers();
});

it("gives the same bytes for the same document, whatever the clock says", async () => {
  const first = await documentToPdf(sampleDocument(), fonts);
  vi.useFakeTimers({ now: new Date("2031-07-01T12:34:56Z"), toFake: ["Date"] });
  const second = await documentToPdf(sampleDocument(), fonts);
  expect(Buffer.from(second).equals(Buffer.from(first))).toBe(true);
  vi.useRealTimers();
  const other = await documentToPdf({ ...sampleDocument(), date: "2026-11-26" }, fonts);
  expect(Buffer.from(other).equals(Buffer.from(first))).toBe(false);
});

it("brings text of many scripts back", async () => {
  const lines = [
    "12.3 V = 3.75 A × 71.4 mΩ ≤ ½ ± 2 °C, 1.00 mm²",
    "Łukasz Żółć, Größe, señal, œuvre, Čeněk, İğne",
    "Провод от аккумулятора, Ѓорѓи",
    "Καλώδιο Δ ρ μ √ ∞ → ✓ ✗",
    "“quoted” – dash — … € £",
  ];
  const document = onePage(
    lines.flatMap((line, i) => [
      textMark(line, 20, 30 + i * 20, TEXT_STYLE.text),
      textMark(line, 20, 40 + i * 20, { ...TEXT_STYLE.text, weight: 800 }),
    ]),
  );
  expect(missingGlyphs(document)).toEqual([]);
  const text = run("pdftotext", "-layout", await written(document, "scripts"), "-").normalize(
    "NFC",
  );
  for (const line of lines) {
    expect(text.split("\n").filter((found) => found.trim() === line)).toHaveLength(2);
  }
});

it("embeds subsets of all fonts it uses and names pages in the outline", async () => {
  const path = await written(sampleDocument(), "sample");
  const fontLines = run("pdffonts", path).trim().split("\n").slice(2);
  expect(fontLines.length).toBeGreaterThan(4);
  for (const line of fontLines) expect(line).toMatch(/Identity-H\s+yes yes yes/);
  const info = run("pdfinfo", path);
  expect(info).toContain("Title:           Sample papers");
  expect(info).toMatch(/CreationDate: .*Nov 25 .*2026/);
  const bytes = readFileSync(path, "latin1");
  expect(bytes.match(/\/Title \(/g)!.length).toBeGreaterThan(5);
  const all = run("pdftotext", path, "-");
  const pageCount = sampleDocument().pages.length;
  for (let n = 1; n <= pageCount; n++) expect(all).toContain(`${n} of ${pageCount}`);
});

/** Columns and rows with ink in them, in tenths of a millimetre: the page is rendered at 254 dpi, 10 dots to the millimetre. */
function inkExtent(path: string): { left: number; right: number; top: number; bottom: number } {
  run("pdftoppm", "-r", "254", "-gray", "-singlefile", path, path);
  const image = readFileSync(`${path}.pgm`);
  const header = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(image.subarray(0, 40).toString("latin1"))!;
  const width = Number(header[1]);
  const dots = image.subarray(header[0].length);
  const extent = { left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity };
  dots.forEach((grey, i) => {
    if (grey > 127) return;
    const x = i % width;
    const y = Math.floor(i / width);
    extent.left = Math.min(extent.left, x);
    extent.right = Math.max(extent.right, x + 1);
    extent.top = Math.min(extent.top, y);
    extent.bottom = Math.max(extent.bottom, y + 1);
  });
  return extent;
}

it("keeps lengths true within 0.1 mm", async () => {
  const onlyStrokes = (marks: Mark[]): Mark[] => marks.filter(({ kind }) => kind !== "text");
  const bar = inkExtent(await written(onePage(onlyStrokes(scaleBar(point(40, 50)))), "bar"));
  // The outer ticks are 0.35 mm wide and stand on 0 and 100.
  expect(Math.abs(bar.right - bar.left - 1003.5)).toBeLessThanOrEqual(1);
  expect(Math.abs(bar.left - 398.25)).toBeLessThanOrEqual(1);
  const square = inkExtent(
    await written(onePage(onlyStrokes(measureSquare(point(100, 200)))), "square"),
  );
  expect(Math.abs(square.right - square.left - 203.5)).toBeLessThanOrEqual(1);
  expect(Math.abs(square.bottom - square.top - 203.5)).toBeLessThanOrEqual(1);
  expect(Math.abs(square.top - 1998.25)).toBeLessThanOrEqual(1);
});

it("sets text exactly as wide as it was measured", async () => {
  const words = ["Headlamp", "AVAToWaffle", "1234567890", "Łódź", "провод", "ΔΩρ"];
  const weights = [400, 600, 700, 800] as const;
  const marks = weights.flatMap((weight, j) =>
    words.map((word, i) =>
      textMark(word, 20 + 40 * j, 30 + 12 * i, { ...TEXT_STYLE.part, weight }),
    ),
  );
  const path = await written(onePage(marks), "widths");
  const found = [
    ...run("pdftotext", "-bbox", path, "-").matchAll(
      /xMin="([\d.]+)" yMin="[\d.]+" xMax="([\d.]+)" yMax="[\d.]+">([^<]+)</g,
    ),
  ];
  expect(found).toHaveLength(marks.length);
  const mmPerPoint = 25.4 / 72;
  for (const [, from, to, word] of found) {
    const startMm = Number(from) * mmPerPoint;
    const weight = weights[Math.round((startMm - 20) / 40)]!;
    const widthMm = (Number(to) - Number(from)) * mmPerPoint;
    expect(
      Math.abs(widthMm - measureTextMm(word!, TEXT_STYLE.part.capHeightMm, weight)),
    ).toBeLessThan(0.05);
  }
});

it("replaces what no font has, visibly, and says so", async () => {
  const document = onePage([textMark("spanner 🔧 here", 20, 30, TEXT_STYLE.text)]);
  expect(missingGlyphs(document)).toEqual([
    { character: "🔧", text: "spanner 🔧 here", pageNumber: 1 },
  ]);
  const text = run("pdftotext", await written(document, "missing"), "-");
  expect(text).toContain("spanner \uFFFD here");
});

it("prints in black alone when greys are not wanted", async () => {
  const path = join(folder, "black.pdf");
  writeFileSync(
    path,
    await documentToPdf(sampleDocument(), fonts, { palette: palettes.printBlack }),
  );
  // Without smoothing every dot shows the colour that was asked for.
  run("pdftoppm", "-r", "40", "-aa", "no", "-aaVector", "no", path, join(folder, "black"));
  const shades = new Set<number>();
  for (let n = 1; n <= sampleDocument().pages.length; n++) {
    const image = readFileSync(join(folder, `black-${String(n).padStart(2, "0")}.ppm`));
    const header = /^P6\s+\d+\s+\d+\s+255\s/.exec(image.subarray(0, 40).toString("latin1"))!;
    for (const part of image.subarray(header[0].length)) shades.add(part);
  }
  expect([...shades].sort((a, b) => a - b)).toEqual([0, 255]);
});
