import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { buildWeb } from "./build.ts";
import { ROOT } from "./sourceFiles.ts";
import { webIsCurrent } from "./webIsCurrent.ts";

/** `npm start` opens the bench; `npm start -- --check` does the main job once without a person and ends. */
const [first, ...rest] = process.argv.slice(2);
if (first === "--check") checkAndPack();
else await open(first === undefined ? [] : [first, ...rest]);

/** Builds what is missing and opens the bench in this process, so that Ctrl+C reaches it. */
async function open(words: readonly string[]): Promise<void> {
  if (!webIsCurrent()) {
    console.error("Building the page of the bench.");
    await buildWeb();
  }
  process.argv.splice(2, Number.POSITIVE_INFINITY, "open", ...words);
  await import(join(ROOT, "apps/cli/bin/copperwright.mjs"));
}

/** The largest demo, checked and packed. */
function checkAndPack(): void {
  const demo = "brenzach-twin";
  const folder = "papers-out";
  const command = join(ROOT, "node_modules/.bin/copperwright");
  const run = (...words: readonly string[]) =>
    spawnSync(command, words, { cwd: ROOT, stdio: "inherit" }).status ?? 3;
  const checked = run("check", `demos/${demo}.json`);
  if (checked > 1) process.exit(checked);
  const packed = run("pack", `demos/${demo}.json`, "--out", folder);
  if (packed > 1) process.exit(packed);
  console.log(`\nThe papers are in ${join(ROOT, folder)}. Begin with 00-cover.`);
}
