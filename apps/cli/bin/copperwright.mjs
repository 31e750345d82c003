#!/usr/bin/env node
// Starts the bundled command. In a checkout the bundle is made again when a source is newer, so it is never stale.
import { existsSync, readdirSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, "../../..");
const bundle = join(here, "../dist/main.mjs");

function newestMs(folder) {
  let newest = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    if (entry.name === "node_modules" || entry.name === "dist" || entry.name.endsWith(".test.ts"))
      continue;
    const path = join(folder, entry.name);
    const ms = entry.isDirectory() ? newestMs(path) : statSync(path).mtimeMs;
    if (ms > newest) newest = ms;
  }
  return newest;
}

const inCheckout = existsSync(join(root, "tools/build.ts"));
if (inCheckout) {
  const builtMs = existsSync(bundle) ? statSync(bundle).mtimeMs : 0;
  const sourceMs = Math.max(
    ...["engine", "apps/cli", "apps/server", "tools"].map((name) => newestMs(join(root, name))),
  );
  if (sourceMs > builtMs) {
    const { spawnSync } = await import("node:child_process");
    const build = join(root, "tools/build.ts");
    const made = spawnSync(process.execPath, ["--import", "tsx", build, "--command"], {
      cwd: root,
      stdio: ["ignore", 2, 2],
    });
    if (made.status !== 0) process.exit(3);
  }
}
await import(bundle);
