import {
  fingerprint,
  type Job,
  type ProveResult,
  readStockList,
  type StockList,
} from "@copperwright/engine";
import {
  PAPER_FONT_FILES,
  type PackIssue,
  type PackSheets,
  type PaperFonts,
  type PaperSize,
  packFiles,
  packSheets,
  packSheetsToPdf,
} from "@copperwright/engine/paper";
import { type Picture, pictureOf } from "../../drawing/picture.ts";
import type { Progress } from "../../engine/answers.ts";
import type { Held } from "../../engine/held.ts";
import { FONT_ADDRESSES } from "./fontAddresses.ts";
import { readTicks, type TicksRead } from "./takeAway/readTicks.ts";
import { takeAwayData } from "./takeAway/takeAwayData.ts";
import { takeAwayHtml } from "./takeAway/takeAwayHtml.ts";

/** How the papers are to be made; the same words as the command `pack` takes. */
export interface PaperChoice {
  readonly paper: PaperSize;
  readonly ink: "colour" | "black";
  readonly board: {
    readonly boardWidthMm: number;
    readonly marginMm: number;
    readonly overlapMm: number;
    readonly readAcrossMm: number;
    readonly readDownMm: number;
  };
  /** Which revision the papers are of; null: the document's own number and date. */
  readonly issue: PackIssue | null;
  /** A shop's price list as it was given; null: the shopping list has no prices. */
  readonly stockText: string | null;
}

export interface PaperLine {
  readonly name: string;
  readonly title: string;
  readonly pageCount: number;
  readonly isRoll: boolean;
}

/** One sheet as it will be printed. */
export interface PaperPage {
  readonly picture: Picture;
  /** Black ink alone: it stands on white whatever the light. */
  readonly isBlack: boolean;
}

export interface MadeFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Sheets last asked for; laid out once for all previews of the same job and paper. */
let laidOut: { readonly key: string; readonly sheets: readonly PackSheets[] } | null = null;

/** The full proof that goes with the papers, and the job it is of. */
let proved: { readonly fingerprint: string; readonly result: ProveResult } | null = null;

/** Of exactly this job; absent: none has been made of it. */
function proofOf(print: string): { readonly proof?: ProveResult } {
  return proved?.fingerprint === print ? { proof: proved.result } : {};
}

/** What the engine is asked for; a price list that does not read leaves the shopping list without prices, as Parts says. */
function askedOf(held: Held, { stockText, issue, ...choice }: PaperChoice) {
  const stock = stockText === null ? null : stockOf(stockText);
  return {
    fingerprint: fingerprint(issued(held.job, issue)),
    ...choice,
    ...(issue && { issue }),
    ...proofOf(fingerprint(held.job)),
    ...(stock && { stock }),
  };
}

/** The job as the file it leaves the bench in: the same fingerprint, so that paper and file are known to belong together. */
const issued = (job: Job, issue: PackIssue | null): Job =>
  issue === null ? job : { ...job, revision: issue.revision, date: issue.date };

/** The price list read last; it is the same for every sheet looked at. */
let listed: { readonly text: string; readonly stock: StockList | null } | null = null;

function stockOf(text: string): StockList | null {
  if (listed?.text !== text) {
    const read = readStockList(text);
    listed = { text, stock: read.ok ? read.stock : null };
  }
  return listed.stock;
}

function sheetsOf(held: Held, choice: PaperChoice): readonly PackSheets[] {
  const asked = askedOf(held, choice);
  const key = `${asked.fingerprint} ${JSON.stringify(choice)} ${"proof" in asked}`;
  if (laidOut?.key !== key) laidOut = { key, sheets: packSheets(held.checked(), asked) };
  return laidOut.sheets;
}

const sheetsNamed = (held: Held, choice: PaperChoice, name: string): PackSheets | undefined =>
  sheetsOf(held, choice).find((paper) => paper.name === name);

export const papersAnswers = {
  /** Keeps the proof of the job held beside its papers. */
  papersKeepProof(held: Held, result: ProveResult): void {
    proved = { fingerprint: fingerprint(held.job), result };
  },

  /** `hasProof` only says that the list is to be made again once a proof is there. */
  papersList: (
    held: Held,
    { choice }: { readonly choice: PaperChoice; readonly hasProof: boolean },
  ): readonly PaperLine[] =>
    sheetsOf(held, choice).map(({ name, title, document, isRoll }) => ({
      name,
      title,
      pageCount: document.pages.length,
      isRoll,
    })),

  papersPage(
    held: Held,
    { choice, name, index }: { choice: PaperChoice; name: string; index: number },
  ): PaperPage | null {
    const paper = sheetsNamed(held, choice, name);
    const page = paper?.document.pages[index];
    if (paper === undefined || page === undefined) return null;
    const isBlack = !paper.palette.hasGreys;
    return { picture: pictureOf(page, isBlack ? paper.palette : undefined), isBlack };
  },

  /** One PDF of the pack, or one sheet of it (-1: the last); null where the pack has none of that name. */
  async papersPdf(
    held: Held,
    { choice, name, index }: { choice: PaperChoice; name: string; index?: number },
  ): Promise<Uint8Array | null> {
    const paper = sheetsNamed(held, choice, name);
    if (paper === undefined) return null;
    const { length } = paper.document.pages;
    const pageIndex = index !== undefined && index < 0 ? length + index : index;
    return packSheetsToPdf(paper, await fetchFonts(), pageIndex);
  },

  papersTakeAway: (held: Held, { issue }: { readonly issue: PackIssue | null }): string =>
    takeAwayHtml(takeAwayData(held.checked(), issue)),

  papersTicks: (held: Held, { text }: { readonly text: string }): TicksRead =>
    readTicks(held.job, text),

  /** Every file of the pack, as the command `pack` makes them. */
  async papersPack(
    held: Held,
    choice: PaperChoice,
    progress: Progress,
  ): Promise<readonly MadeFile[]> {
    const files = await packFiles(held.checked(), {
      ...askedOf(held, choice),
      fonts: await fetchFonts(),
      onPaper: (title, index, count) => progress(index / count, title),
    });
    return [...files].map(([name, bytes]) => ({ name, bytes }));
  },
};

async function fetchFonts(): Promise<PaperFonts> {
  const faces = await Promise.all(
    Object.keys(PAPER_FONT_FILES).map(async (face) => {
      const answer = await fetch(FONT_ADDRESSES[face as keyof PaperFonts]);
      if (!answer.ok)
        throw new Error(`The lettering ${face} could not be loaded (${answer.status}).`);
      return [face, new Uint8Array(await answer.arrayBuffer())] as const;
    }),
  );
  return Object.fromEntries(faces) as unknown as PaperFonts;
}
