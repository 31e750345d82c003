import { fingerprint, type ProveResult } from "@copperwright/engine";
import {
  PAPER_FONT_FILES,
  type PackSheets,
  type PaperFonts,
  type PaperSize,
  packFiles,
  packSheets,
} from "@copperwright/engine/paper";
import { type Picture, type PictureLight, pictureOf } from "../../drawing/picture.ts";
import type { Progress } from "../../engine/answers.ts";
import type { Held } from "../../engine/held.ts";
import { FONT_ADDRESSES } from "./fontAddresses.ts";
import { readTicks, type TicksRead } from "./takeAway/readTicks.ts";
import { takeAwayData } from "./takeAway/takeAwayData.ts";
import { takeAwayHtml } from "./takeAway/takeAwayHtml.ts";

/** How the papers are to be made. */
export interface PaperChoice {
  readonly paper: PaperSize;
  readonly board: {
    readonly boardWidthMm: number;
    readonly marginMm: number;
    readonly overlapMm: number;
  };
}

export interface PaperLine {
  readonly name: string;
  readonly title: string;
  readonly pageCount: number;
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

function sheetsOf(held: Held, choice: PaperChoice): readonly PackSheets[] {
  const print = fingerprint(held.job);
  const proof = proofOf(print);
  const key = `${print} ${JSON.stringify(choice)} ${"proof" in proof}`;
  if (laidOut?.key !== key) {
    const sheets = packSheets(held.checked(), { fingerprint: print, ...choice, ...proof });
    laidOut = { key, sheets };
  }
  return laidOut.sheets;
}

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
    sheetsOf(held, choice).map(({ name, title, document }) => ({
      name,
      title,
      pageCount: document.pages.length,
    })),

  papersPage(
    held: Held,
    {
      choice,
      name,
      index,
      light,
    }: { choice: PaperChoice; name: string; index: number; light: PictureLight },
  ): Picture | null {
    const page = sheetsOf(held, choice).find((paper) => paper.name === name)?.document.pages[index];
    return page === undefined ? null : pictureOf({ ...page, marks: page.marks }, light);
  },

  papersTakeAway: (held: Held): string => takeAwayHtml(takeAwayData(held.checked())),

  papersTicks: (held: Held, { text }: { readonly text: string }): TicksRead =>
    readTicks(held.job, text),

  /** Every file of the pack, as the command `pack` makes them. */
  async papersPack(
    held: Held,
    choice: PaperChoice,
    progress: Progress,
  ): Promise<readonly MadeFile[]> {
    const fonts = await fetchFonts();
    const print = fingerprint(held.job);
    const files = await packFiles(held.checked(), {
      fingerprint: print,
      ...choice,
      ...proofOf(print),
      fonts,
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
