import { encode } from "uqr";
import { area, type Block, type Mark, TEXT_STYLE, textMark } from "../../drawing/index.ts";
import type { PaperInput } from "../paperInput.ts";

/** Five dots of a printer or a scanner at 150 to the inch: below that a reader takes neighbours for one. */
const MODULE_MM = 0.85;
/** Modules of white round the code, as its standard asks. */
const QUIET_COUNT = 4;

/** What the square code says: which job, which state of it, and nothing about its owner. */
export const jobCodeText = ({ info, fingerprint }: PaperInput): string =>
  `${info.jobId} rev ${info.revision} ${fingerprint}`;

/** Width of the code with the white it needs round it. */
export function jobCodeSideMm(input: PaperInput): number {
  return (codeOf(input).size + 2 * QUIET_COUNT) * MODULE_MM;
}

const codeOf = (input: PaperInput) => encode(jobCodeText(input), { ecc: "M", border: 0 });

/** A square code of job id, revision and fingerprint at the right of whatever follows it: it takes no height of its own. */
export function jobCodeBlock(input: PaperInput, widthMm: number): Block {
  const leftMm = widthMm - jobCodeSideMm(input) + QUIET_COUNT * MODULE_MM;
  const topMm = (1 + QUIET_COUNT) * MODULE_MM;
  const { data, size } = codeOf(input);
  // Each row's dark modules as bars: neighbours drawn as one leave no hair between them.
  const bars = data.flatMap((row, j): Mark[] =>
    runsOf(row).map(({ from, to }) => ({
      kind: "rect",
      fill: "ink",
      area: area(
        leftMm + from * MODULE_MM,
        topMm + j * MODULE_MM,
        (to - from) * MODULE_MM,
        MODULE_MM,
      ),
    })),
  );
  const wordsY = topMm + size * MODULE_MM + 4;
  return {
    heightMm: 0,
    keepWithNext: true,
    marks: [
      { kind: "group", name: "job code", marks: bars },
      textMark("which file made this", widthMm, wordsY, TEXT_STYLE.fine, "end"),
    ],
  };
}

function runsOf(
  row: readonly boolean[],
): readonly { readonly from: number; readonly to: number }[] {
  const runs: { from: number; to: number }[] = [];
  row.forEach((isDark, i) => {
    if (!isDark) return;
    const last = runs.at(-1);
    if (last !== undefined && last.to === i) last.to = i + 1;
    else runs.push({ from: i, to: i + 1 });
  });
  return runs;
}
