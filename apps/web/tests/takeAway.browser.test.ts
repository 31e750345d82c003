import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import { goToStep, openDemo, type RunningBench, saved, startBench } from "./benchForTests.ts";

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

/** The file in a browser that has no network at all, as a phone in a shed. */
async function inTheShed(file: string, colorScheme: "light" | "dark"): Promise<Page> {
  const context = await bench.browser.newContext({
    viewport: { width: 390, height: 844 },
    colorScheme,
    offline: true,
    hasTouch: true,
  });
  const page = await context.newPage();
  await page.goto(`file://${file}`);
  return page;
}

const wide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

test("the take-away is ticked and read into on a phone without a network, and its ticks come home", async () => {
  const { page } = await bench.device();
  await openDemo(page, "Two spot lamps");
  await goToStep(page, "papers");
  await page.locator("summary", { hasText: "Take-away" }).click();
  const [made] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "save the take-away" }).click(),
  ]);
  const file = join(bench.folder, "take-away.html");
  await made.saveAs(file);

  const dark = await inTheShed(file, "dark");
  expect(await axeFaults(dark)).toEqual([]);
  await dark.emulateMedia({ media: "print", colorScheme: "dark" });
  const printed = await dark.evaluate(() => {
    const { color, backgroundColor } = getComputedStyle(document.body);
    return [color, backgroundColor];
  });
  expect(printed).toEqual(["rgb(0, 0, 0)", "rgb(255, 255, 255)"]);

  const shed = await inTheShed(file, "light");
  expect(await axeFaults(shed)).toEqual([]);
  expect(await wide(shed)).toBeLessThanOrEqual(0);
  await shed.getByLabel("done by").fill("Rider");
  const card = shed.locator("#build article").first();
  for (const box of await card.getByRole("checkbox").all()) await box.tap();
  const ohms = shed.locator("input[data-unit=ohm][data-most]");
  const says = (index: number) => ohms.nth(index).locator("+ output");
  for (const [index, typed, words] of [
    [0, "0.02", "good"],
    [1, "abc", "type a number in ohm"],
    [2, "20 MΩ", "type a number in ohm"],
    [3, "9 Ω", "outside"],
  ] as const) {
    await ohms.nth(index).fill(typed);
    expect(await says(index).innerText(), typed).toBe(words);
  }
  expect(await axeFaults(shed)).toEqual([]);
  await shed.reload();
  expect(await card.getByRole("checkbox", { checked: true }).count()).toBe(3);
  expect(await says(3).innerText()).toBe("outside");
  const [ticks] = await Promise.all([
    shed.waitForEvent("download"),
    shed.getByRole("button", { name: "save the ticks" }).tap(),
  ]);
  const ticksFile = join(bench.folder, "ticks.json");
  await ticks.saveAs(ticksFile);

  const back = page.locator("details", { hasText: "Take-away" }).locator("input[type=file]");
  await back.setInputFiles(ticksFile);
  await page
    .getByText("Taken back: 3 ticks and 2 readings, 0 of them known already.")
    .first()
    .waitFor();
  await back.setInputFiles(ticksFile);
  await page.getByText("Nothing new: all 5 ticks and readings").first().waitFor();
  await saved(page);
  await goToStep(page, "test");
  await page.locator(".test-section", { hasText: /1 outside/ }).waitFor();
  await goToStep(page, "build");
  // The first wire is done, so the next one is on the card.
  await page
    .getByText(/^wire, 2 of \d+$/)
    .first()
    .waitFor();
}, 240_000);
