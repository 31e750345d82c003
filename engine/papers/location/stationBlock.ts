import {
  CAP_MM,
  type Drawn,
  type Mark,
  measureTextMm,
  TEXT_STYLE,
  textMark,
  wrapText,
} from "../../drawing/index.ts";
import type { StationThings } from "./stationThings.ts";

const BLOCK_MM = 38;

/** What is written at a station: its number and name, then everything that sits there. */
export function stationBlock(things: StationThings): Drawn {
  const heads = wrapText(`${things.orderCount} ${things.name}`, BLOCK_MM, CAP_MM.text, 700);
  const lines = [
    ...(things.parts.length === 0
      ? []
      : wrapText(things.parts.map(({ id }) => id).join(" "), BLOCK_MM, CAP_MM.fine, 600)),
    ...wrapped("joints", things.joints),
    ...wrapped("plugs", things.connectors),
    ...wrapped("earths", things.earths),
  ];
  const headMm = heads.length * 3.9;
  const marks: Mark[] = [
    ...heads.map((text, i) => textMark(text, 0, 2.9 + i * 3.9, TEXT_STYLE.strong)),
    ...lines.map((text, i) =>
      textMark(text, 0, headMm + 2.3 + i * 2.9, { ...TEXT_STYLE.fine, weight: 600, colour: "ink" }),
    ),
  ];
  const widthMm = Math.max(
    ...heads.map((text) => measureTextMm(text, CAP_MM.text, 700)),
    ...lines.map((text) => measureTextMm(text, CAP_MM.fine, 600)),
  );
  return { marks, widthMm, heightMm: headMm + lines.length * 2.9 + 0.6 };
}

const wrapped = (name: string, ids: readonly string[]): readonly string[] =>
  ids.length === 0 ? [] : wrapText(`${name} ${ids.join(" ")}`, BLOCK_MM, CAP_MM.fine, 600);
