import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import { goToStep, openDemo, type RunningBench, startBench } from "./benchForTests.ts";

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());
afterEach(async () => {
  for (const context of bench.browser.contexts()) await context.close();
});

const step = (page: Page, name: string): Promise<void> =>
  page.locator(`.frame[data-step="${name}"]`).waitFor();
const away = (page: Page): Promise<void> => page.locator("#sheet").focus();

test("a key is changed by keyboard alone, acts at once, and is still so after the page is opened anew", async () => {
  const { page } = await bench.device();
  await openDemo(page, "Aldreth");
  await goToStep(page, "circuits");
  await away(page);
  await page.keyboard.press("?");
  const slip = page.getByRole("region", { name: "Keys" });
  await slip.getByLabel("the step after", { exact: true }).focus();
  await page.keyboard.press("n");
  expect(await slip.getByLabel("the step after", { exact: true }).inputValue()).toBe("n");
  await page.keyboard.press("Escape");
  await slip.waitFor({ state: "detached" });
  await away(page);
  await page.keyboard.press("]");
  await page.keyboard.press("n");
  await step(page, "try");
  await page.reload();
  await step(page, "try");
  await away(page);
  await page.keyboard.press("n");
  await step(page, "proof");
});

test("a key that is taken is refused with the reason; emptied it does nothing; all can be put back", async () => {
  const { page } = await bench.device();
  await openDemo(page, "Aldreth");
  await page.getByRole("button", { name: "keys", exact: true }).click();
  const slip = page.getByRole("region", { name: "Keys" });
  const find = slip.getByLabel("find anything");
  await find.focus();
  await page.keyboard.press("w");
  await slip.getByText(/"w" is taken: read the working aloud/).waitFor();
  expect(await find.inputValue()).toBe("/");
  await find.fill("");
  expect(await axeFaults(page)).toEqual([]);
  await slip.getByRole("button", { name: "close" }).click();
  await away(page);
  await page.keyboard.press("/");
  expect(await page.locator(".finder").count()).toBe(0);
  await page.keyboard.press("?");
  await slip.getByRole("button", { name: "all as they were at first" }).click();
  await slip.getByRole("button", { name: "close" }).click();
  await away(page);
  await page.keyboard.press("/");
  await page.locator(".finder").waitFor();
});

test("switched off, no single key acts anywhere, and what goes with Control still does", async () => {
  const { page } = await bench.device();
  await openDemo(page, "Aldreth");
  await goToStep(page, "circuits");
  await page.getByRole("button", { name: "keys", exact: true }).click();
  const slip = page.getByRole("region", { name: "Keys" });
  await slip.getByLabel("single keys act on this device").uncheck();
  await slip.getByRole("button", { name: "close" }).click();
  const layer = page.locator(".scene-layer").first();
  await page.locator(".scene").first().focus();
  const before = await layer.getAttribute("style");
  for (const key of ["+", "]", "/", "?", "w"]) await page.keyboard.press(key);
  expect(await layer.getAttribute("style")).toBe(before);
  expect(await page.locator(".finder, .keys-slip").count()).toBe(0);
  await step(page, "circuits");
  // The arrows are no characters: they move the drawing still.
  await page.keyboard.press("ArrowLeft");
  expect(await layer.getAttribute("style")).not.toBe(before);
});

test("on a phone the keys are reached from the card, fit and are accessible", async () => {
  const { page } = await bench.device({ width: 390, height: 844, touch: true });
  await openDemo(page, "Aldreth");
  await page.getByRole("button", { name: "Open the card" }).click();
  await page.getByRole("button", { name: "keys", exact: true }).click();
  const slip = page.getByRole("region", { name: "Keys" });
  await slip.getByLabel("single keys act on this device").uncheck();
  expect(await axeFaults(page)).toEqual([]);
  const box = (await slip.boundingBox())!;
  expect(box.x).toBeGreaterThanOrEqual(0);
  expect(box.x + box.width).toBeLessThanOrEqual(391);
});
