import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import { goToStep, openDemo, type RunningBench, settled, startBench } from "./benchForTests.ts";
import { soon, undoWords } from "./soon.ts";

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

/** What is asked of a worker on a busy machine takes its time. */

async function circuits(options = {}): Promise<Page> {
  const { page } = await bench.device(options);
  await openDemo(page, "Aldreth");
  await goToStep(page, "circuits");
  await page.locator(".wire-holds polyline").first().waitFor({ state: "attached" });
  return page;
}

/** Each test has a device of its own; the one before goes home. */
afterEach(async () => {
  for (const context of bench.browser.contexts()) await context.close();
});

async function tapWire(page: Page, id: string): Promise<void> {
  const hold = page.locator(`.wire-holds [data-id="${id}"]`).first();
  await page.locator(".circuits-sheet[aria-busy=false]").waitFor();
  const box = (await hold.boundingBox())!;
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await page.getByRole("region", { name: `Wire ${id}` }).waitFor();
}

const slipName = (page: Page): Promise<string | null> =>
  page.locator(".slip").getAttribute("aria-label");

describe("circuits", () => {
  test("a wire tapped shows its figures, each opens its sum, and its way is lit on the rule", async () => {
    const page = await circuits();
    await tapWire(page, "A09");
    const loses = page.locator(".slip-row", { hasText: "loses" }).getByRole("button");
    await loses.click();
    const words = await page.locator(".sum-first").innerText();
    expect(words).toMatch(/Wire A09 loses .*V = .*A × .*m/);
    await page.locator(".rule").getByText("wire A09").waitFor();
    await page.keyboard.press("Escape");
    expect(await page.locator(".slip").count()).toBe(0);
  });

  test("arrows walk along the current and back", async () => {
    const page = await circuits();
    await tapWire(page, "A09");
    await page.locator(".scene").focus();
    await page.keyboard.press("ArrowDown");
    await soon(() => slipName(page)).toMatch(/^Part/);
    await page.keyboard.press("ArrowUp");
    await soon(() => slipName(page)).toBe("Wire A09");
  });

  test("a contact table filled in with two taps, and undone by name", async () => {
    const page = await circuits();
    await tapWire(page, "A09");
    await page.getByRole("button", { name: "STP.1", exact: true }).click();
    const cells = page.locator(".contact-cell");
    await cells.nth(0).click();
    await cells.nth(1).click();
    await soon(() => cells.nth(0).getAttribute("aria-label")).toBe("OFF, 1: joined with 2");
    await page.keyboard.press("Control+z");
    await soon(() => cells.nth(0).getAttribute("aria-label")).toBe("OFF, 1: joined with nothing");
  });

  test("by keyboard alone: two terminals connected, the wire split, and the connector taken out again", async () => {
    const page = await circuits();
    await page.getByRole("button", { name: "connect two terminals" }).focus();
    await page.keyboard.press("Enter");
    await page.getByLabel("first terminal").fill("STP.1");
    await page.getByLabel("other terminal").fill("HORN.1");
    await page.getByLabel("belongs to").selectOption({ index: 1 });
    await page.getByRole("button", { name: "lay this wire" }).focus();
    await page.keyboard.press("Enter");
    await soon(() => undoWords(page)).toBe("connect STP.1 to HORN.1");
    await settled(page);
    await page.keyboard.press("Control+z");
    await soon(() => undoWords(page)).toBe("nothing done yet");
    await tapWire(page, "A09");
    await page.getByRole("button", { name: "split" }).focus();
    await page.keyboard.press("Enter");
    await page.getByLabel("of this kind").selectOption("block-2.8");
    await page.getByRole("button", { name: "split it there" }).focus();
    await page.keyboard.press("Enter");
    await soon(() => undoWords(page)).toBe("split wire A09");
    await page.locator(".wire-ends").getByRole("button").last().click();
    await page.getByRole("button", { name: "take it out" }).click();
    await soon(() => undoWords(page)).toMatch(/^take connector/);
  });

  test("a terminal dragged to another asks what the wire is to be", async () => {
    const page = await circuits();
    await tapWire(page, "A09");
    await page.getByRole("button", { name: "STP.1", exact: true }).click();
    const handle = (await page.locator(".pin-handle").first().boundingBox())!;
    const target = (await page.locator('.wire-holds [data-id="A32"]').first().boundingBox())!;
    await page.mouse.move(handle.x + handle.width / 2, handle.y + handle.height / 2);
    await page.mouse.down();
    await page.mouse.move(target.x + target.width / 2, target.y + target.height, { steps: 8 });
    await page.mouse.up();
    await page
      .locator(".connect-bar")
      .getByText(/^From STP\.1/)
      .waitFor();
    await page.getByRole("button", { name: "leave it" }).click();
    expect(await page.locator(".connect-bar").count()).toBe(0);
  });

  test("a ready circuit is one act, with every question answered by the person", async () => {
    const page = await circuits();
    await page.getByRole("button", { name: "ready circuits" }).click();
    await page.getByRole("button", { name: "horn with a push in its return" }).click();
    await page.getByRole("button", { name: "4 questions open" }).waitFor();
    await page.getByLabel("where the live comes from").fill("F1.OUT");
    await page.getByLabel("horn sits at").selectOption({ index: 1 });
    await page.getByLabel("button sits at").selectOption({ index: 2 });
    await page.getByLabel("where it returns").fill("FR.*");
    await page.getByText(/always there: its loads are to work as its own switches say/).waitFor();
    await page
      .locator(".template .consequence")
      .getByText(/verdict/)
      .waitFor();
    await page.getByRole("button", { name: "put it on the machine" }).click();
    await soon(() => undoWords(page)).toBe("horn with a push in its return");
    await page.keyboard.press("Control+z");
    await soon(() => undoWords(page)).toBe("nothing done yet");
  });

  test("on a phone every circuit has its picture, the slip rises from below, and all is accessible", async () => {
    const page = await circuits({ width: 390, height: 844, touch: true });
    await page.locator(".circuit-thumb svg").first().waitFor();
    // The diagram begins at its upper left, as large as can be read: there the battery's own lead stands.
    await page.locator(".circuits-sheet[aria-busy=false]").waitFor();
    const lead = (await page.locator('.wire-holds [data-id="A01"]').first().boundingBox())!;
    await page.mouse.click(lead.x + lead.width / 2, lead.y + 20);
    await page.getByRole("region", { name: "Wire A01" }).waitFor();
    expect(await axeFaults(page)).toEqual([]);
    const slip = (await page.locator(".slip").boundingBox())!;
    expect(slip.x).toBeLessThanOrEqual(1);
    expect(slip.width).toBeGreaterThan(385);
    expect(slip.y + slip.height).toBeLessThanOrEqual(844 - 88 + 1);
  });
});
