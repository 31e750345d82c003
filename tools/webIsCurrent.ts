import { existsSync, statSync } from "node:fs";
import { join } from "node:path";
import { filesBelow, ROOT } from "./sourceFiles.ts";

const SOURCES = ["engine", "apps/web"];
const ENDINGS = [".ts", ".tsx", ".css", ".html", ".svg", ".png"];

/** Whether the web app is built, and no source of it is newer than what was built. */
export function webIsCurrent(): boolean {
  const page = join(ROOT, "apps/web/dist/index.html");
  if (!existsSync(page)) return false;
  const builtMs = statSync(page).mtimeMs;
  return SOURCES.flatMap((folder) => filesBelow(folder, ENDINGS))
    .filter((path) => !/\.(test|fixture)\.tsx?$/.test(path))
    .every((path) => statSync(join(ROOT, path)).mtimeMs <= builtMs);
}
