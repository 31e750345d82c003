import type { ColourToken } from "./colourToken.ts";
import { CAP_MM } from "./lineWidth.ts";
import type { FontWeight } from "./paperFonts.ts";
import type { AreaMm, TextMark } from "./scene.ts";
import { textMark } from "./textBlock.ts";
import { wrapText } from "./wrapText.ts";

export interface FitStyle {
  readonly weight: FontWeight;
  readonly colour: ColourToken;
  readonly anchor?: TextMark["anchor"] | undefined;
  /** Heights to try, largest first. */
  readonly capsMm?: readonly number[] | undefined;
}

const PITCH_CAPS = 1.75;

/**
 * Text in a box of fixed size, as a title block has: the largest height of the scale at which it fits wrapped. Where even the smallest does
 * not, the last line that fits ends in an ellipsis; the full text stands elsewhere on the sheet.
 */
export function fitText(text: string, box: AreaMm, style: FitStyle): TextMark[] {
  const capsMm = style.capsMm ?? [CAP_MM.part, CAP_MM.text, CAP_MM.fine];
  const linesAt = (capMm: number) => wrapText(text, box.widthMm, capMm, style.weight);
  const roomAt = (capMm: number) =>
    Math.max(1, 1 + Math.floor((box.heightMm - capMm * 1.32) / (PITCH_CAPS * capMm) + 1e-6));
  const smallestMm = capsMm.at(-1)!;
  const capHeightMm = capsMm.find((capMm) => linesAt(capMm).length <= roomAt(capMm)) ?? smallestMm;
  let lines = linesAt(capHeightMm);
  if (lines.length > roomAt(capHeightMm))
    lines = cutShort(lines, roomAt(capHeightMm), box, style, capHeightMm);
  const anchor = style.anchor ?? "start";
  const xMm = box.xMm + { start: 0, middle: box.widthMm / 2, end: box.widthMm }[anchor];
  const { weight, colour } = style;
  return lines.map((line, i) =>
    textMark(
      line,
      xMm,
      box.yMm + capHeightMm * (1 + i * PITCH_CAPS),
      { capHeightMm, weight, colour },
      anchor,
    ),
  );
}

function cutShort(
  lines: readonly string[],
  count: number,
  box: AreaMm,
  style: FitStyle,
  capHeightMm: number,
): string[] {
  const kept = lines.slice(0, count);
  let last = kept.at(-1)!;
  while (last !== "" && wrapText(`${last}…`, box.widthMm, capHeightMm, style.weight).length > 1) {
    last = last.slice(0, -1);
  }
  return [...kept.slice(0, -1), `${last}…`];
}
