import { type CheckResult, printNumber } from "@copperwright/engine";
import type { PackList } from "@copperwright/engine/paper";

const VERDICTS = {
  fit: "FIT: nothing has to be put right.",
  mend: "MEND: put the findings on the cover right before the loom is used.",
  stop: "STOP: do not connect the battery. The cover says why.",
  "not-proven": "NOT PROVEN: the cover says which figure has to be confirmed.",
} as const;

/** The printer the boards are corrected for, and what it makes of 100 mm. */
export interface CorrectedFor {
  /** Null: not corrected. */
  readonly printer: string | null;
  readonly readAcrossMm: number;
  readonly readDownMm: number;
}

/** Where the papers are, what they say, and how many sheets there are to print. */
export function printPack(
  out: string,
  result: CheckResult,
  list: PackList,
  corrected: CorrectedFor,
): string {
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
    ...(corrected.printer === null ? [] : [correctedText(corrected)]),
    VERDICTS[result.verdict],
    ...(list.lengthsComplete ? [] : ["Some lengths are not measured: the cut list is not final."]),
  ];
  return `${lines.join("\n")}\n`;
}

const correctedText = ({ printer, readAcrossMm, readDownMm }: CorrectedFor): string =>
  `Boards are corrected for printer ${printer}: it makes ${printNumber(readAcrossMm, 1)} mm across and ${printNumber(readDownMm, 1)} mm down of 100. Their bar must now measure 100 mm.`;
