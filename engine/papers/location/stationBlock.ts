import {
  CAP_MM,
  type Drawn,
  type Mark,
  type MarkSubject,
  measureTextMm,
  TEXT_STYLE,
  textMark,
  wrapText,
} from "../../drawing/index.ts";
import type { StationThings } from "./stationThings.ts";

const BLOCK_MM = 38;
const HEAD_PITCH_MM = 3.9;
const LINE_PITCH_MM = 2.9;
/** Between two ids, so that each is read by itself. */
const WORD_GAP_MM = 1.3;

/** A word on a line, and what it is the id of; a word that names a list is of nothing. */
interface Word {
  readonly text: string;
  readonly of: MarkSubject | null;
  readonly xMm: number;
}

/** What is written at a station: its number and name, then everything that sits there. */
export function stationBlock(things: StationThings): Drawn {
  const heads = wrapText(`${things.orderCount} ${things.name}`, BLOCK_MM, CAP_MM.text, 700);
  const lines = [
    ...wordLines(
      "",
      things.parts.map(({ id }) => id),
      "part",
    ),
    ...wordLines("joints", things.joints, "joint"),
    ...wordLines("plugs", things.connectors, "connector"),
    ...wordLines("earths", things.earths, "body"),
  ];
  const headMm = heads.length * HEAD_PITCH_MM;
  const marks: Mark[] = [
    ...heads.map((text, i) => textMark(text, 0, 2.9 + i * HEAD_PITCH_MM, TEXT_STYLE.strong)),
    ...lines.flatMap((words, i) =>
      words.map((word) => wordMark(word, headMm + 2.3 + i * LINE_PITCH_MM)),
    ),
  ];
  const widthMm = Math.max(
    ...heads.map((text) => measureTextMm(text, CAP_MM.text, 700)),
    ...lines.flat().map(({ xMm, text }) => xMm + wordMm(text)),
  );
  return { marks, widthMm, heightMm: headMm + lines.length * LINE_PITCH_MM + 0.6 };
}

const wordMm = (text: string): number => measureTextMm(text, CAP_MM.fine, 600);

/** Ids beside each other, as many as a line holds; no line without an id. */
function wordLines(name: string, ids: readonly string[], of: MarkSubject): Word[][] {
  if (ids.length === 0) return [];
  const gapMm = WORD_GAP_MM;
  const lines: Word[][] = [name === "" ? [] : [{ text: name, of: null, xMm: 0 }]];
  let atMm = name === "" ? 0 : wordMm(name) + gapMm;
  for (const text of ids) {
    if (atMm > 0 && atMm + wordMm(text) > BLOCK_MM) {
      lines.push([]);
      atMm = 0;
    }
    lines.at(-1)!.push({ text, of, xMm: atMm });
    atMm += wordMm(text) + gapMm;
  }
  return lines;
}

function wordMark({ text, of, xMm }: Word, yMm: number): Mark {
  const style = { ...TEXT_STYLE.fine, weight: 600, colour: "ink" } as const;
  const mark = textMark(text, xMm, yMm, style);
  return of === null ? mark : { kind: "group", id: text, of, marks: [mark] };
}
