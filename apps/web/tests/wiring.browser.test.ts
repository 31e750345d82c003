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

const said = (page: Page): Promise<string> => page.locator(".sum-words").innerText();

async function drawer(page: Page, word: string): Promise<void> {
  await goToStep(page, "circuits");
  await page.locator(".wire-holds polyline").first().waitFor({ state: "attached" });
  await page.getByRole("button", { name: word, exact: true }).click();
}

async function demo(name: string, options = {}): Promise<Page> {
  const { page } = await bench.device(options);
  await openDemo(page, name);
  return page;
}

async function undone(page: Page): Promise<void> {
  await settled(page);
  await page.keyboard.press("Control+z");
}

describe("joints and connectors", () => {
  test("a joint in a wire at so many mm of a run, typed and slid; too far is refused; taken out again", async () => {
    const page = await demo("Minazuru");
    await drawer(page, "joints and connectors");
    await page.getByRole("button", { name: "add a joint" }).click();
    const form = page.getByRole("region", { name: "A new joint" });
    await form.getByLabel("in wire").selectOption({ index: 30 });
    const onWay = form.locator("option", { hasText: /^along .*, on its way$/ }).first();
    const way = await onWay.getAttribute("value");
    await form.getByLabel("at", { exact: true }).selectOption(way!);
    await form.getByLabel(/^or typed/).fill("4 m");
    await form.getByLabel(/^or typed/).press("Enter");
    await form
      .getByRole("alert")
      .getByText(/is not on it: that run is/)
      .waitFor();
    await form.getByLabel(/^or typed/).fill("25 mm");
    await form.getByLabel(/^or typed/).press("Enter");
    await form.getByRole("button", { name: "put a joint with a free way there" }).click();
    await soon(() => undoWords(page)).toMatch(/^joint in wire/);
    const slip = page.locator(".slip");
    await slip.getByText(/^25\smm from/).waitFor();
    await slip.getByRole("button", { name: "take it out" }).click();
    await soon(() => undoWords(page)).toMatch(/^take joint .* out$/);
    await undone(page);
    await soon(() => undoWords(page)).toMatch(/^joint in wire/);
  });

  test("a connector across everything that passes a station, by keyboard alone", async () => {
    const page = await demo("Minazuru");
    await drawer(page, "joints and connectors");
    await page.getByRole("button", { name: "add a connector" }).focus();
    await page.keyboard.press("Enter");
    const form = page.getByRole("region", { name: "A new connector" });
    await form.getByLabel("of this kind").selectOption("sealed-16");
    await form.getByLabel("at", { exact: true }).selectOption("HS");
    const all = form.getByRole("button", { name: "all", exact: true });
    await soon(() => form.locator("legend").innerText()).not.toMatch(/of 142$/);
    await all.focus();
    await page.keyboard.press("Enter");
    const split = form.getByRole("button", { name: /^split \d+ wires there$/ });
    await form
      .getByText(/made with 12 cavities at most, and \d\d wires would go through/)
      .waitFor();
    expect(await split.isDisabled()).toBe(true);
    await form.getByRole("button", { name: "none", exact: true }).press("Enter");
    for (const at of [0, 1, 2]) await form.getByRole("checkbox").nth(at).press("Space");
    await split.focus();
    await page.keyboard.press("Enter");
    await soon(() => undoWords(page)).toMatch(/^split \d+ wires$/);
    const slip = page.locator(".slip");
    await slip.getByText("1, plug", { exact: true }).waitFor();
    await page.keyboard.press("Control+z");
    await soon(() => undoWords(page)).toBe("nothing done yet");
  });

  test("a joint on which more hangs is not taken out without saying what", async () => {
    const page = await demo("Aldreth");
    await drawer(page, "joints and connectors");
    await page
      .getByRole("list", { name: "Joints and connectors" })
      .getByRole("button")
      .nth(1)
      .click();
    await page.locator(".slip").getByRole("button", { name: "take it out" }).click();
    await soon(() => said(page)).toMatch(
      /^joint J2 cannot be taken away: wires .* end on it\. Move/,
    );
    await page
      .locator(".slip")
      .getByRole("button", { name: /^remove it with its 7 wires/ })
      .click();
    await soon(() => undoWords(page)).toMatch(/^remove joint .* with 7 wires$/);
  });
});

describe("earths", () => {
  test("a bond is added, changed and removed, and a mass with something on it stays", async () => {
    const page = await demo("Aldreth");
    await drawer(page, "earths");
    const fresh = page.getByRole("group", { name: "A new bond" });
    await fresh.getByLabel("a bond from").fill("FR.*");
    await fresh.getByLabel("to", { exact: true }).fill("FR.*");
    await fresh.getByLabel("to", { exact: true }).fill("ENG.*");
    await fresh.getByRole("button", { name: "add this bond" }).click();
    await soon(() => undoWords(page)).toBe("bond FR to ENG");
    const row = page.getByRole("listitem", { name: "Bond BOND1" });
    await row.getByLabel("it is").selectOption("clamp");
    await soon(() => undoWords(page)).toBe("bond BOND1: what it is");
    await row.getByLabel("aged").fill("0.2");
    await row.getByLabel("aged").press("Enter");
    await soon(() => undoWords(page)).toBe("bond BOND1: aged");
    await row.getByLabel("aged").fill("-3");
    await row.getByLabel("aged").press("Enter");
    await row.getByText(/must lie between/).waitFor();
    await row.getByLabel("aged").press("Escape");
    await row.getByRole("button", { name: "remove bond BOND1" }).click();
    await soon(() => undoWords(page)).toBe("remove bond BOND1");
    await page.getByRole("button", { name: "remove frame", exact: true }).click();
    await soon(() => said(page)).toMatch(
      /^body FR cannot be taken away: wires? .* bonds? .*FORK-FR/,
    );
    await undone(page);
    await row.waitFor();
  });

  test("an earth point is added at a station, named, and removed; one with a wire on it is not", async () => {
    const page = await demo("Aldreth");
    await goToStep(page, "survey");
    await page.getByRole("button", { name: /^Earths, 4 bonds/ }).click();
    const frame = page.getByRole("listitem", { name: "Mass frame" });
    await frame.getByLabel(/a further earth point on frame/).selectOption({ index: 2 });
    await frame.getByRole("button", { name: "add this point" }).click();
    await soon(() => undoWords(page)).toBe("earth point on frame");
    await frame.getByLabel("name of FR.1").fill("tank lug");
    await frame.getByLabel("name of FR.1").press("Enter");
    await soon(() => undoWords(page)).toBe("FR.1: name");
    await frame.getByRole("button", { name: "remove earth point FR.BAT" }).click();
    await soon(() => said(page)).toMatch(/^earth point FR\.BAT cannot be taken away: wire/);
    await frame.getByRole("button", { name: "remove earth point FR.1" }).click();
    await soon(() => undoWords(page)).toBe("remove earth point FR.1");
  });
});

describe("looms", () => {
  test("a loom is added with every wire of a run, renamed, and refused to go while wires lie in it", async () => {
    const page = await demo("Minazuru");
    await goToStep(page, "loom");
    await page.getByRole("button", { name: "add a loom" }).click();
    const form = page.getByRole("region", { name: "A new loom" });
    await form.getByLabel("name of the new loom").fill("tank loom");
    await form.getByLabel("name of the new loom").press("Enter");
    await form.getByLabel("tick every wire that lies in").selectOption({ index: 3 });
    const add = form.getByRole("button", { name: /^add it with [1-9]\d* wires$/ });
    await add.click();
    await soon(() => undoWords(page)).toBe("loom tank loom");
    const row = page.getByRole("listitem", { name: "Loom tank loom" });
    await row.getByRole("button", { name: "remove loom tank loom" }).click();
    await soon(() => said(page)).toMatch(/^loom LOOM1 cannot be taken away: wires? .* in it/);
    await row.getByRole("button", { name: /wires? in it$/ }).click();
    await row.getByRole("button", { name: "none", exact: true }).click();
    await row.getByRole("button", { name: /^take \d+ out$/ }).click();
    await soon(() => undoWords(page)).toMatch(/wires out of tank loom$/);
    await row.getByRole("button", { name: "remove loom tank loom" }).click();
    await soon(() => undoWords(page)).toBe("remove loom tank loom");
    expect(await row.count()).toBe(0);
  });
});

describe("on a phone", () => {
  test.each(["joints and connectors", "earths", "looms"])(
    "%s fit the width and are accessible",
    async (word) => {
      const page = await demo("Aldreth", { width: 390, height: 844, touch: true });
      await drawer(page, word);
      if (word !== "earths")
        await page.getByRole("button", { name: /^add a (joint|loom)$/ }).click();
      expect(await axeFaults(page)).toEqual([]);
      const overflow = await page.evaluate(() => {
        const sheet = document.getElementById("sheet")!;
        return sheet.scrollWidth - sheet.clientWidth;
      });
      expect(overflow).toBeLessThanOrEqual(1);
    },
  );
});
