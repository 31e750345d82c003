import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { axeFaults } from "./axeFaults.ts";
import { goToStep, openDemo, type RunningBench, saved, startBench } from "./benchForTests.ts";

/** A machine busy with other work takes its time; nothing here is judged by it. */
vi.setConfig({ testTimeout: 180_000, hookTimeout: 60_000 });

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

async function onTheBench(options: Parameters<RunningBench["device"]>[0] = {}): Promise<Page> {
  const { page } = await bench.device(options);
  await openDemo(page, "Aldreth");
  await saved(page);
  await goToStep(page, "try");
  await page.locator(".try-scene").waitFor();
  return page;
}

const put = (page: Page, name: string, position: string): Promise<void> =>
  page
    .locator(`fieldset:has(legend:text-is("${name}"))`)
    .getByRole("radio", { name: new RegExp(position) })
    .check({ force: true });
const lampRow = (page: Page, name: string) =>
  page.locator("section[aria-label='Lamps and loads'] .try-row", { hasText: name }).first();
const figure = (page: Page) => page.locator(".try-figure");

describe("by mouse", () => {
  test("a switch worked on its contact table lights the lamp; the meter shows the sign of a positive-earth machine; an open puts it out", async () => {
    const page = await onTheBench();
    await put(page, await lightSwitch(page), "H");
    await lampRow(page, "head").waitFor();
    await page.locator(".try-lead-picker.red select").selectOption("HEAD.MAIN");
    await page.locator(".try-lead-picker.black select").selectOption("earth");
    await expect.poll(() => figure(page).innerText()).toMatch(/^−[56]\.\d/);
    const feed = await wireTo(page, "HEAD.MAIN");
    await page.locator(".try-break select").first().selectOption(feed);
    await page.getByRole("button", { name: "open it" }).click();
    await expect
      .poll(() => page.locator(".stamp:visible").first().innerText())
      .toContain("on the bench");
    await expect.poll(() => lampRow(page, "head").innerText()).toContain("should light");
    await expect.poll(() => page.locator(".try-meter").innerText()).toContain("when well");
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole("button", { name: "put right", exact: true }).click();
    await expect.poll(() => lampRow(page, "head").innerText()).toContain("%");
    expect(await page.locator(".stamp:visible").first().innerText()).not.toContain("on the bench");
  });

  test("ohms are read with the battery off, and a short tells which fuse goes and when", async () => {
    const page = await onTheBench();
    await page.getByRole("button", { name: "ohms, battery off" }).click();
    await page.locator(".try-lead-picker.red select").selectOption("HEAD.MAIN");
    await page.locator(".try-lead-picker.black select").selectOption("HEAD.E");
    await expect.poll(() => figure(page).innerText()).toMatch(/Ω$/);
    await page
      .locator(".try-break select")
      .first()
      .selectOption(await wireTo(page, "LSW.", "F"));
    await page.locator(".try-break").getByRole("button", { name: "short", exact: true }).click();
    await page.locator(".try-break .act.filled").click();
    await page.locator(".try-time").waitFor();
    expect(await page.locator(".try-time header").innerText()).toMatch(
      /F1.*(opens between|may open)/,
    );
  });
});

/** The light switch by its name on the bench. */
const lightSwitch = async (page: Page): Promise<string> => {
  const names = await page.locator(".contact-table legend").allInnerTexts();
  return names.find((name) => /light/i.test(name)) ?? names[0]!;
};

async function wireTo(page: Page, pin: string, other = ""): Promise<string> {
  const wires = await page
    .locator(".try-break select optgroup[label=Wires] option")
    .evaluateAll((all) =>
      all.map((one) => [(one as HTMLOptionElement).value, one.textContent ?? ""]),
    );
  const found = wires.find(([, words]) => words!.includes(pin) && words!.includes(other));
  if (found === undefined) throw new Error(`no wire at ${pin}: ${JSON.stringify(wires)}`);
  return found[0]!;
}

test("by keyboard alone: a switch by arrows, the leads by r and b on what is chosen, the flag through time", async () => {
  const page = await onTheBench();
  const radio = page.locator(".contact-table input").first();
  await radio.focus();
  const before = await page.locator(".contact-row.now").first().innerText();
  await page.keyboard.press("ArrowDown");
  await expect.poll(() => page.locator(".contact-row.now").first().innerText()).not.toBe(before);
  await page.keyboard.press("Tab");
  await page.locator(".scene").focus();
  await page.keyboard.press("/");
  await page.getByLabel("find by number, colour or name").fill(await wireTo(page, "HEAD.MAIN"));
  await page.keyboard.press("Enter");
  await page.keyboard.press("r");
  await page.keyboard.press("b");
  await expect.poll(() => figure(page).innerText()).toMatch(/V/);
  await page
    .locator(".try-break")
    .getByRole("button", { name: "short", exact: true })
    .press("Enter");
  await page.locator(".try-break .act.filled").press("Enter");
  const flag = page.getByRole("slider", { name: "Moment since the fault" });
  await flag.focus();
  const at = await flag.getAttribute("aria-valuenow");
  await page.keyboard.press("End");
  await expect
    .poll(async () => Number(await flag.getAttribute("aria-valuenow")))
    .toBeGreaterThan(Number(at));
});

test("on a phone nothing runs off the side and every control can be hit", async () => {
  const page = await onTheBench({ width: 390, height: 844, palette: "night", touch: true });
  const sheet = page.locator("#sheet");
  expect(await sheet.evaluate((box) => box.scrollWidth - box.clientWidth)).toBeLessThanOrEqual(0);
  const low = await page
    .locator(".try .act:not(.small)")
    .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 71).length);
  expect(low).toBe(0);
  expect(await axeFaults(page)).toEqual([]);
});

test("a hidden fault never reaches the page that hunts it; a wrong guess is wrong, the right one right, the minutes are counted", async () => {
  const page = await onTheBench();
  await put(page, await lightSwitch(page), "H");
  const feed = await wireTo(page, "HEAD.MAIN");
  await page.locator(".try-break select").first().selectOption(feed);
  await page.getByRole("button", { name: "open it" }).click();
  await page.getByLabel("what the rider says is wrong").fill("no main beam");
  await page.getByRole("button", { name: "hide the fault" }).click();
  const told: string[] = [];
  page.on("response", async (answer) => {
    if (answer.url().includes("/exercises")) told.push(await answer.text().catch(() => ""));
  });
  await page.getByRole("button", { name: "hunt it" }).first().click();
  await page.getByLabel("What is to be seen and heard").waitFor();
  await page.locator(".try-lead-picker.red select").selectOption("HEAD.MAIN");
  await page.locator(".try-lead-picker.black select").selectOption("earth");
  await expect.poll(() => figure(page).innerText()).toMatch(/V$|floats/);
  expect(told.length).toBeGreaterThan(0);
  for (const text of told) expect(text).not.toMatch(new RegExp(`faults|"open"|"${feed}"`));
  const verdict = page.getByLabel("Your verdict");
  const guess = async (place: string): Promise<void> => {
    await verdict.getByRole("combobox").selectOption(place);
    await verdict.getByRole("button", { name: "that is it" }).click();
  };
  await guess(await verdictWire(page, feed));
  await expect.poll(() => verdict.locator("ul").innerText()).toContain("not it");
  await guess(feed);
  await expect.poll(() => verdict.locator("ul").innerText()).toContain("found it");
  expect(await page.getByLabel("The complaint").innerText()).toMatch(/\d+ min\s+of 20/);
  expect(await axeFaults(page)).toEqual([]);
});

const verdictWire = async (page: Page, feed: string): Promise<string> =>
  (
    await page
      .getByLabel("Your verdict")
      .locator("optgroup[label=Wires] option")
      .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value))
  ).find((id) => id !== feed)!;
