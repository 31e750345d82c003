import type { CsvValue, Page, Sheet } from "../drawing/index.ts";

/** One paper of a pack before any format is written: sheets, the same figures as rows, and the drawings that stand on it. */
export interface PackPaper {
  /** "04-wire-list": name of its files without their ending, in reading order. */
  readonly name: string;
  readonly title: string;
  readonly sheets: readonly Sheet[];
  /** First row: headings. Null: nothing that could be sorted. */
  readonly rows: readonly (readonly CsvValue[])[] | null;
  /** Name of the drawing file of each sheet; null where the paper is a list. */
  readonly drawings: readonly string[] | null;
  /** True: set for a printer with black ink alone. */
  readonly isBlack?: boolean | undefined;
  /** Drawings larger than a sheet, each written whole for a roll or a plotter. */
  readonly plots?: readonly { readonly name: string; readonly page: Page }[] | undefined;
}
