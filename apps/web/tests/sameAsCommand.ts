import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, type Unzipped } from "fflate";
import { PDFDocument } from "pdf-lib";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { ROOT } from "../../../tools/sourceFiles.ts";

const COMMAND = join(ROOT, "apps/cli/bin/copperwright.mjs");

/**
 * The command makes the same files of the same job, proof and all. Browser and Node compress a PDF in their own ways and differ in the last digit of an
 * exponential: PDFs are held to their pages and their sizes, texts to nine digits.
 *
 * @param options  words for the command, such as `--paper a3`
 */
export async function expectSameAsCommand(
  folder: string,
  page: Page,
  files: Unzipped,
  options: readonly string[] = [],
): Promise<void> {
  const job = await page.evaluate(async () => {
    const key = location.hash.split("/")[2];
    return (await fetch(`/api/jobs/${key}/export`)).text();
  });
  const [path, out] = [join(folder, "job.json"), join(folder, "pack")];
  writeFileSync(path, job);
  execFileSync(process.execPath, [COMMAND, "pack", path, "--out", out, ...options], {
    stdio: "ignore",
    // Readings of a printer are kept among these settings, not the tester's own.
    env: { ...process.env, XDG_CONFIG_HOME: join(folder, "settings") },
  });
  const unsealed = (text: string): unknown => {
    const { files: listed, ...about } = JSON.parse(text);
    return { ...about, files: listed.map(({ sha256: _, ...file }: { sha256: string }) => file) };
  };
  const byCommand = (name: string): string => readFileSync(join(out, name), "utf8");
  expect(unsealed(strFromU8(files["pack.json"]!))).toEqual(unsealed(byCommand("pack.json")));
  const texts = Object.keys(files).filter((name) => /\.(csv|svg|dxf)$/.test(name));
  expect(texts.length).toBeGreaterThan(10);
  for (const name of texts) {
    const [here, there] = [strFromU8(files[name]!), byCommand(name)].map((text) =>
      nineDigits(name.startsWith("15-bundle") ? withoutLastColumn(text) : text),
    );
    expect(here, name).toBe(there);
  }
  for (const name of Object.keys(files).filter((one) => one.endsWith(".pdf"))) {
    expect(await pageSizes(files[name]!), name).toEqual(
      await pageSizes(readFileSync(join(out, name))),
    );
  }
}

async function pageSizes(pdf: Uint8Array): Promise<readonly string[]> {
  const read = await PDFDocument.load(pdf);
  return read
    .getPages()
    .map((page) => `${page.getWidth().toFixed(3)} ${page.getHeight().toFixed(3)}`);
}

/** How many steps a packing took: another last digit may lead the search another way to the same packing. */
const withoutLastColumn = (text: string): string => text.replace(/,\w+$/gm, "");

const nineDigits = (text: string): string =>
  text.replace(/\d+\.\d+(?:e[+-]?\d+)?/g, (figure) => Number(figure).toPrecision(9));
