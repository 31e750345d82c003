import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import { goToStep, openDemo, type RunningBench, startBench } from "./benchForTests.ts";

const listOf = (price: string): string =>
  `code,description,kind,make,unit,price,currency\nT1,ring M6,terminal,ring-M6,each,${price},EUR\n`;

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

const take = (page: Page, name: string, text: string): Promise<void> =>
  page
    .locator("input[type=file][accept*=csv]")
    .setInputFiles({ name, mimeType: "text/csv", buffer: Buffer.from(text) });

const inUse = (page: Page, words: RegExp) =>
  page.locator(".stock [role=status]").filter({ hasText: words }).waitFor({ timeout: 20_000 });

const total = (page: Page, figure: string) =>
  page.locator(".parts-total").filter({ hasText: figure }).waitFor({ timeout: 20_000 });

test("a shop's list put in at one device is in use at the other; two at once are settled; former ones come back", async () => {
  const one = await bench.device();
  const two = await bench.device({ width: 390, height: 844, palette: "night", touch: true });
  for (const { page } of [one, two]) {
    await openDemo(page, "Two spot lamps");
    await goToStep(page, "parts");
  }
  await take(one.page, "spring.csv", listOf("0.20"));
  await inUse(one.page, /^spring\.csv, put in by .+, /);
  await inUse(two.page, /^spring\.csv, put in by .+, /);
  // Two kinds of ring, two of each.
  await total(two.page, "0.80");

  // Neither knows of the other's: the device without the server keeps its own and says so.
  await two.context.setOffline(true);
  await take(two.page, "phone.csv", listOf("0.40"));
  await inUse(two.page, /^phone\.csv; on this device, not yet on the server/);
  await total(two.page, "1.60");
  await take(one.page, "summer.csv", listOf("0.30"));
  await inUse(one.page, /^summer\.csv, put in/);
  await two.context.setOffline(false);
  await inUse(two.page, /summer\.csv, put in by .+ came in meanwhile/);
  expect(await axeFaults(two.page)).toEqual([]);
  const wide = await two.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(wide).toBeLessThanOrEqual(0);
  await two.page.getByRole("button", { name: "put phone.csv in after it" }).click();
  await inUse(two.page, /^phone\.csv, put in/);
  await inUse(one.page, /^phone\.csv, put in/);
  await total(one.page, "1.60");

  await one.page.getByText("earlier lists").focus();
  await one.page.keyboard.press("Enter");
  const spring = one.page.locator(".former-lists li", { hasText: "spring.csv" });
  await spring.getByRole("button", { name: "put in again" }).focus();
  await one.page.keyboard.press("Enter");
  await inUse(one.page, /^spring\.csv, put in/);
  await expect.poll(() => one.page.locator(".former-lists li").count()).toBe(4);
  expect(await axeFaults(one.page)).toEqual([]);

  await take(one.page, "broken.csv", "code,price\nT1,cheap\n");
  await one.page.getByRole("alert").getByText("The price list was not taken.").waitFor();
  await inUse(one.page, /^spring\.csv, put in/);
  await one.page.getByRole("button", { name: "without prices" }).click();
  await inUse(two.page, /^without prices, put in/);
  await two.page.locator(".parts-total").waitFor({ state: "detached" });
}, 180_000);
