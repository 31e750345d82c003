import { CAP_MM, LINE_MM, linePitchMm } from "./lineWidth.ts";
import { type Paper, paperSizeMm } from "./paperSize.ts";
import { type AreaMm, area, type Mark, type PointMm, point } from "./scene.ts";
import type { SheetInfo } from "./sheetInfo.ts";
import { SUPPLY_PLATE_WIDTH_MM, supplyPlate } from "./supplyPlate.ts";
import { TEXT_STYLE, textMark } from "./textBlock.ts";
import { TITLE_BLOCK_HEIGHT_MM, TITLE_BLOCK_WIDTH_MM } from "./titleBlock.ts";
import { wrapText } from "./wrapText.ts";

/** Room for holes on the binding side, a thumb elsewhere. */
const BINDING_MARGIN_MM = 20;
const MARGIN_MM = 10;
const INSET_MM = 4;
const PLATE_INSET_MM = 2.5;

/** What stands at the head of a sheet. */
export interface SheetHead {
  readonly title: string;
  /** A line or two under the title: how to read the sheet. */
  readonly lead?: string | undefined;
}

/** The parts of a sheet of paper that content may use. */
export interface SheetRoom {
  readonly frame: AreaMm;
  /** Between head and title block. */
  readonly content: AreaMm;
  /** Left of the title block, for a key; null where the block takes the whole width. */
  readonly foot: AreaMm | null;
}

function frameOf(paper: Paper): AreaMm {
  const { widthMm, heightMm } = paperSizeMm(paper);
  return area(
    BINDING_MARGIN_MM,
    MARGIN_MM,
    widthMm - BINDING_MARGIN_MM - MARGIN_MM,
    heightMm - 2 * MARGIN_MM,
  );
}

/** Where things may stand on a sheet, known before anything is drawn. */
export function sheetRoom(paper: Paper, info: SheetInfo, head: SheetHead): SheetRoom {
  const frame = frameOf(paper);
  const headMm = Math.max(
    plateOf(frame, info).heightMm + PLATE_INSET_MM,
    headText(frame, head).heightMm,
  );
  const topMm = frame.yMm + headMm + 3;
  const footTopMm = frame.yMm + frame.heightMm - TITLE_BLOCK_HEIGHT_MM;
  const footWidthMm = frame.widthMm - TITLE_BLOCK_WIDTH_MM - 2 * INSET_MM;
  return {
    frame,
    content: area(frame.xMm + INSET_MM, topMm, frame.widthMm - 2 * INSET_MM, footTopMm - 3 - topMm),
    foot:
      footWidthMm > 40
        ? area(frame.xMm + INSET_MM, footTopMm, footWidthMm, TITLE_BLOCK_HEIGHT_MM - INSET_MM)
        : null,
  };
}

const plateOf = (frame: AreaMm, info: SheetInfo) =>
  supplyPlate(info, point(frame.xMm + frame.widthMm - PLATE_INSET_MM, frame.yMm + PLATE_INSET_MM));

/** Frame, centring marks, title at the top left and supply plate at the top right. */
export function sheetFrame(paper: Paper, info: SheetInfo, head: SheetHead): Mark[] {
  const frame = frameOf(paper);
  return [
    { kind: "rect", area: frame, stroke: { widthMm: LINE_MM.frame, colour: "ink" } },
    ...centringMarks(paper, frame),
    ...plateOf(frame, info).marks,
    ...headText(frame, head).marks,
  ];
}

function headText(frame: AreaMm, head: SheetHead): { marks: Mark[]; heightMm: number } {
  const widthMm = frame.widthMm - SUPPLY_PLATE_WIDTH_MM - PLATE_INSET_MM - 2 * INSET_MM;
  const xMm = frame.xMm + INSET_MM;
  const titleCapMm = CAP_MM.wireNumber;
  const titlePitchMm = 1.5 * titleCapMm;
  const titles = wrapText(head.title, widthMm, titleCapMm, 800);
  const leads = head.lead ? wrapText(head.lead, widthMm, CAP_MM.text, 400) : [];
  const firstMm = frame.yMm + PLATE_INSET_MM + 1.5 + titleCapMm;
  const leadMm = firstMm + (titles.length - 1) * titlePitchMm + 5.6;
  const leadPitchMm = linePitchMm(CAP_MM.text) * 0.9;
  const endMm = leads.length > 0 ? leadMm + (leads.length - 1) * leadPitchMm : leadMm - 5.6;
  return {
    heightMm: endMm + 1.5 - frame.yMm,
    marks: [
      ...titles.map((line, i) =>
        textMark(line, xMm, firstMm + i * titlePitchMm, TEXT_STYLE.wireNumber),
      ),
      ...leads.map((line, i) => textMark(line, xMm, leadMm + i * leadPitchMm, TEXT_STYLE.text)),
    ],
  };
}

/** Short strokes from the edge of the paper to the frame at the middle of each side. */
function centringMarks(paper: Paper, frame: AreaMm): Mark[] {
  const { widthMm, heightMm } = paperSizeMm(paper);
  const stroke = { widthMm: LINE_MM.frame, colour: "ink" } as const;
  const mark = (from: PointMm, to: PointMm): Mark => ({ kind: "line", from, to, stroke });
  return [
    mark(point(widthMm / 2, 0), point(widthMm / 2, frame.yMm)),
    mark(point(widthMm / 2, heightMm), point(widthMm / 2, frame.yMm + frame.heightMm)),
    mark(point(0, heightMm / 2), point(frame.xMm, heightMm / 2)),
    mark(point(widthMm, heightMm / 2), point(frame.xMm + frame.widthMm, heightMm / 2)),
  ];
}
