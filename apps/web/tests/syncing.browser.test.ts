import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
  goToStep,
  openDemo,
  type RunningBench,
  saved,
  settled,
  startBench,
} from "./benchForTests.ts";

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

const TICKS = ".end-panel";

/** The state of the end panels of the wire shown on the Build step. */
async function ticked(page: Page): Promise<string[]> {
  await page.locator(TICKS).first().waitFor();
  return page
    .locator(TICKS)
    .evaluateAll((panels) => panels.map((panel) => panel.getAttribute("aria-pressed") ?? ""));
}

async function onBuild(page: Page): Promise<void> {
  await goToStep(page, "build");
  await page.locator(TICKS).first().waitFor();
}

/** The same job on another device, by the address the first one shows. */
async function alsoOpen(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, hash);
  await settled(page);
}

const hashOf = (page: Page): string => new URL(page.url()).hash;

describe("what was shown as saved", () => {
  test("is there again after the server was killed and started anew", async () => {
    const { context, page } = await bench.device();
    await openDemo(page, "Two spot lamps");
    await onBuild(page);
    await page.locator(TICKS).first().click();
    await saved(page);
    const hash = hashOf(page);
    await bench.kill();
    await page.locator(TICKS).nth(1).click();
    await page.locator(".saved[data-mark=offline]").waitFor();
    const address = await bench.restart();
    await page.goto(address);
    await page.getByRole("heading", { name: "Jobs", exact: true }).waitFor();
    await alsoOpen(page, hash);
    await onBuild(page);
    expect(await ticked(page)).toEqual(["true", "true"]);
    await saved(page);
    await context.close();
    const fresh = await bench.device();
    await alsoOpen(fresh.page, hash);
    await onBuild(fresh.page);
    expect(await ticked(fresh.page)).toEqual(["true", "true"]);
    await fresh.context.close();
  });

  test("survives a tab that is closed at once after an edit, with its undo", async () => {
    const { context, page } = await bench.device();
    await openDemo(page, "Two spot lamps");
    await onBuild(page);
    const hash = hashOf(page);
    await page.locator(TICKS).first().click();
    await page.locator(`${TICKS}[aria-pressed=true]`).waitFor();
    await page.locator(".saved:not([data-mark=keeping])").waitFor();
    await page.close({ runBeforeUnload: false });
    const again = await context.newPage();
    await again.goto(`${bench.origin}/${hash}`);
    await settled(again);
    expect(await ticked(again)).toEqual(["true", "false"]);
    await again.getByRole("button", { name: /^Undo/ }).first().click();
    await again.locator(`${TICKS}[aria-pressed=true]`).waitFor({ state: "detached" });
    await saved(again);
    await context.close();
  });
});

describe("without the network", () => {
  test("work goes on, stays on the device, and is sent when the network is back", async () => {
    const { context, page } = await bench.device();
    await openDemo(page, "Two spot lamps");
    await onBuild(page);
    await saved(page);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await context.setOffline(true);
    await page.locator(TICKS).first().click();
    await page.locator(".saved", { hasText: "1 kept on this device" }).waitFor();
    await page.reload();
    await settled(page);
    expect(await ticked(page)).toEqual(["true", "false"]);
    await page.locator(TICKS).nth(1).click();
    await page.locator(`${TICKS}[aria-pressed=true]`).nth(1).waitFor();
    await context.setOffline(false);
    await saved(page);
    const hash = hashOf(page);
    await context.close();
    const other = await bench.device();
    await alsoOpen(other.page, hash);
    await onBuild(other.page);
    expect(await ticked(other.page)).toEqual(["true", "true"]);
    await other.context.close();
  });
});

describe("two devices on one job", () => {
  test("each sees what the other saved, and both edits made apart survive", async () => {
    const one = await bench.device();
    await openDemo(one.page, "Two spot lamps");
    await onBuild(one.page);
    await saved(one.page);
    const two = await bench.device();
    await alsoOpen(two.page, hashOf(one.page));
    await onBuild(two.page);
    await one.page.locator(TICKS).first().click();
    await two.page.locator(`${TICKS}[aria-pressed=true]`).waitFor();
    await two.context.setOffline(true);
    await two.page.locator(TICKS).nth(1).click();
    await one.page.getByRole("button", { name: /tap when cut/ }).click();
    await one.page.locator(".card-job", { hasText: /rev 3$/ }).waitFor();
    await two.context.setOffline(false);
    for (const { page } of [one, two]) {
      await page.locator(`${TICKS}[aria-pressed=true]`).nth(1).waitFor();
      await page.locator(".cut-tick.done").waitFor();
      await saved(page);
    }
    await one.context.close();
    await two.context.close();
  });

  test("the same thing changed twice stays in use once, holds both, and is settled by a choice", async () => {
    const one = await bench.device();
    await openDemo(one.page, "Aldreth");
    await goToStep(one.page, "loom");
    await saved(one.page);
    const covering = (page: Page) =>
      page.getByRole("region", { name: "Covering" }).locator("select").first();
    await covering(one.page).waitFor();
    const two = await bench.device();
    await alsoOpen(two.page, hashOf(one.page));
    await covering(two.page).waitFor();
    await two.context.setOffline(true);
    await covering(two.page).selectOption("tape");
    await two.page.locator(".saved[data-mark=offline]").waitFor();
    await covering(one.page).selectOption("heat-shrink");
    await one.page.locator(".card-job", { hasText: /rev 2$/ }).waitFor();
    await two.context.setOffline(false);
    const choose = two.page.getByRole("button", { name: /two versions: choose one/ });
    await choose.waitFor();
    expect(await covering(two.page).inputValue()).toBe("heat-shrink");
    await choose.click();
    await two.page.locator(".choice").getByRole("button", { name: /^tape/ }).click();
    await choose.waitFor({ state: "detached" });
    for (const { page } of [one, two]) {
      await expect.poll(() => covering(page).inputValue(), { timeout: 15_000 }).toBe("tape");
    }
    await one.context.close();
    await two.context.close();
  });
});
