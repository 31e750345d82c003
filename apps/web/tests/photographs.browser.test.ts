import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import { goToStep, openDemo, type RunningBench, saved, startBench } from "./benchForTests.ts";

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

const image = (page: Page) => page.locator(".survey-marks image");
const where = (page: Page, words: RegExp) =>
  page.locator(".photo-verbs [role=status]").filter({ hasText: words }).waitFor();

async function toPhotograph(page: Page): Promise<void> {
  await goToStep(page, "survey");
  await page.getByRole("button", { name: "Photograph", exact: true }).click();
}

/** Points of the photograph as the page shows it. */
const sizeShown = (page: Page): Promise<readonly number[]> =>
  image(page).evaluate(async (shown) => {
    const picture = new Image();
    picture.src = shown.getAttribute("href")!;
    await picture.decode();
    return [picture.naturalWidth, picture.naturalHeight];
  });

test("a photograph taken without the server is shown at once, outlives the page, and is sent when the server is back", async () => {
  const { page, context } = await bench.device({ width: 390, height: 844, touch: true });
  await openDemo(page, "Two spot lamps");
  const address = page.url();
  await toPhotograph(page);
  await saved(page);
  const picture = Buffer.from(await page.screenshot({ type: "jpeg" }));
  await bench.kill();
  const input = page.locator(".photo-verbs input[type=file]");
  await input.setInputFiles({
    name: "page.html",
    mimeType: "image/png",
    buffer: Buffer.from("no picture"),
  });
  await page.getByText("That is no photograph this browser can read.").first().waitFor();
  await input.setInputFiles({ name: "side.jpg", mimeType: "image/jpeg", buffer: picture });
  await image(page).waitFor({ state: "attached" });
  expect(await sizeShown(page)).toEqual([390, 844]);
  await where(page, /kept on this device, not yet on the server/);
  await page
    .locator(".saved", { hasText: "1 photograph only here" })
    .waitFor({ state: "attached" });
  expect(await axeFaults(page)).toEqual([]);
  await page.close();

  await bench.restart();
  const again = await context.newPage();
  await again.goto(bench.address);
  await again.getByRole("heading", { name: "Jobs", exact: true }).waitFor();
  await again.goto(address);
  await toPhotograph(again);
  await image(again).waitFor({ state: "attached" });
  await again.locator(".photo-verbs [role=status]").waitFor({ state: "detached", timeout: 20_000 });
  await saved(again);

  const other = await bench.device();
  await other.page.goto(address);
  await toPhotograph(other.page);
  await image(other.page).waitFor({ state: "attached" });
  expect(await sizeShown(other.page)).toEqual([390, 844]);
  // What was shown once is shown without the server too.
  await other.context.setOffline(true);
  await goToStep(other.page, "circuits");
  await goToStep(other.page, "survey");
  await image(other.page).waitFor({ state: "attached" });
}, 180_000);

test("where the plan is on the server and its photograph is not, another device says where it is and shows it when it comes", async () => {
  const one = await bench.device();
  await openDemo(one.page, "Two spot lamps");
  await toPhotograph(one.page);
  const picture = Buffer.from(await one.page.screenshot({ type: "png" }));
  await one.context.route("**/photographs", (route) => route.abort());
  await one.page
    .locator(".photo-verbs input[type=file]")
    .setInputFiles({ name: "side.png", mimeType: "image/png", buffer: picture });
  await image(one.page).waitFor({ state: "attached" });
  const other = await bench.device({ palette: "night" });
  await other.page.goto(one.page.url());
  await toPhotograph(other.page);
  await where(other.page, /not yet on the server: it is on the device that took it/);
  expect(await image(other.page).count()).toBe(0);
  expect(await other.page.locator(".photo-place").count()).toBe(1);
  await one.context.unroute("**/photographs");
  await image(other.page).waitFor({ state: "attached", timeout: 20_000 });
  await other.page.locator(".photo-verbs [role=status]").waitFor({ state: "detached" });
}, 120_000);
