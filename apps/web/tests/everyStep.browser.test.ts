import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import { goToStep, openDemo, type RunningBench, settled, startBench } from "./benchForTests.ts";
import { JOB_STEPS, SCREENS } from "./everyScreen.ts";

const SIZES = SCREENS.map(
  (screen, i) => ({ ...screen, palette: i === 1 ? "night" : "paper" }) as const,
);

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

/** What a step shows once its answers are there. */
async function atRest(page: Page): Promise<void> {
  await settled(page);
  await page.locator("#sheet .waiting").waitFor({ state: "detached" });
  await page.waitForTimeout(600);
}

/** Letters smaller than allowed, outside drawings (which zoom). */
const smallLetters = (page: Page, leastPx: number): Promise<string[]> =>
  page.evaluate((least) => {
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const parent = node.parentElement;
      const words = node.textContent?.trim() ?? "";
      if (
        parent === null ||
        words === "" ||
        parent.closest("svg, .only-spoken, script, style") !== null
      )
        continue;
      if (parent.getClientRects().length === 0) continue;
      const px = Number.parseFloat(getComputedStyle(parent).fontSize);
      if (px < least) found.push(`${words.slice(0, 30)} ${px}`);
    }
    return found.slice(0, 5);
  }, leastPx);

describe.each(SIZES)("at $width x $height, $palette", ({ width, height, palette }) => {
  test("every step opens without a fault, is accessible, readable, and keeps to the width of the screen", async () => {
    const { context, page } = await bench.device({ width, height, palette });
    const faults: string[] = [];
    page.on("pageerror", (error) => faults.push(`page error: ${error.message}`));
    faults.push(...(await axeFaults(page)).map((fault) => `jobs ${fault}`));
    await openDemo(page, "Aldreth");
    for (const step of JOB_STEPS) {
      await goToStep(page, step);
      await atRest(page);
      const alert = await page.locator("#sheet .fault").count();
      if (alert > 0) faults.push(`${step}: could not be drawn`);
      faults.push(...(await axeFaults(page)).map((fault) => `${step} ${fault}`));
      faults.push(...(await smallLetters(page, 13)).map((words) => `${step} small: ${words}`));
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      if (wide > 0) faults.push(`${step}: ${wide} px wider than the screen`);
    }
    expect(faults).toEqual([]);
    await context.close();
  }, 240_000);
});

describe("by keyboard alone", () => {
  test("a job is made, every step walked, a wire found, and an edit undone", async () => {
    const { context, page } = await bench.device();
    const make = page.getByRole("button", { name: /^Two spot lamps/ }).last();
    for (let i = 0; i < 80; i++) {
      await page.keyboard.press("Tab");
      if (await make.evaluate((button) => button === document.activeElement)) break;
    }
    await page.keyboard.press("Enter");
    await page.waitForURL(/#\/job\//);
    await settled(page);
    for (const step of JOB_STEPS.slice(1)) {
      await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
      await page.keyboard.press("]");
      await page.locator(`.frame[data-step="${step}"]`).waitFor();
    }
    await page.keyboard.press("/");
    await page.keyboard.type("W3");
    await page.keyboard.press("Enter");
    await goToStep(page, "build");
    await page.getByRole("article", { name: "Wire 3" }).waitFor();
    const end = page.locator(".end-panel").first();
    await end.focus();
    await page.keyboard.press("Enter");
    await page.locator(".end-panel[aria-pressed=true]").waitFor();
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.keyboard.press("Control+z");
    await page.locator(".end-panel[aria-pressed=true]").waitFor({ state: "detached" });
    await page.keyboard.press("Control+Shift+Z");
    await page.locator(".end-panel[aria-pressed=true]").waitFor();
    await context.close();
  });
});

describe("a hostile job", () => {
  test("is refused with its reasons, and its words never become markup", async () => {
    const { context, page } = await bench.device();
    const pick = (name: string, text: string): Promise<void> =>
      page
        .locator('input[type=file][accept*=".json"]')
        .setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
    await pick("broken.json", '{"copperwrightJob": 1, "copperwrightJob": 1}');
    await page.locator(".sum-said").filter({ hasText: /\w/ }).waitFor();
    expect(page.url()).toMatch(/#\/jobs$/);
    const demo = await page.evaluate(async () => (await fetch("/api/demos")).status);
    expect(demo).toBe(200);
    const { readFileSync } = await import("node:fs");
    const job = JSON.parse(readFileSync("demos/aldreth-single.json", "utf8"));
    const evil = '<img src=x onerror="window.__hurt=1">';
    job.name = evil;
    job.machine.model = evil;
    for (const station of job.stations) station.name = evil;
    for (const part of job.parts) part.name = evil;
    for (const wire of job.wires) wire.number = "<b>1</b>";
    await pick("evil.json", JSON.stringify(job));
    await page.waitForURL(/#\/job\//);
    await settled(page);
    for (const step of JOB_STEPS) {
      await goToStep(page, step);
      await atRest(page);
      expect(await page.locator("#sheet img[src=x], #sheet b:text-is('1')").count(), step).toBe(0);
    }
    expect(await page.evaluate(() => Reflect.get(window, "__hurt"))).toBeUndefined();
    await context.close();
  });
});
