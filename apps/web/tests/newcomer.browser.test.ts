import { afterAll, beforeAll, expect, test } from "vitest";
import { openDemo, type RunningBench, saved, settled, startBench } from "./benchForTests.ts";

let bench: RunningBench;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.end());

test("from the first page to a proven, packed demo with one changed part in twelve actions at most", async () => {
  const { page } = await bench.device();
  const actions: string[] = [];
  const act = async (words: string, work: () => Promise<unknown>): Promise<void> => {
    actions.push(words);
    await work();
  };
  await act("choose the single among the ready machines", () => openDemo(page, "Aldreth"));
  await act("step Circuits", () => page.getByRole("button", { name: /Circuits/ }).click());
  await act("find", () => page.getByRole("button", { name: "find", exact: true }).click());
  await act("type the fuse's name and press Enter", async () => {
    await page.getByLabel("find by number, colour or name").fill("F1");
    await page.keyboard.press("Enter");
  });
  console.log(await page.locator("#sheet").innerText());
  await settled(page);
  await saved(page);
  expect(actions.length).toBeLessThanOrEqual(12);
});
