import { CAP_MM, LINE_MM } from "./lineWidth.ts";
import { area, type Mark, type PointMm, point } from "./scene.ts";
import { TEXT_STYLE, textMark } from "./textBlock.ts";

const SQUARE_MM = 20;
const BAR_MM = 100;

/** A 100 mm rule with millimetres, to be measured on the print before anything is cut by it. 100 mm wide, 9 mm tall. */
export function scaleBar(topLeft: PointMm): Mark[] {
  const footMm = topLeft.yMm + 4;
  const ticks = Array.from({ length: BAR_MM + 1 }, (_, i): Mark => {
    const lengthMm = i % 10 === 0 ? 4 : i % 5 === 0 ? 2.6 : 1.4;
    const xMm = topLeft.xMm + i;
    const widthMm = i % 10 === 0 ? LINE_MM.detail : LINE_MM.leader;
    return {
      kind: "line",
      from: point(xMm, footMm - lengthMm),
      to: point(xMm, footMm),
      stroke: { widthMm, colour: "ink" },
    };
  });
  const textMm = footMm + 1.6 + CAP_MM.text;
  const middle = "measure before use: 100 ± 0.5";
  return [
    ...ticks,
    {
      kind: "line",
      from: point(topLeft.xMm, footMm),
      to: point(topLeft.xMm + BAR_MM, footMm),
      stroke: { widthMm: LINE_MM.symbol, colour: "ink" },
    },
    textMark("0", topLeft.xMm, textMm, TEXT_STYLE.text),
    textMark(middle, topLeft.xMm + BAR_MM / 2, textMm, TEXT_STYLE.text, "middle"),
    textMark("100 mm", topLeft.xMm + BAR_MM, textMm, TEXT_STYLE.strong, "end"),
  ];
}

/** A square of 20 mm, to be measured both ways: a printer may stretch one of them. */
export function measureSquare(topLeft: PointMm): Mark[] {
  const middle = point(topLeft.xMm + SQUARE_MM / 2, topLeft.yMm + SQUARE_MM / 2 + CAP_MM.fine / 2);
  return [
    {
      kind: "rect",
      area: area(topLeft.xMm, topLeft.yMm, SQUARE_MM, SQUARE_MM),
      stroke: { widthMm: LINE_MM.detail, colour: "ink" },
    },
    textMark("20 × 20", middle.xMm, middle.yMm, TEXT_STYLE.fine, "middle"),
  ];
}
