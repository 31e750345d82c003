import {
  area,
  type Block,
  CAP_MM,
  fitText,
  LINE_MM,
  type Mark,
  TEXT_STYLE,
  textMark,
} from "../drawing/index.ts";
import type { PaperInput } from "./paperInput.ts";
import { ratingText } from "./partNote.ts";
import { compareNumbers } from "./wireRows.ts";

const CELL_MM = { widthMm: 40, heightMm: 13 } as const;

/** Cut out and stuck into the lid: each fuse with its rating and what it feeds, at real size. */
export function fuseLidLabel({ job }: PaperInput, widthMm: number): Block {
  const fuses = job.parts
    .filter((part) => part.kind === "fuse")
    .sort((left, right) => compareNumbers(left.id, right.id));
  const perRow = Math.max(1, Math.floor(widthMm / CELL_MM.widthMm));
  const topMm = 8;
  const marks: Mark[] = [
    textMark("Lid label: cut out along the lines", 0, CAP_MM.part + 1, TEXT_STYLE.part),
    ...fuses.flatMap((part, i): Mark[] => {
      const xMm = (i % perRow) * CELL_MM.widthMm;
      const yMm = topMm + Math.floor(i / perRow) * CELL_MM.heightMm;
      const name = part.name.replace(/\s*\d+(\.\d+)? A\b/, "").trim();
      return [
        {
          kind: "rect",
          area: area(xMm, yMm, CELL_MM.widthMm, CELL_MM.heightMm),
          stroke: { widthMm: LINE_MM.detail, colour: "ink" },
        },
        ...fitText(
          `${part.id}  ${ratingText(part)}`,
          area(xMm + 1.5, yMm + 1.6, CELL_MM.widthMm - 3, 3.4),
          {
            weight: 700,
            colour: "ink",
            capsMm: [CAP_MM.text, CAP_MM.fine],
          },
        ),
        ...fitText(name, area(xMm + 1.5, yMm + 5.8, CELL_MM.widthMm - 3, 6), {
          weight: 400,
          colour: "ink",
          capsMm: [CAP_MM.fine],
        }),
      ];
    }),
  ];
  return {
    heightMm: topMm + Math.ceil(fuses.length / perRow) * CELL_MM.heightMm,
    marks,
    gapBeforeMm: 6,
  };
}
