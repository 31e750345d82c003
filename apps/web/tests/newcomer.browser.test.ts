import { readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openDemo, type RunningBench, saved, settled, startBench } from "./benchForTests.ts";
import { expectSameAsCommand } from "./sameAsCommand.ts";

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
  await act("mark the fuse 10 A", async () => {
    await page.getByLabel("marked", { exact: true }).fill("10 A");
    await page.keyboard.press("Enter");
  });
  await expect.poll(() => page.locator(".sum-undo-words").innerText()).toMatch(/F1|fuse|marked/i);
  await settled(page);
  await saved(page);
  await act("step Proof", () => page.getByRole("button", { name: /Proof/ }).click());
  await page
    .getByText(/^Full proof/)
    .first()
    .waitFor({ timeout: 120_000 });
  await act("step Papers", () => page.getByRole("button", { name: /Papers/ }).click());
  await act("make all papers", () => page.getByRole("button", { name: "make all papers" }).click());
  const all = page.getByRole("button", { name: /save all \d+ files/ });
  await all.waitFor({ timeout: 120_000 });
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    act("save all files", () => all.click()),
  ]);
  expect(download.suggestedFilename()).toMatch(/-papers\.zip$/);
  const files = unzipSync(readFileSync(await download.path()));
  const pack = JSON.parse(strFromU8(files["pack.json"]!));
  expect(pack.files.length).toBeGreaterThan(30);
  for (const { name, kind } of pack.files) {
    if (kind === "pdf") expect(strFromU8(files[name]!.subarray(0, 5)), name).toBe("%PDF-");
  }
  expect(Object.keys(files)).toContain("19-proof.pdf");
  await expectSameAsCommand(bench.folder, page, files);
  // The README's command is the first action.
  expect(actions.length + 1).toBeLessThanOrEqual(12);
}, 300_000);
