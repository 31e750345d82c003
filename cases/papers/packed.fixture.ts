import { readFileSync } from "node:fs";
import { framedDocument, type PaperSize, type SheetInfo } from "../../engine/drawing/index.ts";
import { fingerprint, type Job, readJob } from "../../engine/job/index.ts";
import { type CheckedJob, checkedJob } from "../../engine/judge/index.ts";
import { type PackPaper, packPapers, paperInput } from "../../engine/papers/index.ts";

export const DEMOS = [
  "accessory-five-wires",
  "aldreth-single",
  "brenzach-twin",
  "minazuru-four",
  "orivesta-enduro",
] as const;

export function demoJob(name: string): Job {
  const text = readFileSync(new URL(`../../demos/${name}.json`, import.meta.url), "utf8");
  const read = readJob(text);
  if (!read.ok) throw new Error(`${name}: ${read.refusals[0]?.message}`);
  return read.job;
}

const checkedDemos = new Map<string, CheckedJob>();

/** A demo checked once for all tests of a file. */
export function checkedDemo(name: string): CheckedJob {
  const known = checkedDemos.get(name) ?? checkedJob(demoJob(name));
  checkedDemos.set(name, known);
  return known;
}

/** Papers of a checked job, with the pages as they are printed. */
export function papersOf(
  { design, result }: CheckedJob,
  paper: PaperSize,
): readonly (PackPaper & {
  readonly info: SheetInfo;
  readonly pages: ReturnType<typeof framedDocument>["pages"];
})[] {
  const input = paperInput(design, result, { fingerprint: fingerprint(design.job), paper });
  return packPapers(input).map((one) => ({
    ...one,
    info: input.info,
    pages: framedDocument(input.info, one.title, one.sheets).pages,
  }));
}
