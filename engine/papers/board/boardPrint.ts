import type { PaperSize } from "../../drawing/index.ts";

/** How a board is put on paper. */
export interface BoardPrint {
  readonly paper: PaperSize;
  /** Greatest width of the laid loom, mm. */
  readonly boardWidthMm: number;
  /** What the printer leaves white on each side, mm. */
  readonly marginMm: number;
  /** How far neighbouring sheets lie over each other, mm. */
  readonly overlapMm: number;
  /** What the 100 mm bar measured on a sheet of this printer that was not corrected, across and down; 100 and 100: not corrected. */
  readonly readAcrossMm: number;
  readonly readDownMm: number;
}

/** A common board; margins nearly every printer can keep. */
export const BOARD_PRINT = {
  boardWidthMm: 1200,
  marginMm: 10,
  overlapMm: 10,
  readAcrossMm: 100,
  readDownMm: 100,
} as const;

/** A bar may be read this far from 100 mm; further out it was no reading of this bar. */
export const READING_MM = { least: 90, most: 110 } as const;

/** Bounds of everything a person may choose, mm. */
export const BOARD_LIMITS_MM = {
  boardWidthMm: { least: 350, most: 10_000 },
  marginMm: { least: 0, most: 30 },
  overlapMm: { least: 4, most: 40 },
  readAcrossMm: READING_MM,
  readDownMm: READING_MM,
} as const;

/** Something asked of a print that cannot be. */
export interface BoardPrintFault {
  readonly field: keyof typeof BOARD_LIMITS_MM;
  readonly foundMm: number;
  readonly leastMm: number;
  readonly mostMm: number;
}

/** What of a print cannot be, in the order of the fields; empty: all of it can. */
export const boardPrintFaults = (print: Partial<BoardPrint>): readonly BoardPrintFault[] =>
  (Object.keys(BOARD_LIMITS_MM) as BoardPrintFault["field"][]).flatMap((field) => {
    const foundMm = print[field];
    const { least: leastMm, most: mostMm } = BOARD_LIMITS_MM[field];
    const isSound = foundMm === undefined || (foundMm >= leastMm && foundMm <= mostMm);
    return isSound ? [] : [{ field, foundMm, leastMm, mostMm }];
  });

/**
 * What the bar would have measured uncorrected, when the sheet it was measured on was corrected already: the sheet's bar was drawn 100 × 100 / kept mm long,
 * and the printer made `readMm` of it.
 */
export const readingBehindMm = (keptMm: number, readMm: number): number => (keptMm * readMm) / 100;
