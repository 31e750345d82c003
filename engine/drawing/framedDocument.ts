import { type Paper, paperSizeMm } from "./paperSize.ts";
import { type DrawingDocument, type Mark, type Page, point } from "./scene.ts";
import { type SheetHead, sheetFrame, sheetRoom } from "./sheetFrame.ts";
import type { SheetInfo } from "./sheetInfo.ts";
import { titleBlock } from "./titleBlock.ts";

/** One sheet before it is framed and numbered. */
export interface Sheet {
  readonly paper: Paper;
  /** Which paper it is: "wire list". */
  readonly documentName: string;
  readonly head: SheetHead;
  /** Place in the outline, from the outside in. */
  readonly bookmark: readonly string[];
  /** Already in place inside `sheetRoom`. */
  readonly marks: readonly Mark[];
  /** A page of its own make, without frame and title block: a sheet of a drawing that goes on over many. */
  readonly ownPage?: ((pageNumber: number, pageCount: number) => Page) | undefined;
}

/** Sheets framed, stamped and numbered through as one document. */
export function framedDocument(
  info: SheetInfo,
  title: string,
  sheets: readonly Sheet[],
): DrawingDocument {
  return {
    title,
    subject: `job ${info.jobId}, revision ${info.revision}: ${info.machine}`,
    date: info.date,
    pages: sheets.map(
      (sheet, i) =>
        sheet.ownPage?.(i + 1, sheets.length) ?? framedPage(info, sheet, i + 1, sheets.length),
    ),
  };
}

function framedPage(info: SheetInfo, sheet: Sheet, pageNumber: number, pageCount: number): Page {
  const { frame } = sheetRoom(sheet.paper, info, sheet.head);
  const corner = point(frame.xMm + frame.widthMm, frame.yMm + frame.heightMm);
  const { documentName, head } = sheet;
  return {
    ...paperSizeMm(sheet.paper),
    title: head.title,
    bookmark: sheet.bookmark,
    marks: [
      ...sheetFrame(sheet.paper, info, head),
      ...titleBlock(info, { documentName, title: head.title, pageNumber, pageCount }, corner),
      ...sheet.marks,
    ],
  };
}
