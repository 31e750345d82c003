import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { nodeWorld } from "../../apps/cli/nodeWorld.ts";
import { runCommandLine } from "../../apps/cli/runCommandLine.ts";
import { filesBelow, ROOT } from "../sourceFiles.ts";
import { consoleBlocks, matchesShown, shellWords } from "./consoleBlocks.ts";

const scratch = mkdtempSync(join(tmpdir(), "copperwright-guide-"));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

/** Runs a command of the guide; `out/…` in it stands for a scratch folder, so that examples leave nothing behind. */
async function run(command: string): Promise<string> {
  let text = "";
  const outside = (path: string) =>
    path.startsWith("out/") ? join(scratch, path) : join(ROOT, path);
  const world = {
    ...nodeWorld,
    readText: (path: string) => nodeWorld.readText(outside(path)),
    writeText: (path: string, content: string) => nodeWorld.writeText(outside(path), content),
    listFolder: (path: string) => nodeWorld.listFolder(outside(path)),
    replaceFolder: (path: string, files: ReadonlyMap<string, Uint8Array>) =>
      nodeWorld.replaceFolder(outside(path), files),
    out: (piece: string) => {
      text += piece;
    },
    err: () => {},
  };
  await runCommandLine(world, shellWords(command).slice(1));
  return text;
}

/** Pages that show commands; the others are prose. */
const documents = ["README.md", ...filesBelow("docs/guide", [".md"])].filter(
  (path) => consoleBlocks(readFileSync(join(ROOT, path), "utf8")).length > 0,
);

describe.each(documents)("%s shows what the command prints", (document) => {
  const text = readFileSync(join(ROOT, document), "utf8");
  const blocks = consoleBlocks(text).filter(({ command }) => command.startsWith("copperwright "));
  for (const { command, expected } of blocks) {
    test(command, async () => {
      const actual = await run(command);
      if (process.env.GUIDE_WRITE === "1") return rewrite(document, command, actual);
      if (!matchesShown(actual, expected)) expect(actual).toBe(expected);
    });
  }
});

/** With GUIDE_WRITE=1 the document is brought up to date instead of compared; a person then reads the difference. */
function rewrite(document: string, command: string, actual: string): void {
  const path = join(ROOT, document);
  const text = readFileSync(path, "utf8");
  const block = consoleBlocks(text).find((one) => one.command === command);
  if (block === undefined || matchesShown(actual, block.expected)) return;
  writeFileSync(path, text.slice(0, block.from) + actual + text.slice(block.to));
}
