import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import { type RunningBench, saved, settled, startBench } from "./benchForTests.ts";

/** A machine busy with other work takes its time; nothing here is judged by it. */
vi.setConfig({ testTimeout: 180_000, hookTimeout: 60_000 });

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

/** A demo with the wire to its main beam made far too thin, and one fuse over its holder. */
function illText(): string {
  const job = JSON.parse(readFileSync("demos/minazuru-four.json", "utf8"));
  job.wires.find((wire: { to: string }) => wire.to === "HEAD.HI").size = {
    make: "thin-0.35",
    basis: "chosen",
  };
  job.parts.find((part: { id: string }) => part.id === "F1").ratingA = 30;
  return JSON.stringify(job);
}

async function atProof(options: Parameters<RunningBench["device"]>[0] = {}): Promise<Page> {
  const { page } = await bench.device(options);
  const key = await page.evaluate(async (text) => {
    const answer = await fetch("/api/jobs", {
      method: "POST",
      headers: { "content-type": "application/json", "x-copperwright": "1" },
      body: JSON.stringify({ from: "text", text }),
    });
    return (await answer.json()).key as string;
  }, illText());
  await page.evaluate((word) => {
    location.hash = `#/job/${word}/proof`;
  }, key);
  await page.locator(".proof-row").first().waitFor();
  await settled(page);
  return page;
}

const stamp = (page: Page): Promise<string> => page.locator(".stamp:visible").first().innerText();
const headline = (page: Page): Promise<string> => page.locator(".proof-open h1").innerText();

test("the worst is open with its working and place; its remedy is tried, applied, seen and undone by name", async () => {
  const page = await atProof();
  expect(await page.locator(".proof-row .tag").first().innerText()).toBe("stop");
  await page.locator(".proof-line").first().waitFor();
  await page.locator(".proof-place circle").first().waitFor();
  const card = page
    .locator(".proof-card", { has: page.getByRole("button", { name: "apply" }) })
    .first();
  await expect.poll(() => card.innerText(), { timeout: 20_000 }).toMatch(/verdict (then|stays)/);
  const before = await stamp(page);
  await card.getByRole("button", { name: "apply" }).click();
  await expect.poll(() => stamp(page), { timeout: 20_000 }).not.toBe(before);
  expect(await page.locator(".sum-undo-words").innerText()).toMatch(/Undo\s+\S+/);
  await page.locator(".sum-undo .square").click();
  await expect.poll(() => stamp(page), { timeout: 20_000 }).toBe(before);
  expect(await axeFaults(page)).toEqual([]);
});

test("an input of the working leads to what it came from, and the list narrows to what touches it", async () => {
  const page = await atProof();
  const all = await page.locator(".proof-row").count();
  await page.locator(".proof-input .figure-link").first().click();
  await page.locator(".proof-filter").waitFor();
  expect(await page.locator(".proof-row").count()).toBeLessThan(all);
  await page.getByRole("button", { name: "show all" }).click();
  await expect.poll(() => page.locator(".proof-row").count()).toBe(all);
});

test("a mend is accepted with a reason that is kept; a stop cannot be", async () => {
  const page = await atProof();
  expect(await page.locator(".proof-accept").count()).toBe(0);
  await page.locator(".proof-row", { hasText: "holder of F1" }).click();
  await page.getByLabel("a reason, if it must stay as it is").fill("heavier holder ordered");
  await page.getByRole("button", { name: "accept it" }).click();
  await page.getByText("heavier holder ordered").first().waitFor();
  await saved(page);
  await page.reload();
  await page.locator(".proof-row").first().waitFor();
  await settled(page);
  await page.locator(".proof-row", { hasText: "holder of F1" }).click();
  await page.getByText("heavier holder ordered").first().waitFor();
  await page.getByRole("button", { name: "take it back" }).click();
  await page.getByLabel("a reason, if it must stay as it is").waitFor();
});

test("by keyboard alone: the next finding and the one before it", async () => {
  const page = await atProof();
  const first = await headline(page);
  await page.locator(".proof-main").focus();
  await page.keyboard.press(".");
  await expect.poll(() => headline(page)).not.toBe(first);
  await page.keyboard.press(",");
  await expect.poll(() => headline(page)).toBe(first);
});

test("the full proof is made in the background; fuses, wires and the truth table can be read", async () => {
  const page = await atProof();
  const summary = page.locator(".proof-summary");
  await expect.poll(() => summary.innerText(), { timeout: 50_000 }).toContain("solved in full");
  const page_ = (word: string) =>
    page.getByRole("group", { name: "What to look at" }).getByRole("button", { name: word });
  await page_("fuses").click();
  await page.locator(".proof-plot").waitFor();
  await page_("wires").click();
  expect(await page.locator(".proof-table tbody tr").count()).toBeGreaterThan(100);
  await page_("truth table").click();
  expect(await page.locator(".proof-table tbody tr").count()).toBeGreaterThan(5);
  expect(await axeFaults(page)).toEqual([]);
});

test("on a phone the list comes first, one finding fills the screen, nothing runs off the side", async () => {
  const page = await atProof({ width: 390, height: 844, palette: "night", touch: true });
  expect(await page.locator(".proof-open h1").isVisible()).toBe(false);
  await page.locator(".proof-row").first().click();
  await page.locator(".proof-open h1").waitFor();
  const over = await page.locator("#sheet").evaluate((box) => box.scrollWidth - box.clientWidth);
  expect(over).toBeLessThanOrEqual(0);
  expect(await axeFaults(page)).toEqual([]);
  await page.getByRole("button", { name: "list", exact: true }).click();
  await page.locator(".proof-row").first().waitFor();
});
