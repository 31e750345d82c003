import { readdirSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..");

const SKIPPED = new Set(["node_modules", "dist", ".git", ".cache"]);

/** Paths below a folder of the repository, relative to its root, sorted; only those with one of the endings. */
export function filesBelow(folder: string, endings: readonly string[]): readonly string[] {
  const found: string[] = [];
  const walk = (path: string) => {
    for (const entry of readdirSync(path, { withFileTypes: true })) {
      if (SKIPPED.has(entry.name)) continue;
      const below = join(path, entry.name);
      if (entry.isDirectory()) walk(below);
      else if (endings.some((ending) => entry.name.endsWith(ending))) {
        found.push(relative(ROOT, below).replaceAll("\\", "/"));
      }
    }
  };
  walk(join(ROOT, folder));
  return found.sort();
}
