import type { Block } from "./block.ts";
import type { ColourToken } from "./colourToken.ts";
import { CAP_MM, LINE_MM, linePitchMm } from "./lineWidth.ts";
import type { FontWeight } from "./paperFonts.ts";
import { type Mark, point, type TextMark } from "./scene.ts";
import { wrapText } from "./wrapText.ts";

export interface TextStyle {
  readonly capHeightMm: number;
  readonly weight: FontWeight;
  readonly colour: ColourToken;
}

export const TEXT_STYLE = {
  fine: { capHeightMm: CAP_MM.fine, weight: 400, colour: "ink2" },
  text: { capHeightMm: CAP_MM.text, weight: 400, colour: "ink" },
  strong: { capHeightMm: CAP_MM.text, weight: 700, colour: "ink" },
  part: { capHeightMm: CAP_MM.part, weight: 700, colour: "ink" },
  wireNumber: { capHeightMm: CAP_MM.wireNumber, weight: 800, colour: "ink" },
  title: { capHeightMm: CAP_MM.title, weight: 800, colour: "ink" },
} as const satisfies Readonly<Record<string, TextStyle>>;

export const textMark = (
  text: string,
  xMm: number,
  yMm: number,
  style: TextStyle,
  anchor: TextMark["anchor"] = "start",
): TextMark => ({ kind: "text", text, at: point(xMm, yMm), anchor, ...style });

/** A heading that stays with what follows it. */
export function headingBlock(text: string, widthMm: number, level: 1 | 2 = 1): Block[] {
  const style = level === 1 ? TEXT_STYLE.part : TEXT_STYLE.strong;
  const lines = lineBlocks(text, 0, widthMm, style);
  return lines.map((block, i) => ({
    ...block,
    keepWithNext: true,
    gapBeforeMm: i === 0 ? (level === 1 ? 6 : 3) : 0,
    gapAfterMm: i === lines.length - 1 ? 0.5 : -1,
  }));
}

/** Running text. Each line is a block, so that a page may end inside a paragraph, though not after its first line nor before its last. */
export function paragraphBlocks(
  text: string,
  widthMm: number,
  style: TextStyle = TEXT_STYLE.text,
): Block[] {
  return lastSpaced(lineBlocks(text, 0, widthMm, style), style.capHeightMm);
}

/** A list with a short bar before each item. */
export function bulletBlocks(items: readonly string[], widthMm: number): Block[] {
  const indentMm = 5;
  return items.flatMap((item) => {
    const lines = lineBlocks(item, indentMm, widthMm - indentMm, TEXT_STYLE.text);
    const dash: Mark = {
      kind: "line",
      from: point(0.5, CAP_MM.text * 0.9),
      to: point(2.75, CAP_MM.text * 0.9),
      stroke: { widthMm: LINE_MM.symbol, colour: "ink" },
    };
    return lastSpaced(
      [{ ...lines[0]!, marks: [dash, ...lines[0]!.marks] }, ...lines.slice(1)],
      0.8,
    );
  });
}

/** Names at the left, what they are at the right: one block a pair. */
export function keyValueBlocks(
  pairs: readonly (readonly [name: string, value: string])[],
  widthMm: number,
  nameWidthMm = 40,
): Block[] {
  const gapMm = 3;
  return pairs.map(([name, value]) => {
    const names = lineBlocks(name, 0, nameWidthMm, { ...TEXT_STYLE.text, colour: "ink2" });
    const values = lineBlocks(
      value,
      nameWidthMm + gapMm,
      widthMm - nameWidthMm - gapMm,
      TEXT_STYLE.strong,
    );
    const pitchMm = linePitchMm(CAP_MM.text);
    const stacked = [names, values].flatMap((lines) =>
      lines.flatMap((line, i) => shifted(line, i * pitchMm)),
    );
    return { heightMm: Math.max(names.length, values.length) * pitchMm, marks: stacked };
  });
}

const shifted = (block: Block, byMm: number): Mark[] =>
  block.marks.map((mark) =>
    mark.kind === "text" ? { ...mark, at: point(mark.at.xMm, mark.at.yMm + byMm) } : mark,
  );

/** Wrapped lines, each a block as tall as the line pitch with its base line 1.35 capital heights down. */
function lineBlocks(text: string, xMm: number, widthMm: number, style: TextStyle): Block[] {
  const pitchMm = linePitchMm(style.capHeightMm);
  return wrapText(text, widthMm, style.capHeightMm, style.weight).map((line) => ({
    heightMm: pitchMm,
    marks: [textMark(line, xMm, style.capHeightMm * 1.35, style)],
  }));
}

/** Lines of one paragraph: room after the last, and no line alone at the foot or at the head of a page. */
const lastSpaced = (blocks: readonly Block[], gapAfterMm: number): Block[] =>
  blocks.map((block, i) => {
    if (i === blocks.length - 1) return { ...block, gapAfterMm };
    return i === 0 || i === blocks.length - 2 ? { ...block, keepWithNext: true } : block;
  });
