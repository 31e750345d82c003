import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { ROOT } from "./sourceFiles.ts";

/** The main job until there is a bench to open: the largest demo, checked and packed. */
const DEMO = "brenzach-twin";
const FOLDER = "papers-out";

const command = join(ROOT, "node_modules/.bin/copperwright");
const run = (...words: readonly string[]) =>
  spawnSync(command, words, { cwd: ROOT, stdio: "inherit" }).status ?? 3;

const checked = run("check", `demos/${DEMO}.json`);
if (checked > 1) process.exit(checked);
const packed = run("pack", `demos/${DEMO}.json`, "--out", FOLDER);
if (packed > 1) process.exit(packed);
console.log(`\nThe papers are in ${join(ROOT, FOLDER)}. Begin with 00-cover.`);
