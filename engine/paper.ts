/** Second front door, for whoever makes PDF files: it loads the PDF library, which verdicts do not need. */
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { documentToPdf } from "./drawing/documentToPdf.ts";
import {
  type DrawingDocument,
  framedDocument,
  type Palette,
  type PaperFonts,
  type PaperSize,
  palettes,
} from "./drawing/index.ts";
import type { ReadFaces } from "./drawing/pdfFaces.ts";
import { sfntFromWoff } from "./drawing/sfntFromWoff.ts";
import type { CheckedJob } from "./judge/index.ts";
import { type MadeFile, paperFiles } from "./paperFiles.ts";
import {
  BOARD_PRINT,
  type BoardPrint,
  boardPrintFaults,
  boundPapers,
  designPapers,
  type PackPaper,
  type PaperInput,
  paperInput,
} from "./papers/index.ts";
import type { StockList } from "./papers/stock/index.ts";
import { type ProveResult, type TimeCurrent, timeCurrentsOf } from "./prove/index.ts";

export { documentToPdf, type PdfOptions } from "./drawing/documentToPdf.ts";
export { PAPER_FONT_FILES, type PaperFonts, type PaperSize } from "./drawing/index.ts";
export {
  BOARD_LIMITS_MM,
  BOARD_PRINT,
  type BoardPrint,
  type BoardPrintFault,
  boardPrintFaults,
  type PaperInput,
  readingBehindMm,
} from "./papers/index.ts";

/** Which revision of a job a pack is made of, as whoever keeps the job counts them. */
export interface PackIssue {
  readonly revision: number;
  /** When it was saved, YYYY-MM-DD. */
  readonly date: string;
  /** Changes made since that are not saved; the pack shows them and says so. */
  readonly unsavedCount: number;
}

/** What a pack is made for and with. */
export interface PackOptions {
  /** Of the job as it stands in its file: `fingerprint`. */
  readonly fingerprint: string;
  /** Absent: the document's own number and date. */
  readonly issue?: PackIssue | undefined;
  readonly paper: PaperSize;
  /** Bytes of every face in `PAPER_FONT_FILES`. */
  readonly fonts: PaperFonts;
  /** How the full-size loom boards are printed; absent: 1200 mm board, 10 mm margin and overlap, not corrected for a printer. */
  readonly board?: Partial<Omit<BoardPrint, "paper">> | undefined;
  /** Black: every paper for a printer with black ink alone, no greys; absent: colour, with the whole diagram in black beside it. */
  readonly ink?: "colour" | "black" | undefined;
  /** What `prove` answered for this very job, or will: the other papers are made first. Its section then stands in the pack. Absent: the pack has none. */
  readonly proof?: ProveResult | Promise<ProveResult> | undefined;
  /** `timeCurrentsOf` this very job, or will be, where somebody makes them beside; absent: made here when the proof's section is. */
  readonly plots?: Promise<readonly TimeCurrent[]> | undefined;
  /** A shop's price list: the shopping list is then priced. */
  readonly stock?: StockList | undefined;
  /** Told before each paper is written. */
  readonly onPaper?: ((title: string, index: number, count: number) => void) | undefined;
}

/** One file of a pack as `pack.json` lists it. */
export interface PackFile {
  readonly name: string;
  readonly kind: "pdf" | "csv" | "svg" | "dxf";
  readonly title: string;
  /** Sheets of a PDF; null for what has none. */
  readonly pages: number | null;
  readonly sha256: string;
}

/** `pack.json`: what is in the folder and what it was made from. */
export interface PackList {
  readonly copperwrightPack: 1;
  readonly job: {
    readonly id: string;
    readonly name: string;
    readonly revision: number;
    readonly date: string;
    /** Changes since that revision that were not saved; absent: none. */
    readonly unsavedCount?: number;
    readonly fingerprint: string;
  };
  readonly paper: PaperSize;
  readonly verdict: string;
  readonly lengthsComplete: boolean;
  readonly files: readonly PackFile[];
}

export const PACK_LIST_NAME = "pack.json";

/**
 * Everything needed to build and test the loom: file name → bytes, `pack.json` included. Nothing in it comes from a clock or a disk: the same job, paper
 * and fonts give the same bytes.
 *
 * @throws  where a font cannot be read, or the board is asked for beyond `BOARD_LIMITS_MM`: ask `boardPrintFaults` first
 */
export async function packFiles(
  checked: CheckedJob,
  options: PackOptions,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const { result } = checked;
  const { fingerprint, paper, fonts, onPaper } = options;
  const [fault] = boardPrintFaults(options.board ?? {});
  if (fault !== undefined) {
    throw new Error(`${fault.field} ${fault.foundMm} is not ${fault.leastMm} to ${fault.mostMm}`);
  }
  const { input, design } = laidPapers(checked, options);
  const plain = await unwrapped(fonts);
  const read: ReadFaces = new Map();
  const made = new Map<string, readonly MadeFile[]>();
  const count = design.length + (options.proof === undefined ? 1 : 2);
  const make = async (papers: readonly PackPaper[]): Promise<void> => {
    for (const one of papers) {
      if (made.has(one.name)) continue;
      onPaper?.(one.title, made.size, count);
      const inks = { palette: paletteOf(one, options), plain, read };
      made.set(one.name, await paperFiles(input.info, one, inks));
    }
  };
  await make(design);
  const proof = await options.proof;
  const plots = proof === undefined ? [] : ((await options.plots) ?? timeCurrentsOf(checked));
  const papers = boundPapers(input, design, proof ? { result: proof, plots } : null);
  await make([...papers].reverse());
  const files = new Map<string, Uint8Array>();
  const list: PackFile[] = [];
  for (const { bytes, ...about } of papers.flatMap((one) => made.get(one.name)!)) {
    files.set(about.name, bytes);
    list.push({ ...about, sha256: bytesToHex(sha256(bytes)) });
  }
  const { job } = input;
  const packList: PackList = {
    copperwrightPack: 1,
    job: {
      id: job.id,
      name: job.name,
      revision: job.revision,
      date: job.date,
      ...(input.unsavedCount > 0 && { unsavedCount: input.unsavedCount }),
      fingerprint,
    },
    paper,
    verdict: result.verdict,
    lengthsComplete: result.lengthsComplete,
    files: list,
  };
  files.set(PACK_LIST_NAME, utf8ToBytes(`${JSON.stringify(packList, null, 1)}\n`));
  return files;
}

/** One PDF of a pack as sheets to look at, before any file is made. */
export interface PackSheets {
  /** Name of its PDF without the ending. */
  readonly name: string;
  readonly title: string;
  readonly document: DrawingDocument;
  /** Colours it is printed in. */
  readonly palette: Palette;
  /** One drawing as large as it needs, for a roll or a plotter. */
  readonly isRoll: boolean;
}

/** Every PDF `packFiles` would write, as scenes: for a screen that shows them. */
export function packSheets(
  checked: CheckedJob,
  options: Omit<PackOptions, "fonts" | "onPaper" | "proof"> & {
    readonly proof?: ProveResult | undefined;
  },
): readonly PackSheets[] {
  const { input, design } = laidPapers(checked, options);
  const { proof } = options;
  const shown = proof ? { result: proof, plots: timeCurrentsOf(checked) } : null;
  return boundPapers(input, design, shown).flatMap((one) => {
    const { name, title, sheets, plots = [] } = one;
    const document = framedDocument(input.info, title, sheets);
    const palette = paletteOf(one, options);
    const rolls = plots.map((plot) => ({
      name: plot.name,
      title,
      document: { ...document, pages: [plot.page] },
      palette,
      isRoll: true,
    }));
    return [{ name, title, document, palette, isRoll: false }, ...rolls];
  });
}

/**
 * One PDF of the pack alone: the bytes `packFiles` gives it.
 *
 * @param pageIndex  one sheet of it; absent: all of them
 */
export async function packSheetsToPdf(
  { document, palette }: PackSheets,
  fonts: PaperFonts,
  pageIndex?: number,
): Promise<Uint8Array> {
  const pages = document.pages.filter((_, i) => pageIndex === undefined || i === pageIndex);
  return documentToPdf({ ...document, pages }, fonts, { palette });
}

const paletteOf = ({ isBlack }: PackPaper, { ink }: Pick<PackOptions, "ink">): Palette =>
  palettes[ink === "black" || isBlack === true ? "printBlack" : "print"];

/** Every paper of a pack but its cover and its proof, laid out. */
function laidPapers(
  { design, result }: CheckedJob,
  {
    fingerprint,
    issue,
    paper,
    board,
    ink,
    stock,
  }: Omit<PackOptions, "fonts" | "onPaper" | "proof">,
): { readonly input: PaperInput; readonly design: readonly PackPaper[] } {
  const { revision, date, unsavedCount } = issue ?? { ...design.job, unsavedCount: 0 };
  const job = { ...design.job, revision, date };
  const about = { fingerprint, paper, stock, unsavedCount };
  const input = paperInput({ ...design, job }, result, about);
  const papers = designPapers(input, { ...BOARD_PRINT, ...board, paper });
  // A paper in black beside its twin in colour is one too many where all are black.
  return { input, design: papers.filter(({ isBlack }) => !(ink === "black" && isBlack === true)) };
}

/** Fonts as the PDF library reads them quickest, unwrapped once for all papers. */
async function unwrapped(fonts: PaperFonts): Promise<PaperFonts> {
  const faces = await Promise.all(
    Object.entries(fonts).map(async ([face, bytes]) => [face, await sfntFromWoff(bytes)] as const),
  );
  return Object.fromEntries(faces) as PaperFonts;
}
