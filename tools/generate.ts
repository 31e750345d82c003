import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { ROOT } from "./sourceFiles.ts";

/** Each generator returns path → text. Adding a generated file is adding one line here. */
const GENERATORS: readonly (() => Promise<ReadonlyMap<string, string>>)[] = [
  async () => (await import("./generate/tables.ts")).generateTables(),
  async () => (await import("./generate/messages.ts")).generateMessages(),
  async () => (await import("./generate/jobSchema.ts")).generateJobSchema(),
  async () => (await import("./generate/reference.ts")).generateReference(),
];

const compare = process.argv.includes("--compare");
let stale = 0;
for (const generator of GENERATORS) {
  for (const [path, text] of await generator()) {
    const full = join(ROOT, path);
    const before = existsSync(full) ? readFileSync(full, "utf8") : null;
    if (before === text) continue;
    if (compare) {
      console.error(`${path} is not what the generator makes: run npm run generate`);
      stale += 1;
    } else {
      mkdirSync(dirname(full), { recursive: true });
      writeFileSync(full, text);
      console.error(`wrote ${path}`);
    }
  }
}
process.exit(stale === 0 ? 0 : 1);
