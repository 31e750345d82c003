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
afterEach(async () => {
  for (const context of bench.browser.contexts()) await context.close();
});

async function circuits(demo: string, options = {}): Promise<Page> {
  const { page } = await bench.device(options);
  await openDemo(page, demo);
  await goToStep(page, "circuits");
  await page.locator(".wire-holds polyline").first().waitFor({ state: "attached" });
  return page;
}

async function choose(page: Page, words: string): Promise<void> {
  await page.locator(".scene").first().focus();
  await page.keyboard.press("/");
  await page.locator(".finder input").fill(words);
  await page.keyboard.press("Enter");
  await page.locator(".finder").waitFor({ state: "detached" });
}

async function pull(page: Page, from: string, to: { x: number; y: number }): Promise<void> {
  const box = (await page.locator(from).first().boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 8 });
  await page.mouse.up();
}

const centre = async (page: Page, selector: string) => {
  const box = (await page.locator(selector).first().boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

describe("the middle of a wire", () => {
  test("pulled onto a joint asks first, tells what comes of it, is done and undone", async () => {
    const page = await circuits("Aldreth");
    await choose(page, "A09");
    await page.locator(".pin-handle.middle").waitFor();
    const joint = await centre(page, '.scene-svg [data-of="joint"][data-id="J1"] circle');
    await pull(page, ".pin-handle.middle", joint);
    const bar = page.getByRole("region", { name: "Lead wire A09 over" });
    await bar.getByText(/verdict (then|stays)/).waitFor();
    await bar.getByRole("button", { name: "lead it over there" }).click();
    await soon(() => undoWords(page)).toMatch(/^lead wire A09 over a free place on J\d/);
    await settled(page);
    await page.keyboard.press("Control+z");
    await soon(() => undoWords(page)).toBe("nothing done yet");
  });

  test("let go over nothing does nothing and says so", async () => {
    const page = await circuits("Aldreth");
    await choose(page, "A09");
    await page.locator(".pin-handle.middle").waitFor();
    const sheet = (await page.locator(".circuits-sheet").boundingBox())!;
    await pull(page, ".pin-handle.middle", { x: sheet.x + 3, y: sheet.y + sheet.height - 4 });
    await page.getByText(/^Nothing is there: pull the middle/).waitFor();
    expect(await undoWords(page)).toBe("nothing done yet");
  });

  test("without dragging: led over a terminal by name, by keyboard alone", async () => {
    const page = await circuits("Aldreth");
    await choose(page, "A09");
    await page.locator(".slip").getByRole("button", { name: "lead over" }).focus();
    await page.keyboard.press("Enter");
    const bar = page.getByRole("region", { name: "Lead wire A09 over" });
    await bar.getByLabel("led over").fill("HORN.1");
    await bar.getByText(/verdict (then|stays)/).waitFor();
    await bar.getByRole("button", { name: "lead it over there" }).focus();
    await page.keyboard.press("Enter");
    await soon(() => undoWords(page)).toBe("lead wire A09 over HORN.1");
  });
});

describe("one circuit's drawing", () => {
  test("has the handles of the whole diagram: an end is pulled to another terminal", async () => {
    const page = await circuits("Aldreth");
    await page.getByLabel("diagram of").selectOption({ index: 2 });
    await page.locator(".circuits-sheet[aria-busy=false]").waitFor();
    const id = (await page.locator(".wire-holds polyline").nth(1).getAttribute("data-id"))!;
    await choose(page, id);
    await soon(() => page.locator(".pin-handle.end").count()).toBe(2);
    await page.locator(".pin-handle.middle").waitFor();
    const other = await page.evaluate((own) => {
      const wire = [...document.querySelectorAll<SVGPolylineElement>(".wire-holds polyline")].find(
        (one) => one.dataset.id !== own && one.getBoundingClientRect().height > 20,
      )!;
      const box = wire.getBoundingClientRect();
      return { x: box.x + box.width / 2, y: box.y };
    }, id);
    await pull(page, ".pin-handle.end", other);
    await soon(() => undoWords(page)).toMatch(new RegExp(`^move wire ${id} to `));
  });

  test("on a phone the handles are there too, and the bar is accessible", async () => {
    const page = await circuits("Aldreth", { width: 390, height: 844, touch: true });
    await page
      .getByRole("button", { name: /headlamp/i })
      .first()
      .click();
    await page.locator(".circuits-sheet[aria-busy=false]").waitFor();
    const id = (await page.locator(".wire-holds polyline").first().getAttribute("data-id"))!;
    await choose(page, id);
    await page.locator(".pin-handle.middle").waitFor();
    await page.locator(".slip").getByRole("button", { name: "lead over" }).click();
    expect(await axeFaults(page)).toEqual([]);
  });
});

describe("a wire's way through the loom", () => {
  test("is pulled onto another station on the machine, and taken back by its name", async () => {
    const { page } = await bench.device();
    await openDemo(page, "Minazuru");
    await goToStep(page, "loom");
    await page.getByLabel("wire", { exact: true }).selectOption("C15");
    await page.locator(".way-handle").waitFor();
    const ring = await centre(page, '.loom-machine [data-of="station"][data-id="RM"]');
    await pull(page, ".way-handle", ring);
    await soon(() => undoWords(page)).toMatch(/^wire C15 by /);
    await page.getByRole("button", { name: /^need not pass/ }).click();
    await soon(() => undoWords(page)).toMatch(/^wire C15 need not pass/);
  });

  test("is told by name as well, and one that no run reaches is refused", async () => {
    const { page } = await bench.device();
    await openDemo(page, "Minazuru");
    await goToStep(page, "survey");
    await page.getByRole("button", { name: "add a station" }).click();
    await soon(() => undoWords(page)).not.toBe("nothing done yet");
    await goToStep(page, "loom");
    await page.getByLabel("wire", { exact: true }).selectOption("C15");
    const must = page.getByLabel("must pass");
    const apart = (await must
      .locator("option", { hasText: /^new station/ })
      .first()
      .getAttribute("value"))!;
    await must.selectOption(apart);
    await page.getByText(/^No run leads wire C15 over/).waitFor();
    await must.selectOption("HS");
    await soon(() => undoWords(page)).toMatch(/^wire C15 by headstock/);
    expect(await axeFaults(page)).toEqual([]);
  });
});
