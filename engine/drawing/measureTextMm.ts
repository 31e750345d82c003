import { FONT_METRICS } from "./fontMetrics.generated.ts";
import { fontRuns, plainWidthMm } from "./fontRuns.ts";
import type { FontFaceKey, FontWeight } from "./paperFonts.ts";
import type { AreaMm, TextMark } from "./scene.ts";

/** Width of one line of text, mm: sum of advance widths (tabular figures, no kerning) times capital height over the face's capital height. */
export function measureTextMm(text: string, capHeightMm: number, weight: FontWeight): number {
  const plainMm = plainWidthMm(text, weight);
  if (plainMm !== null) return plainMm * capHeightMm;
  return fontRuns(text, weight).reduce((sumMm, run) => sumMm + run.widthMm, 0) * capHeightMm;
}

/** Size of the letter square that gives a capital height in a face, so that faces mixed on a line stand equally tall. */
export function emMm(face: FontFaceKey, capHeightMm: number): number {
  const { unitsPerEm, capHeight } = FONT_METRICS[face];
  return (capHeightMm * unitsPerEm) / capHeight;
}

/** Above the base line to the top of tall letters, and below it to the foot of g: in capital heights. */
export const ASCENT_CAPS = 1.1;
export const DESCENT_CAPS = 0.32;

/** The box a text covers, whichever way it is turned. */
export function textAreaMm(mark: TextMark): AreaMm {
  const widthMm = measureTextMm(mark.text, mark.capHeightMm, mark.weight);
  const leftMm = { start: 0, middle: -widthMm / 2, end: -widthMm }[mark.anchor];
  const topMm = -ASCENT_CAPS * mark.capHeightMm;
  const bottomMm = DESCENT_CAPS * mark.capHeightMm;
  if (!mark.turnDeg) {
    const { xMm, yMm } = mark.at;
    return { xMm: xMm + leftMm, yMm: yMm + topMm, widthMm, heightMm: bottomMm - topMm };
  }
  const turn = ((mark.turnDeg ?? 0) * Math.PI) / 180;
  const corners = [leftMm, leftMm + widthMm].flatMap((xMm) =>
    [topMm, bottomMm].map((yMm) => ({
      xMm: mark.at.xMm + xMm * Math.cos(turn) - yMm * Math.sin(turn),
      yMm: mark.at.yMm + xMm * Math.sin(turn) + yMm * Math.cos(turn),
    })),
  );
  const xMm = Math.min(...corners.map((corner) => corner.xMm));
  const yMm = Math.min(...corners.map((corner) => corner.yMm));
  return {
    xMm,
    yMm,
    widthMm: Math.max(...corners.map((corner) => corner.xMm)) - xMm,
    heightMm: Math.max(...corners.map((corner) => corner.yMm)) - yMm,
  };
}
