import { readFileSync, writeFileSync } from "node:fs";
import { unzipSync } from "fflate";
import { PDFDocument } from "pdf-lib";
import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import { goToStep, openDemo, type RunningBench, startBench } from "./benchForTests.ts";
import { SCREENS } from "./everyScreen.ts";
import { expectSameAsCommand } from "./sameAsCommand.ts";

const STOCK = [
  "code,description,kind,make,unit,price,currency,pack",
  "T1,ring M6,terminal,ring-M6,each,0.20,EUR,10",
  "W1,thin wall 1 mm2,wire,thin-1.0,m,0.60,EUR,",
].join("\n");

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

async function measurePrinter(page: Page, across: string, down: string): Promise<void> {
  await page.getByLabel("bar across").fill(across);
  await page.getByLabel("bar down").fill(down);
  await page.getByRole("button", { name: "keep both readings" }).click();
}

async function saved(page: Page, act: Locator): Promise<Uint8Array> {
  const [download] = await Promise.all([page.waitForEvent("download"), act.click()]);
  return readFileSync(await download.path());
}

/** Pages of a PDF, mm. */
async function pagesMm(pdf: Uint8Array): Promise<readonly (readonly [number, number])[]> {
  const read = await PDFDocument.load(pdf);
  const mm = (points: number): number => Math.round((points * 25.4) / 72);
  return read.getPages().map((page) => [mm(page.getWidth()), mm(page.getHeight())] as const);
}

describe("papers with every option", () => {
  test("are those of the command with the same words", async () => {
    const { context, page } = await bench.device();
    await openDemo(page, "Two spot lamps");
    await goToStep(page, "parts");
    await page.locator("input[type=file][accept*=csv]").setInputFiles({
      name: "stock.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(STOCK),
    });
    await page.getByText(/EUR|€/).first().waitFor();
    await goToStep(page, "papers");
    await page.locator("summary", { hasText: "Paper and printer" }).click();
    await page.getByText("Letter", { exact: true }).click();
    await page.getByText("black ink only").click();
    for (const [label, typed] of [
      ["greatest width of a loom board", "90 cm"],
      ["printer's margin", "12"],
      ["overlap of sheets", "15 mm"],
    ] as const) {
      await page.getByLabel(label).fill(typed);
      await page.keyboard.press("Enter");
    }
    await page.getByLabel("boards corrected for the printer").selectOption("another");
    await page.getByLabel("your name for the printer").fill("garage");
    await measurePrinter(page, "98", "99,5");
    await page.getByText(/98\.00 mm across and\s+99\.50 mm down/).waitFor();
    await page.getByRole("button", { name: "make all papers" }).click();
    const all = page.getByRole("button", { name: /save all \d+ files/ });
    await all.waitFor({ timeout: 120_000 });
    const files = unzipSync(await saved(page, all));
    const stock = `${bench.folder}/stock.csv`;
    writeFileSync(stock, STOCK);
    const words = "--paper letter --ink black --board-width 900 --margin 12 --overlap 15";
    const printer = "--printer garage --bar-across 98 --bar-down 99.5 --stock";
    await expectSameAsCommand(bench.folder, page, files, [
      ...words.split(" "),
      ...printer.split(" "),
      stock,
    ]);
    // Measured again on a corrected sheet, the reading adds to what was kept.
    await page.locator("summary", { hasText: "measured again" }).click();
    await measurePrinter(page, "100.5", "100");
    await page.getByText(/98\.49 mm across/).waitFor();
    await page.getByText("Made before the last change of job or paper.").waitFor();
    await page.reload();
    await page.locator("summary", { hasText: "corrected for garage" }).click();
    await page.getByText(/98\.49 mm across/).waitFor();
    await page.getByRole("button", { name: "forget this printer" }).click();
    await page.locator("summary", { hasText: "not corrected" }).waitFor();
    await context.close();
  }, 300_000);
});

describe.each(SCREENS)("at $width x $height", ({ width, height }) => {
  test("a reading of no bar, of one way, and of a printer without a name are refused where they stand", async () => {
    const palette = width === 1024 ? "night" : "paper";
    const { context, page } = await bench.device({ width, height, palette });
    await openDemo(page, "Two spot lamps");
    await goToStep(page, "papers");
    await page.locator("summary", { hasText: "Paper and printer" }).click();
    await page.getByLabel("boards corrected for the printer").selectOption("another");
    const keep = page.getByRole("button", { name: "keep both readings" });
    await keep.click();
    await page.getByText("Give the printer a name of your own first.").waitFor();
    await page.getByLabel("your name for the printer").fill("garage");
    await measurePrinter(page, "72", "99");
    await page.getByText("that is no reading of the 100 mm bar.").waitFor();
    await page.getByText("measure the bar across as well").waitFor();
    await measurePrinter(page, "wide", "99");
    await page.getByText('"wide" is no number').waitFor();
    await page.getByLabel("greatest width of a loom board").fill("10 cm");
    await page.getByText(/must lie between 350/).waitFor();
    expect(await axeFaults(page)).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    expect(await page.evaluate(() => localStorage.getItem("copperwright-papers"))).toBeNull();
    await context.close();
  }, 120_000);
});

describe("one paper alone", () => {
  test("a sheet, a paper and a roll are saved from the preview, and a board from the loom board, by keys", async () => {
    const { context, page } = await bench.device();
    await openDemo(page, "Two spot lamps");
    await goToStep(page, "papers");
    const list = page.getByRole("region", { name: "Papers" });
    const board = list.getByRole("button", { name: /^Board: .* sheets$/ }).first();
    await board.focus();
    await page.keyboard.press("Enter");
    const preview = page.getByRole("region", { name: /^Preview of Board/ });
    await preview.getByRole("button", { name: "next sheet" }).click();
    await preview.getByText(/^sheet 2 of \d+$/).waitFor();
    const count = Number(/of (\d+)/.exec(await preview.getByRole("status").innerText())![1]);
    const file = await saved(page, preview.getByRole("button", { name: "save the file" }));
    expect(await pagesMm(file)).toHaveLength(count);
    const [opened] = await Promise.all([
      page.waitForEvent("popup"),
      preview.getByRole("button", { name: "print this sheet" }).click(),
    ]);
    expect(opened.url()).toMatch(/^blob:/);
    await opened.close();
    await page.getByText("Print at 100 %, with no fitting to the page").first().waitFor();
    await goToStep(page, "loomBoard");
    const printing = page.getByRole("region", { name: "Printing" });
    await printing.getByLabel("one roll").focus();
    await page.keyboard.press("Space");
    const roll = await saved(page, printing.getByRole("button", { name: "save the file" }));
    const [[across], ...more] = (await pagesMm(roll)) as [readonly [number, number]];
    expect(more).toEqual([]);
    expect(across).toBeGreaterThan(297);
    await context.close();
  }, 180_000);
});

describe("the revision printed", () => {
  test("is the server's; what is not saved yet is counted beside it", async () => {
    const { context, page } = await bench.device();
    await openDemo(page, "Two spot lamps");
    const block = (words: string) =>
      page.locator(".paper-ground text").filter({ hasText: words }).first().waitFor();
    await goToStep(page, "papers");
    await block("accessory-five-wires, rev 1");
    await context.setOffline(true);
    await goToStep(page, "build");
    await page.locator(".end-panel").first().click();
    await goToStep(page, "papers");
    await block("accessory-five-wires, rev 1+1");
    await context.setOffline(false);
    await block("accessory-five-wires, rev 2");
    await context.close();
  }, 120_000);
});

describe("the browser's own print command", () => {
  test("prints the sheet on screen, by night as well, black on white on a page of its size", async () => {
    const { context, page } = await bench.device({ palette: "night" });
    await openDemo(page, "Two spot lamps");
    await goToStep(page, "papers");
    for (const [title, size] of [
      ["Circuit sheets", [210, 297]],
      ["Fuse schedule", [297, 210]],
    ] as const) {
      await page.getByRole("button", { name: new RegExp(`^${title}`) }).click();
      const drawing = page.getByRole("group", { name: `${title}, sheet 1` });
      await drawing.locator("text").first().waitFor();
      expect(await pagesMm(await page.pdf({ preferCSSPageSize: true })), title).toEqual([size]);
    }
    await page.emulateMedia({ media: "print" });
    const found = await page.evaluate(() => {
      const svg = document.querySelector(".scene-svg")!.getBoundingClientRect();
      const ink = getComputedStyle(document.querySelector(".scene-svg text")!).fill;
      const { backgroundColor } = getComputedStyle(document.querySelector(".sheet")!);
      return { ink, backgroundColor, at: [svg.left, svg.top], wide: svg.width / innerWidth };
    });
    expect(found).toEqual({
      ink: "rgb(0, 0, 0)",
      backgroundColor: "rgb(255, 255, 255)",
      at: [0, 0],
      wide: 1,
    });
    await context.close();
  }, 120_000);
});
