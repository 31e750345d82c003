import type { CheckResult } from "@copperwright/engine";
import type { PackList } from "@copperwright/engine/paper";

const VERDICTS = {
  fit: "FIT: nothing has to be put right.",
  mend: "MEND: put the findings on the cover right before the loom is used.",
  stop: "STOP: do not connect the battery. The cover says why.",
  "not-proven": "NOT PROVEN: the cover says which figure has to be confirmed.",
} as const;

/** Where the papers are, what they say, and how many sheets there are to print. */
export function printPack(out: string, result: CheckResult, list: PackList): string {
  const pdfs = list.files.filter(({ kind }) => kind === "pdf");
  const sheetCount = pdfs.reduce((sum, { pages }) => sum + (pages ?? 0), 0);
  const width = Math.max(...pdfs.map(({ name }) => name.length));
  const lines = [
    `Wrote ${pdfs.length} papers, ${sheetCount} sheets of ${list.paper}, to ${out}`,
    ...pdfs.map(
      ({ name, title, pages }) =>
        `  ${name.padEnd(width)}  ${title}, ${pages} ${pages === 1 ? "sheet" : "sheets"}`,
    ),
    "",
    VERDICTS[result.verdict],
    ...(list.lengthsComplete ? [] : ["Some lengths are not measured: the cut list is not final."]),
  ];
  return `${lines.join("\n")}\n`;
}
