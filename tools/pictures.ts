/**
 * Every screen of every demo as a picture, at three sizes and in two lights: `npm run pictures [DEMO] [STEP]`, into out/pictures. To be looked at by a
 * person; the tests of the bench use the same server and browser.
 */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { goToStep, openDemo, settled, startBench } from "../apps/web/tests/benchForTests.ts";
import { JOB_STEPS, SCREENS } from "../apps/web/tests/everyScreen.ts";
import { ROOT } from "./sourceFiles.ts";

const DEMOS = ["Two spot lamps", "Aldreth", "Brenzach", "Minazuru", "Orivesta"];
const LIGHTS = ["paper", "night"] as const;
const REST_MS = 2500;

const [demoWord = "", stepWord = ""] = process.argv.slice(2);
const out = join(ROOT, "out/pictures");
mkdirSync(out, { recursive: true });
const bench = await startBench();
try {
  for (const { width, height } of SCREENS) {
    for (const palette of LIGHTS) {
      const { context, page } = await bench.device({ width, height, palette });
      page.on("pageerror", (error) => console.error(`page error: ${error.message}`));
      for (const demo of DEMOS.filter((name) => name.toLowerCase().includes(demoWord))) {
        await page.goto(`${bench.origin}/#/jobs`);
        await openDemo(page, demo);
        for (const step of JOB_STEPS.filter((name) => name.includes(stepWord))) {
          await goToStep(page, step);
          await settled(page);
          await page.waitForTimeout(REST_MS);
          const name = `${demo.split(" ")[0]!.toLowerCase()}-${step}-${width}x${height}-${palette}.png`;
          await page.screenshot({ path: join(out, name) });
          console.log(name);
        }
      }
      await page.goto(`${bench.origin}/#/jobs`);
      await page.waitForTimeout(REST_MS);
      await page.screenshot({ path: join(out, `jobs-${width}x${height}-${palette}.png`) });
      await context.close();
    }
  }
} finally {
  await bench.end();
}
