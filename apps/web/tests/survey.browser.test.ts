import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import {
  goToStep,
  openDemo,
  type RunningBench,
  saved,
  settled,
  startBench,
} from "./benchForTests.ts";
import { soon, undoWords } from "./soon.ts";

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

/** What is asked of a worker on a busy machine takes its time. */

async function survey(options = {}): Promise<Page> {
  const { page } = await bench.device(options);
  await openDemo(page, "Aldreth");
  await goToStep(page, "survey");
  await page.locator(".survey-station").first().waitFor({ state: "attached" });
  return page;
}

/** Each test has a device of its own; the one before goes home. */
afterEach(async () => {
  for (const context of bench.browser.contexts()) await context.close();
});

const unknownCount = async (page: Page): Promise<number> =>
  Number(/\d+/.exec(await page.getByRole("button", { name: /Still unknown/ }).innerText())?.[0]);

describe("survey", () => {
  test("by mouse: a station dragged keeps its lengths, and one undo puts it back", async () => {
    const page = await survey();
    const lengths = () =>
      page
        .locator(".survey-run")
        .evaluateAll((runs) => runs.map((run) => run.getAttribute("aria-label")));
    const before = await lengths();
    const ring = page.locator(".survey-station .station-ring").last();
    const place = async () => (await ring.boundingBox())!;
    const at = await place();
    await page.mouse.move(at.x + at.width / 2, at.y + at.height / 2);
    await page.mouse.down();
    await page.mouse.move(at.x - 40, at.y - 30, { steps: 5 });
    await page.mouse.up();
    await soon(() => undoWords(page)).toMatch(/^move /);
    expect((await lengths()).sort()).toEqual(before.sort());
    await page.keyboard.press("Control+z");
    await soon(() => undoWords(page)).toBe("nothing done yet");
    await saved(page);
  });

  test("by keyboard alone: a run measured in centimetres, a doubtful unit asked about", async () => {
    const page = await survey();
    const first = await unknownCount(page);
    const guessed = page.locator(".survey-run[aria-label*=guessed]").first();
    await guessed.focus();
    await page.keyboard.press("Enter");
    const field = page.locator(".slip").getByLabel(/measured by string|longest, at both locks/);
    await field.focus();
    await page.keyboard.type("1.6");
    await page.locator(".slip").getByRole("group", { name: "Which unit?" }).waitFor();
    await page.keyboard.press("Escape");
    await field.fill("41 cm");
    await page.keyboard.press("Enter");
    await page.locator(".slip").getByText("410").first().waitFor();
    await soon(() => unknownCount(page)).toBe(first - 1);
    await settled(page);
  });

  test("a station moved with the arrows is one act", async () => {
    const page = await survey();
    await page.locator(".survey-station").nth(1).focus();
    for (let i = 0; i < 4; i++) await page.keyboard.press("ArrowRight");
    await soon(() => undoWords(page)).toMatch(/^move /);
    await page.keyboard.press("Control+z");
    await soon(() => undoWords(page)).toBe("nothing done yet");
  });

  test("a part of the catalogue asks for its figure and fills nothing in", async () => {
    const page = await survey();
    await page.getByRole("button", { name: /Add a part/ }).click();
    await page.getByLabel("look for a part by any word").fill("make contact");
    await page.getByRole("button", { name: "relay, make contact" }).click();
    await page.getByRole("button", { name: "still needs coil" }).waitFor();
    const coil = page.getByLabel("coil", { exact: true });
    expect(await coil.inputValue()).toBe("");
    await coil.fill("88");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "put it on the machine" }).click();
    await page.getByRole("region", { name: "Part relay, make contact" }).waitFor();
    await saved(page);
  });

  test("wiring as found: what becomes of a wire, and its condition", async () => {
    const page = await survey();
    await page.getByRole("button", { name: /Wiring as found/ }).click();
    const row = page.locator(".found-row").first();
    await row.getByRole("combobox").selectOption("remove");
    await soon(() => undoWords(page)).toMatch(/what becomes of it/);
    await row.getByRole("textbox").fill("hard and cracked");
    await page.keyboard.press("Enter");
    await soon(() => undoWords(page)).toMatch(/condition/);
  });

  test("a photograph is laid underneath and scaled by two taps", async () => {
    const page = await survey();
    await page.getByRole("button", { name: "Photograph", exact: true }).click();
    const picture = Buffer.from(await page.screenshot({ type: "png" }));
    await page
      .locator("input[type=file]")
      .setInputFiles({ name: "side.png", mimeType: "image/png", buffer: picture });
    await page.locator(".survey-marks image").waitFor({ state: "attached" });
    await page.getByRole("button", { name: "scale it by two points" }).click();
    const sheet = (await page.locator(".survey-sheet").boundingBox())!;
    await page.mouse.click(sheet.x + 300, sheet.y + 80);
    await page.mouse.click(sheet.x + 700, sheet.y + 80);
    await page.getByLabel("apart on the machine").fill("900 mm");
    await page.keyboard.press("Enter");
    await soon(() => undoWords(page)).toBe("scale the photograph");
  });

  for (const list of ["Still unknown", "Add a part", "Wiring as found", "Photograph"]) {
    test(`"${list}" is accessible on a phone and stays within its width`, async () => {
      const page = await survey({ width: 390, height: 844, touch: true });
      await page.getByRole("button", { name: new RegExp(list) }).click();
      await page.waitForTimeout(300);
      expect(await axeFaults(page)).toEqual([]);
      const wide = await page.evaluate(() => {
        const sheet = document.getElementById("sheet")!;
        return sheet.scrollWidth - sheet.clientWidth;
      });
      expect(wide).toBeLessThanOrEqual(0);
    });
  }
});
