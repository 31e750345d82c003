import { CAP_MM, LINE_MM } from "../lineWidth.ts";
import { measureTextMm } from "../measureTextMm.ts";
import { area, type Mark } from "../scene.ts";
import { TEXT_STYLE, textMark } from "../textBlock.ts";
import { wrapText } from "../wrapText.ts";
import type { BlockDiagramInput } from "./blockDiagramInput.ts";

type Block = BlockDiagramInput["blocks"][number];

const PAD_MM = 2;
const NAME_PITCH_MM = 4.4;
const NOTE_PITCH_MM = 3.4;

export interface BlockBox {
  readonly names: readonly string[];
  readonly notes: readonly string[];
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Text of a block wrapped, and the size of its box: tall enough for the lines that meet it. */
export function blockBox(
  block: Block,
  also: readonly string[],
  portCount: number,
  textMaxMm: number,
): BlockBox {
  const words = [block.name, block.note].flatMap((text) => text.split(" "));
  const wordMm = Math.max(...words.map((word) => measureTextMm(word, CAP_MM.text, 700)));
  const lineMm = Math.max(textMaxMm, wordMm);
  const names = wrapText(block.name, lineMm, CAP_MM.text, 700);
  const told = also.length === 0 ? [] : [`also feeds ${also.join(", ")}`];
  const notes = [block.note, ...told]
    .filter((note) => note !== "")
    .flatMap((note) => wrapText(note, lineMm, CAP_MM.fine, 400));
  const widths = [
    ...names.map((line) => measureTextMm(line, CAP_MM.text, 700)),
    ...notes.map((line) => measureTextMm(line, CAP_MM.fine, 400)),
  ];
  const textMm = names.length * NAME_PITCH_MM + notes.length * NOTE_PITCH_MM;
  return {
    names,
    notes,
    widthMm: Math.max(14, Math.max(...widths) + 2 * PAD_MM),
    heightMm: Math.max(textMm + 2.4, portCount * 2.5 + 2.5),
  };
}

export function blockBoxMarks(
  block: Block,
  box: BlockBox,
  leftMm: number,
  middleMm: number,
  widthMm: number,
): Mark {
  const topMm = middleMm - box.heightMm / 2;
  const textMm = box.names.length * NAME_PITCH_MM + box.notes.length * NOTE_PITCH_MM;
  const firstMm = middleMm - textMm / 2;
  const isLoad = block.kind === "load";
  const outline: Mark = {
    kind: "rect",
    area: area(leftMm, topMm, widthMm, box.heightMm),
    cornerMm: isLoad ? 1.5 : undefined,
    stroke: { widthMm: isLoad ? LINE_MM.detail : LINE_MM.frame, colour: "ink" },
    fill: "ground",
  };
  const names = box.names.map((line, i) =>
    textMark(line, leftMm + PAD_MM, firstMm + 3.4 + i * NAME_PITCH_MM, TEXT_STYLE.strong),
  );
  const notesMm = firstMm + box.names.length * NAME_PITCH_MM;
  const notes = box.notes.map((line, i) =>
    textMark(line, leftMm + PAD_MM, notesMm + 2.6 + i * NOTE_PITCH_MM, {
      ...TEXT_STYLE.fine,
      colour: "ink",
    }),
  );
  const { id, name } = block;
  return { kind: "group", id, name, marks: [outline, ...names, ...notes] };
}
