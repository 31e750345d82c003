import {
  area,
  type Mark,
  moveMarks,
  type Page,
  palettes,
  type SheetInfo,
  stretchMarks,
} from "../../drawing/index.ts";
import { FOOTER_HEIGHT_MM, tileFooter } from "../tiles/tileFooter.ts";
import { ratiosOf } from "../tiles/tiling.ts";
import { type BoardDrawing, facingOf } from "./boardDrawing.ts";
import type { BoardPrint } from "./boardPrint.ts";

/** The whole board on one sheet as long as it needs, for a roll or a plotter. */
export function rollPage(
  drawing: BoardDrawing,
  print: BoardPrint,
  info: SheetInfo,
  title: string,
): Page {
  const { marginMm } = print;
  const ratios = ratiosOf(print);
  const left = marginMm / ratios.acrossRatio;
  const top = marginMm / ratios.downRatio;
  const widthMm = Math.max(drawing.widthMm, 195);
  const foot = area(left, top + drawing.heightMm, widthMm, FOOTER_HEIGHT_MM);
  const facing = facingOf(drawing);
  const words = {
    title,
    facing,
    name: "roll",
    place: "the whole board",
    pageOrder: 1,
    pageCount: 1,
  };
  const marks: Mark[] = [...moveMarks(drawing.marks, left, top), ...tileFooter(info, words, foot)];
  return {
    widthMm: widthMm * ratios.acrossRatio + 2 * marginMm,
    heightMm: (drawing.heightMm + FOOTER_HEIGHT_MM) * ratios.downRatio + 2 * marginMm,
    title,
    bookmark: [title],
    marks: stretchMarks(marks, ratios, palettes.print),
  };
}
