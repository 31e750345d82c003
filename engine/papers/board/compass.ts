import {
  type Drawn,
  LINE_MM,
  type Mark,
  point,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";

/** Which way the machine lies: the loom is seen from its left side, front left. */
export function compass(): Drawn {
  const stroke = { widthMm: LINE_MM.symbol, colour: "ink" } as const;
  const line = (...places: readonly (readonly [number, number])[]): Mark => ({
    kind: "polyline",
    points: places.map(([xMm, yMm]) => point(xMm, yMm)),
    stroke,
  });
  return {
    marks: [
      line([34, 4], [34, 18], [14, 18]),
      line([32.5, 7.5], [34, 4], [35.5, 7.5]),
      line([17.5, 16.5], [14, 18], [17.5, 19.5]),
      textMark("up", 37, 6.5, TEXT_STYLE.strong),
      textMark("front", 0, 19.2, TEXT_STYLE.strong),
      textMark("seen from the left", 14, 24, TEXT_STYLE.text),
    ],
    widthMm: 46,
    heightMm: 26,
  };
}
