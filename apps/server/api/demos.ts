import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The demos that ship with the program: the nearest folder of that name above this file. */
function demoFolder(): string | null {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, "demos")) && dirname(folder) !== folder) folder = dirname(folder);
  const demos = join(folder, "demos");
  return existsSync(demos) ? demos : null;
}

export function demoNames(): readonly string[] {
  const folder = demoFolder();
  if (folder === null) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith(".json"))
    .map((name) => name.slice(0, -".json".length))
    .sort();
}

/** Null for a name that is not in the list; no other path can be made of it. */
export function demoText(name: string): string | null {
  const folder = demoFolder();
  if (folder === null || !demoNames().includes(name)) return null;
  return readFileSync(join(folder, `${name}.json`), "utf8");
}
