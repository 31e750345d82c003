import { measureTextMm } from "./measureTextMm.ts";
import type { FontWeight } from "./paperFonts.ts";

/** Pieces a line may be broken between: after a space, a stroke, or a hyphen with three letters before it. No-break spaces hold. */
const PIECE = /(?:[^ /-]|(?<![^ /-]{3})-)*(?:-+|\/+| +|$)/g;

/**
 * Breaks text into lines no wider than `widthMm`. A piece wider than a whole line is broken between characters; nothing is shortened or dropped.
 * Line ends in the text are kept. An empty text is one empty line.
 */
export function wrapText(
  text: string,
  widthMm: number,
  capHeightMm: number,
  weight: FontWeight,
): string[] {
  const fits = (line: string): boolean =>
    measureTextMm(line.trimEnd(), capHeightMm, weight) <= widthMm + 1e-9;
  return text.split(/\r\n|\r|\n/).flatMap((paragraph) => wrapParagraph(paragraph, fits));
}

function wrapParagraph(paragraph: string, fits: (line: string) => boolean): string[] {
  const lines: string[] = [];
  let line = "";
  for (const piece of paragraph.match(PIECE) ?? []) {
    if (fits(line + piece)) {
      line += piece;
      continue;
    }
    if (line !== "") lines.push(line.trimEnd());
    line = "";
    for (const character of piece) {
      if (line !== "" && !fits(line + character)) {
        lines.push(line.trimEnd());
        line = "";
      }
      line += character;
    }
  }
  lines.push(line.trimEnd());
  return lines;
}
