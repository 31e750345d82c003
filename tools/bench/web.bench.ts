import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";
import {
  goToStep,
  openDemo,
  type RunningBench,
  saved,
  settled,
  startBench,
} from "../../apps/web/tests/benchForTests.ts";
import { writeJob } from "../../engine/index.ts";
import { ROOT } from "../sourceFiles.ts";
import { largeVehicle } from "./largeVehicle.ts";

const OPENINGS = 5;
const EDITS = 40;
const PAN_FRAMES = 60;
const WIRES = 2000;
const SEED = 1;
/** What makes the files of a pack is loaded when papers are made. */
const EXPORTERS = /pdfkit|papersAnswers-/;

interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly target?: number;
}

/** The bench in a real browser on this machine; software painting, so frame rates of a real device are not claimed. */
export async function run(): Promise<readonly Figure[]> {
  const bench = await startBench();
  try {
    return [
      ...bundleFigures(),
      ...(await openingFigures(bench)),
      ...(await editFigures(bench)),
      ...(await panFigures(bench)),
    ];
  } finally {
    await bench.end();
  }
}

function bundleFigures(): readonly Figure[] {
  const folder = join(ROOT, "apps/web/dist/assets");
  const kB = (names: readonly string[], size: (name: string) => number): number =>
    names.reduce((sum, name) => sum + size(name), 0) / 1000;
  const ofBytes = (name: string): Buffer => readFileSync(join(folder, name));
  const brotliSize = (name: string): number =>
    existsSync(join(folder, `${name}.br`)) ? ofBytes(`${name}.br`).length : ofBytes(name).length;
  const gzipSize = (name: string): number => gzipSync(ofBytes(name)).length;
  const code = readdirSync(folder).filter((name) => /\.(js|css)$/.test(name));
  const app = code.filter((name) => !EXPORTERS.test(name));
  const exporters = code.filter((name) => EXPORTERS.test(name));
  return [
    {
      name: "code of the app without what makes files, brotli (this machine, TLS)",
      value: kB(app, brotliSize),
      unit: "kB",
      target: 500,
    },
    { name: "the same, gzip (plain http from elsewhere)", value: kB(app, gzipSize), unit: "kB" },
    {
      name: "code loaded when papers are made, brotli",
      value: kB(exporters, brotliSize),
      unit: "kB",
    },
  ];
}

const sorted = (values: readonly number[]): readonly number[] => [...values].sort((a, b) => a - b);
const quantile = (values: readonly number[], ratio: number): number =>
  sorted(values)[Math.min(values.length - 1, Math.floor(ratio * values.length))]!;

/** A job opened by its address, everything but the service worker's cache cold. */
async function openingFigures(bench: RunningBench): Promise<readonly Figure[]> {
  const { context, page } = await bench.device();
  await openDemo(page, "Brenzach");
  await saved(page);
  const address = page.url();
  const paints: number[] = [];
  const verdicts: number[] = [];
  for (let i = 0; i < OPENINGS; i++) {
    const fresh = await context.newPage();
    const from = performance.now();
    await fresh.goto(address);
    await settled(fresh);
    verdicts.push(performance.now() - from);
    paints.push(
      await fresh.evaluate(
        () => performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? Number.NaN,
      ),
    );
    await fresh.close();
  }
  await context.close();
  return [
    { name: "first paint, median", value: quantile(paints, 0.5), unit: "ms", target: 1000 },
    {
      name: "big twin opened with its verdict, median",
      value: quantile(verdicts, 0.5),
      unit: "ms",
      target: 2000,
    },
  ];
}

/** From the key to the new verdict on the stamp, for an edit taken back and done again. */
function editOnce(page: Page, isRedo: boolean): Promise<number> {
  return page.evaluate(
    (shiftKey) =>
      new Promise<number>((resolve) => {
        const stamp = document.querySelector<HTMLElement>(".card .stamp")!;
        const from = performance.now();
        let isOn = false;
        const watch = new MutationObserver(() => {
          if (stamp.dataset.checking === "true") isOn = true;
          if (!isOn || stamp.dataset.checking !== "false") return;
          watch.disconnect();
          resolve(performance.now() - from);
        });
        watch.observe(stamp, { attributes: true });
        document.body.dispatchEvent(
          new KeyboardEvent("keydown", { key: "z", ctrlKey: true, shiftKey, bubbles: true }),
        );
      }),
    isRedo,
  );
}

async function editFigures(bench: RunningBench): Promise<readonly Figure[]> {
  const { context, page } = await bench.device();
  await openDemo(page, "Brenzach");
  await goToStep(page, "loom");
  await page.locator(".joint-track input[inputmode]").first().fill("55 mm");
  await page.keyboard.press("Enter");
  await settled(page);
  await goToStep(page, "build");
  await page.locator(".wire-card").waitFor();
  const joint = await timesOf(page);
  await page.locator(".end-panel").first().click();
  await settled(page);
  const tick = await timesOf(page);
  await context.close();
  return [
    {
      name: "big twin, a joint moved: edit to verdict, median",
      value: quantile(joint, 0.5),
      unit: "ms",
    },
    {
      name: "big twin, a joint moved: edit to verdict, 95th percentile",
      value: quantile(joint, 0.95),
      unit: "ms",
      target: 50,
    },
    {
      name: "big twin, a tick: edit to verdict, 95th percentile",
      value: quantile(tick, 0.95),
      unit: "ms",
      target: 50,
    },
  ];
}

async function timesOf(page: Page): Promise<readonly number[]> {
  const times: number[] = [];
  for (let i = 0; i < EDITS; i++) {
    times.push(await editOnce(page, i % 2 === 1));
    await page.waitForTimeout(120);
  }
  return times.slice(4);
}

/** Script, style and layout a frame while the whole diagram of a large vehicle is dragged about. */
async function panFigures(bench: RunningBench): Promise<readonly Figure[]> {
  const { context, page } = await bench.device();
  const text = writeJob(largeVehicle(WIRES, SEED));
  await page
    .locator('input[type=file][accept*=".json"]')
    .setInputFiles({ name: "large.json", mimeType: "application/json", buffer: Buffer.from(text) });
  await page.waitForURL(/#\/job\//);
  await goToStep(page, "circuits");
  await page.locator(".scene-svg path").first().waitFor({ timeout: 180_000, state: "attached" });
  const session = await context.newCDPSession(page);
  await session.send("Performance.enable");
  const busyMs = async (): Promise<number> => {
    const { metrics } = await session.send("Performance.getMetrics");
    const of = (name: string): number => metrics.find((metric) => metric.name === name)?.value ?? 0;
    return (of("ScriptDuration") + of("LayoutDuration") + of("RecalcStyleDuration")) * 1000;
  };
  const box = (await page.locator(".scene").first().boundingBox())!;
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(middle.x, middle.y);
  await page.mouse.down();
  const before = await busyMs();
  for (let i = 1; i <= PAN_FRAMES; i++) {
    await page.mouse.move(middle.x + i * 3, middle.y + i);
    await page.evaluate(() => new Promise(requestAnimationFrame));
  }
  const busy = (await busyMs()) - before;
  await page.mouse.up();
  const marks = await page.locator(".scene-svg path").count();
  await context.close();
  return [
    {
      name: `${WIRES} wires (${marks} paths): script and layout a frame while dragging`,
      value: busy / PAN_FRAMES,
      unit: "ms",
      target: 6,
    },
  ];
}
