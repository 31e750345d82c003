import { fitText } from "./fitText.ts";
import { CAP_MM, LINE_MM } from "./lineWidth.ts";
import { type AreaMm, area, type Mark, type PointMm, point } from "./scene.ts";
import { dateText, type SheetInfo } from "./sheetInfo.ts";
import { TEXT_STYLE, textMark } from "./textBlock.ts";
import { verdictStamp } from "./verdictStamp.ts";

export const TITLE_BLOCK_WIDTH_MM = 180;
export const TITLE_BLOCK_HEIGHT_MM = 24;

export interface TitleBlockText {
  /** Which paper it is: "circuit sheet". */
  readonly documentName: string;
  readonly title: string;
  readonly pageNumber: number;
  readonly pageCount: number;
}

/** Widths of the four columns, left to right: stamp, title, job, document. */
const COLUMNS_MM = [46, 58, 44, 32] as const;

/** The block at the bottom right of every sheet: verdict, title, job and revision, kind of paper and page. */
export function titleBlock(info: SheetInfo, text: TitleBlockText, bottomRight: PointMm): Mark[] {
  const leftMm = bottomRight.xMm - TITLE_BLOCK_WIDTH_MM;
  const topMm = bottomRight.yMm - TITLE_BLOCK_HEIGHT_MM;
  const [stampMm, titleMm, jobMm, documentMm] = COLUMNS_MM;
  const halfMm = TITLE_BLOCK_HEIGHT_MM / 2;
  const titleX = leftMm + stampMm;
  const jobX = titleX + titleMm;
  const documentX = jobX + jobMm;
  const marks: Mark[] = [
    {
      kind: "rect",
      area: area(leftMm, topMm, TITLE_BLOCK_WIDTH_MM, TITLE_BLOCK_HEIGHT_MM),
      stroke: { widthMm: LINE_MM.frame, colour: "ink" },
      fill: "ground",
    },
    ...[titleX, jobX, documentX].map((xMm) => rule(point(xMm, topMm), point(xMm, bottomRight.yMm))),
    rule(point(jobX, topMm + halfMm), point(bottomRight.xMm, topMm + halfMm)),
    ...verdictStamp(
      info.verdict,
      info.verdictNote,
      area(leftMm + 3, topMm + 3.5, stampMm - 6, TITLE_BLOCK_HEIGHT_MM - 7),
    ),
    ...titleCell(text.title, info.jobName, area(titleX, topMm, titleMm, TITLE_BLOCK_HEIGHT_MM)),
    ...cell(
      "job, revision",
      `${info.jobId}, rev ${info.revision}`,
      area(jobX, topMm, jobMm, halfMm),
    ),
    ...cell("date", dateText(info.date), area(jobX, topMm + halfMm, jobMm, halfMm)),
    ...cell("document", text.documentName, area(documentX, topMm, documentMm, halfMm)),
    ...cell(
      "page",
      `${text.pageNumber} of ${text.pageCount}`,
      area(documentX, topMm + halfMm, documentMm, halfMm),
    ),
  ];
  return [{ kind: "group", name: "title block", marks }];
}

const rule = (from: PointMm, to: PointMm): Mark => ({
  kind: "line",
  from,
  to,
  stroke: { widthMm: LINE_MM.detail, colour: "ink" },
});

function titleCell(title: string, jobName: string, box: AreaMm): Mark[] {
  const inner = area(box.xMm + 3, box.yMm + 3, box.widthMm - 6, 11.5);
  const lower = area(box.xMm + 3, box.yMm + 16, box.widthMm - 6, 6);
  return [
    ...fitText(title, inner, { weight: 700, colour: "ink" }),
    ...fitText(jobName, lower, { weight: 400, colour: "ink", capsMm: [CAP_MM.text, CAP_MM.fine] }),
  ];
}

/** A small name over what it names. */
function cell(name: string, value: string, box: AreaMm): Mark[] {
  const inner = area(box.xMm + 2.5, box.yMm + 5.6, box.widthMm - 4, 5.8);
  return [
    textMark(name, box.xMm + 2.5, box.yMm + 3.6, TEXT_STYLE.fine),
    ...fitText(value, inner, { weight: 700, colour: "ink", capsMm: [CAP_MM.text, CAP_MM.fine] }),
  ];
}
