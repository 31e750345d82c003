import {
  type AreaMm,
  area,
  CAP_MM,
  dateText,
  fitText,
  type Mark,
  measureSquare,
  point,
  poleSigns,
  type SheetInfo,
  scaleBar,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";

export const FOOTER_HEIGHT_MM = 24;
const BAR_MM = 100;
const SQUARE_X_MM = 105;
const WORDS_X_MM = 130;

export interface FooterWords {
  /** "B2", or "roll". */
  readonly name: string;
  /** "tile 5 of 9". */
  readonly place: string;
  readonly title: string;
  /** Which way the machine lies on it; empty where the job does not say. */
  readonly facing: string;
  readonly pageOrder: number;
  readonly pageCount: number;
}

/** The foot of every full-size sheet: bar and square to measure, which sheet this is, and everything a sheet says of its job. */
export function tileFooter(info: SheetInfo, words: FooterWords, foot: AreaMm): Mark[] {
  const { xMm, yMm, widthMm } = foot;
  const { live, earth } = poleSigns(info);
  const textX = xMm + WORDS_X_MM;
  const restMm = widthMm - WORDS_X_MM;
  const fine = { weight: 400, colour: "ink", capsMm: [CAP_MM.text, CAP_MM.fine] } as const;
  const fitted = (text: string, x: number, y: number, width: number): Mark[] =>
    fitText(text, area(x, y, width, 3.6), fine);
  return [
    ...scaleBar(point(xMm, yMm + 1.5)),
    ...fitted(`${words.title}; print at 100 %, no fitting`, xMm, yMm + 12, BAR_MM),
    ...fitted(
      `${info.machine}; job ${info.jobId}, rev ${info.revision}, ${dateText(info.date)}`,
      xMm,
      yMm + 16,
      BAR_MM,
    ),
    ...fitted(
      `${info.nominalV} V, live ${live}, earth ${earth}; verdict ${info.verdict}`,
      xMm,
      yMm + 20,
      BAR_MM,
    ),
    ...measureSquare(point(xMm + SQUARE_X_MM, yMm + 2)),
    textMark(words.name, textX, yMm + 10, TEXT_STYLE.title),
    ...fitted(words.place, textX, yMm + 12.5, Math.min(58, restMm)),
    ...fitted(
      `page ${words.pageOrder} of ${words.pageCount}`,
      textX,
      yMm + 16.5,
      Math.min(58, restMm),
    ),
    ...fitted(words.facing, textX, yMm + 20.5, Math.min(60, restMm)),
  ];
}
