import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect, test } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import { goToStep, openDemo, type RunningBench, startBench } from "./benchForTests.ts";
import { undoWords } from "./soon.ts";

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());
afterEach(async () => {
  for (const context of bench.browser.contexts()) await context.close();
});

const LIST = [
  "code,description,kind,make,unit,price,currency,pack",
  "F10,fuse 10 A,fuse,blade-10,each,0.30,EUR,1",
  "F15,fuse 15 A,fuse,blade-15,each,0.50,EUR,1",
].join("\n");

async function fuse(page: Page): Promise<void> {
  await goToStep(page, "circuits");
  await page.locator(".wire-holds polyline").first().waitFor({ state: "attached" });
  await page.locator(".scene").first().focus();
  await page.keyboard.press("/");
  await page.locator(".finder input").fill("F1");
  await page.keyboard.press("Enter");
  await page.locator(".slip .figures .field").first().waitFor();
}

test("a rating typed tells its consequence before it is taken, and without a list no price", async () => {
  const { page } = await bench.device();
  await openDemo(page, "Aldreth");
  await fuse(page);
  await page.locator(".slip .figures .field").first().fill("10");
  const line = page.locator(".slip .consequence").first();
  await line.getByText(/1 fuse of another rating · verdict (then|stays)/).waitFor();
  expect(await line.innerText()).not.toMatch(/price|costs/);
  expect(await undoWords(page)).toBe("nothing done yet");
  await page.locator(".slip .figures .field").first().press("Enter");
  await expect.poll(() => undoWords(page), { timeout: 20_000 }).toMatch(/^marked 10/);
});

test("with a shop's list the price stands in it, and a size and a colour tell theirs", async () => {
  const { page } = await bench.device();
  await openDemo(page, "Aldreth");
  await goToStep(page, "parts");
  const rows = page.locator(".shopping");
  await rows.waitFor();
  const input = page.locator('input[type="file"]').first();
  await input.setInputFiles({
    name: "list.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(LIST),
  });
  await page.getByRole("columnheader", { name: "price" }).waitFor();
  await fuse(page);
  await page.locator(".slip .figures .field").first().fill("10");
  await page
    .locator(".slip .consequence")
    .first()
    // The fuse and two to spare: three of 0.30 instead of three of 0.50.
    .getByText(/ · −\D*0[.,]60/)
    .waitFor();
  await page.locator(".slip .figures .field").first().press("Escape");
  await page.locator(".slip").getByRole("button", { name: "A02", exact: true }).click();
  await page.locator(".slip").getByRole("button", { name: "size", exact: true }).click();
  await page.locator(".verb-form input").fill("1.5 mm2");
  await page
    .locator(".make-choice .consequence")
    .first()
    .getByText(/verdict/)
    .waitFor();
  await page.locator(".slip").getByRole("button", { name: "colour", exact: true }).click();
  await page.locator(".verb-form select").first().selectOption("pink");
  await page
    .locator(".verb-form .consequence")
    .getByText(/verdict/)
    .waitFor();
  expect(await undoWords(page)).toBe("nothing done yet");
  expect(await axeFaults(page)).toEqual([]);
});
