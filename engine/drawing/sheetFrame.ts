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
  const plateMm = plateOf(frame, info).heightMm + PLATE_INSET_MM;
  const headMm = Math.max(plateMm, headText(frame, head, plateMm).heightMm);
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
  const plate = plateOf(frame, info);
  return [
    { kind: "rect", area: frame, stroke: { widthMm: LINE_MM.frame, colour: "ink" } },
    ...centringMarks(paper, frame),
    ...plate.marks,
    ...headText(frame, head, plate.heightMm + PLATE_INSET_MM).marks,
  ];
}

interface HeadText {
  readonly marks: Mark[];
  readonly heightMm: number;
}

/** Title at the left of the plate; the lead under it, beside the plate or below it over the whole width, whichever ends higher. */
function headText(frame: AreaMm, head: SheetHead, plateMm: number): HeadText {
  const wideMm = frame.widthMm - 2 * INSET_MM;
  const besideMm = wideMm - SUPPLY_PLATE_WIDTH_MM - PLATE_INSET_MM;
  const beside = textBeside(frame, head, besideMm, { widthMm: besideMm, belowMm: 0 });
  if (beside.heightMm <= plateMm) return beside;
  const below = textBeside(frame, head, besideMm, { widthMm: wideMm, belowMm: plateMm });
  return below.heightMm < beside.heightMm ? below : beside;
}

function textBeside(
  frame: AreaMm,
  head: SheetHead,
  titleWidthMm: number,
  lead: { readonly widthMm: number; readonly belowMm: number },
): HeadText {
  const xMm = frame.xMm + INSET_MM;
  const titleCapMm = CAP_MM.wireNumber;
  const titlePitchMm = 1.5 * titleCapMm;
  const titles = wrapText(head.title, titleWidthMm, titleCapMm, 800);
  const leads = head.lead ? wrapText(head.lead, lead.widthMm, CAP_MM.text, 400) : [];
  const firstMm = frame.yMm + PLATE_INSET_MM + 1.5 + titleCapMm;
  const lastMm = firstMm + (titles.length - 1) * titlePitchMm;
  const leadMm = Math.max(lastMm + 5.6, frame.yMm + lead.belowMm + 1.5 * CAP_MM.text);
  const leadPitchMm = linePitchMm(CAP_MM.text) * 0.9;
  const endMm = leads.length > 0 ? leadMm + (leads.length - 1) * leadPitchMm : lastMm;
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
