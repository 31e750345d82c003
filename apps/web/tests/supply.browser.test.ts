import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import { type RunningBench, startBench } from "./benchForTests.ts";

/** A machine busy with other work takes its time; nothing here is judged by it. */
vi.setConfig({ testTimeout: 180_000, hookTimeout: 60_000 });

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

const QUESTIONS = [
  "Will it charge?",
  "Will it last the ride?",
  "Will it start?",
  "Will it last standing?",
  "What do the lamps get?",
  "What gets hot?",
  "Can it be other volts?",
];
const ANSWER_MS = 60_000;

/** The 6 V single with its dynamo, opened at Proof on a device of its own. */
async function atProof(options: Parameters<RunningBench["device"]>[0] = {}): Promise<Page> {
  const { page } = await bench.device(options);
  const key = await page.evaluate(async () => {
    const answer = await fetch("/api/jobs", {
      method: "POST",
      headers: { "content-type": "application/json", "x-copperwright": "1" },
      body: JSON.stringify({ from: "demo", name: "aldreth-single" }),
    });
    return (await answer.json()).key as string;
  });
  await page.evaluate((word) => {
    location.hash = `#/job/${word}/proof`;
  }, key);
  await page.getByRole("button", { name: "charging and starting" }).waitFor();
  return page;
}

async function atSupply(options: Parameters<RunningBench["device"]>[0] = {}): Promise<Page> {
  const page = await atProof(options);
  await page.getByRole("button", { name: "charging and starting" }).click();
  await page.getByText("ends at").first().waitFor({ timeout: ANSWER_MS });
  return page;
}

const lead = (page: Page): Promise<string> => page.locator(".supply-lead").first().innerText();
const sum = (page: Page): Promise<string> => page.locator(".sum-first").innerText();

test("the balance speed opens its working; watts thought of raise it and leave the job alone", async () => {
  const page = await atSupply();
  await page.getByRole("button", { name: /^balance speed \d/ }).click();
  expect(await sum(page)).toMatch(/balance speed .*rpm = least that gives 7\.\d\sA at 6\.9\sV/);
  await page.getByRole("button", { name: "dip beam" }).click();
  expect(await lead(page)).not.toContain("As the job is");
  await page.getByRole("button", { name: "add charging socket" }).click();
  await expect.poll(() => lead(page), { timeout: ANSWER_MS }).toContain("As the job is");
  await page.getByLabel("charging socket, watts").fill("3");
  await page.keyboard.press("Enter");
  await expect.poll(() => lead(page), { timeout: ANSWER_MS }).toMatch(/draws 6\.[4-7]/);
  expect(await page.locator(".sum-undo-words").innerText()).toContain("nothing done yet");
});

test("a lamp is swapped for LED on trial, then in the job, and undone by name", async () => {
  const page = await atSupply();
  await page.getByLabel("swap a lamp for LED").selectOption("HEAD");
  await page.getByRole("button", { name: "swap the lamp in the job" }).click();
  const undo = page.locator(".sum-undo-words");
  await expect.poll(() => undo.innerText(), { timeout: ANSWER_MS }).toContain("for LED");
  await page.getByRole("button", { name: "Undo swap a lamp for LED" }).click();
  await expect.poll(() => undo.innerText()).toContain("nothing done yet");
});

test("a ride of one's own is drawn; a bad file is refused with its line and let go", async () => {
  const page = await atSupply();
  await page.getByRole("button", { name: "Will it last the ride?" }).click();
  const file = (text: string) => ({
    name: "sunday.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(text),
  });
  const field = page.locator("input[type=file]");
  await field.setInputFiles(file("timeS,speedRpm\n0,3000\n900,2000\n1800,0\n"));
  await page.getByRole("rowheader", { name: "your ride" }).waitFor({ timeout: ANSWER_MS });
  await field.setInputFiles(file("timeS,speedRpm\n0,3000\n900,fast\n"));
  await page.getByText("Line 3").waitFor({ timeout: ANSWER_MS });
  await page.getByRole("button", { name: "let go of it" }).click();
  await page.getByRole("rowheader", { name: "rally" }).waitFor({ timeout: ANSWER_MS });
});

test("converted to 12 V with reasons, and made a job of its own", async () => {
  const page = await atSupply();
  await page.getByRole("button", { name: "Can it be other volts?" }).click();
  const make = page.getByRole("button", { name: "make it a new job" });
  await make.waitFor({ timeout: ANSWER_MS });
  expect(await page.locator(".supply").innerText()).toMatch(/Replace[\s\S]*horn[\s\S]*old volts/);
  await make.click();
  await page.waitForURL(/survey$/);
  await expect
    .poll(() => page.locator(".card").innerText(), { timeout: ANSWER_MS })
    .toMatch(/12.V/);
});

test("by keyboard alone: to a question, to a figure, to its working", async () => {
  const page = await atProof();
  await tabTo(page, "charging and starting");
  await page.keyboard.press("Enter");
  await page.getByText("ends at").first().waitFor({ timeout: ANSWER_MS });
  await tabTo(page, "Will it last standing?");
  await page.keyboard.press("Enter");
  await tabTo(page, "everything at rest: may not start after");
  await page.keyboard.press("Enter");
  expect(await sum(page)).toContain("may not start after");
});

async function tabTo(page: Page, words: string): Promise<void> {
  for (let k = 0; k < 120; k++) {
    const name = await page.evaluate(() => {
      const at = document.activeElement;
      return at?.tagName === "BUTTON" ? (at.getAttribute("aria-label") ?? at.textContent) : null;
    });
    if (name?.includes(words)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`${words} is not reached with Tab`);
}

test.each([
  ["phone", { width: 390, height: 844, touch: true, palette: "night" }],
  ["desk", { width: 1024, height: 768, palette: "paper" }],
] as const)(
  "%s: every question within the width and clean by the rules of accessibility",
  async (_, options) => {
    const page = await atSupply(options);
    for (const question of QUESTIONS) {
      const back = page.getByRole("button", { name: "all questions" });
      if (await back.isVisible()) await back.click();
      await page.getByRole("button", { name: question }).click();
      await page.getByRole("heading", { level: 1, name: question }).waitFor();
      if (question === QUESTIONS.at(-1)) {
        await page
          .getByRole("button", { name: "make it a new job" })
          .waitFor({ timeout: ANSWER_MS });
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
      expect(await axeFaults(page), question).toEqual([]);
    }
  },
);
