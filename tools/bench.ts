import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./sourceFiles.ts";

interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly target?: number;
}

/** Runs every benchmark under tools/bench, or those whose name holds a word given on the command line. */
const words = process.argv.slice(2);
const folder = join(ROOT, "tools/bench");
const files = existsSync(folder)
  ? readdirSync(folder).filter((name) => name.endsWith(".bench.ts"))
  : [];
for (const file of files.sort()) {
  if (words.length > 0 && !words.some((word) => file.includes(word))) continue;
  console.log(`\n${file.replace(".bench.ts", "")}`);
  const { run } = (await import(join(folder, file))) as { run(): Promise<readonly Figure[]> };
  for (const { name, value, unit, target } of await run()) {
    const aim = target === undefined ? "" : `   figure to reach ${target.toLocaleString("en-GB")}`;
    console.log(
      `  ${name.padEnd(64)} ${value.toLocaleString("en-GB", { maximumSignificantDigits: 5 }).padStart(12)} ${unit}${aim}`,
    );
  }
}
