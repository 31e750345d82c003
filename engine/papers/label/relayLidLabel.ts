import {
  area,
  type Block,
  CAP_MM,
  fitText,
  LINE_MM,
  type Mark,
  moveMarks,
  paragraphBlocks,
  type Sheet,
} from "../../drawing/index.ts";
import type { Part } from "../../job/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { blockSheets } from "../sheets.ts";
import { compareNumbers, numberOf } from "../wireRows.ts";

const CELL = { widthMm: 46, heightMm: 27 } as const;

/** Relays as labels for their lid, at real size: what each is for, and the wire at each of its pins. */
export function relayLidSheets(input: PaperInput): readonly Sheet[] {
  const relays = input.job.parts
    .filter((part) => part.kind === "relay" && part.status !== "remove")
    .sort((left, right) => compareNumbers(left.id, right.id));
  if (relays.length === 0) return [];
  return blockSheets(
    input,
    {
      documentName: "relay labels",
      orientation: "portrait",
      head: {
        title: "Relay labels",
        lead: "Cut out along the lines and stick into the lid. Each pin with its wire.",
      },
    },
    ({ widthMm }) => [
      ...rows(input, relays, widthMm),
      ...paragraphBlocks("Real size: a label is 46 × 27 mm.", widthMm),
    ],
  );
}

function rows(input: PaperInput, relays: readonly Part[], widthMm: number): readonly Block[] {
  const perRow = Math.max(1, Math.floor(widthMm / CELL.widthMm));
  return Array.from({ length: Math.ceil(relays.length / perRow) }, (_, k) => ({
    heightMm: CELL.heightMm,
    gapAfterMm: 0,
    marks: relays
      .slice(k * perRow, (k + 1) * perRow)
      .flatMap((relay, i) => moveMarks(labelMarks(input, relay), i * CELL.widthMm, 0)),
  }));
}

function labelMarks({ design }: PaperInput, relay: Part): readonly Mark[] {
  const pins = relay.pins.map(({ id }) => {
    const wires = (design.wiresAt.get(`${relay.id}.${id}`) ?? []).map(numberOf).join(" ");
    return `${id}: ${wires === "" ? "blank" : wires}`;
  });
  const small = { weight: 400, colour: "ink", capsMm: [CAP_MM.fine] } as const;
  const columnMm = (CELL.widthMm - 4) / 2;
  const rowMm = Math.min(3.4, 9.6 / Math.max(1, Math.ceil(pins.length / 2)));
  return [
    {
      kind: "rect",
      area: area(0, 0, CELL.widthMm, CELL.heightMm),
      stroke: { widthMm: LINE_MM.detail, colour: "ink" },
    },
    ...fitText(relay.id, area(2, 2, CELL.widthMm - 4, 4.6), {
      weight: 800,
      colour: "ink",
      capsMm: [CAP_MM.part, CAP_MM.text],
    }),
    ...fitText(relay.name, area(2, 7.6, CELL.widthMm - 4, 6.4), {
      weight: 600,
      colour: "ink",
      capsMm: [CAP_MM.text, CAP_MM.fine],
    }),
    ...pins.flatMap((text, i) =>
      fitText(
        text,
        area(2 + (i % 2) * columnMm, 15.4 + Math.floor(i / 2) * rowMm, columnMm - 1, rowMm),
        small,
      ),
    ),
  ];
}
