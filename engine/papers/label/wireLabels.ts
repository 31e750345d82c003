import {
  area,
  CAP_MM,
  type CsvValue,
  fitText,
  type Mark,
  moveMarks,
  type Page,
  type PaperSize,
  paperSizeMm,
  point,
  type Sheet,
} from "../../drawing/index.ts";
import type { Colour } from "../../job/index.ts";
import { printNumber } from "../../units/index.ts";
import { colourCode, colourWords } from "../colourText.ts";
import type { PaperInput } from "../paperInput.ts";
import { pinReader } from "../pinText.ts";
import { numberOf, wiresInOrder } from "../wireRows.ts";
import { LABEL_STOCKS, type LabelStock } from "./labelStock.ts";

/** What stands on one label: the wire, and the end it is wrapped round. */
export interface WireLabel {
  readonly wire: string;
  readonly number: string;
  readonly code: string;
  readonly colour: string;
  readonly colours: Colour | null;
  readonly areaMm2: number;
  /** "from" or "to". */
  readonly end: "from" | "to";
  readonly pin: string;
  readonly place: string;
  readonly far: string;
  readonly loom: string;
}

/** Two labels a wire, one for each end, in the order of the wires' numbers. */
export function wireLabels(input: PaperInput): readonly WireLabel[] {
  const read = pinReader(input.job);
  return wiresInOrder(input).flatMap(({ wire, row }) =>
    (["from", "to"] as const).map((end): WireLabel => {
      const [here, far] = end === "from" ? [wire.from, wire.to] : [wire.to, wire.from];
      return {
        wire: wire.id,
        number: numberOf(wire),
        code: colourCode(wire.colour, input.job.colours.letters),
        colour: colourWords(wire.colour),
        colours: wire.colour ?? null,
        areaMm2: row.areaMm2,
        end,
        pin: read(here).short,
        place: read(here).place,
        far: read(far).short,
        loom: wire.loom ?? "",
      };
    }),
  );
}

/** The labels for a label printer or a spreadsheet. */
export function wireLabelRows(input: PaperInput): readonly (readonly CsvValue[])[] {
  return [
    ["number", "code", "colour", "areaMm2", "end", "pin", "place", "far", "loom", "wire"],
    ...wireLabels(input).map((one) => [
      one.number,
      one.code,
      one.colour,
      one.areaMm2,
      one.end,
      one.pin,
      one.place,
      one.far,
      one.loom,
      one.wire,
    ]),
  ];
}

/** Label sheets without frame or title block, one label a place of the stock; what the sheet is stands in its top margin. */
export function wireLabelSheets(
  input: PaperInput,
  stock: LabelStock = LABEL_STOCKS[input.paper === "letter" ? "letter" : "a4"],
): readonly Sheet[] {
  const labels = wireLabels(input);
  const perSheet = stock.columnCount * stock.rowCount;
  const size: PaperSize = input.paper === "letter" ? "letter" : "a4";
  const paper = { size, orientation: "portrait" } as const;
  const title = "Wire labels";
  return Array.from({ length: Math.ceil(labels.length / perSheet) }, (_, k): Sheet => {
    const part = labels.slice(k * perSheet, (k + 1) * perSheet);
    return {
      paper,
      documentName: "wire labels",
      head: { title },
      bookmark: k === 0 ? [title] : [title, `continued ${k + 1}`],
      marks: [],
      ownPage: (pageOrder, pageCount): Page => ({
        ...paperSizeMm(paper),
        title,
        bookmark: k === 0 ? [title] : [title, `continued ${k + 1}`],
        marks: [
          ...headLine(input, stock, pageOrder, pageCount),
          ...part.flatMap((label, i) => {
            const xMm = stock.leftMm + (i % stock.columnCount) * stock.pitchXMm;
            const yMm = stock.topMm + Math.floor(i / stock.columnCount) * stock.pitchYMm;
            return moveMarks([labelMarks(label, stock)], xMm, yMm);
          }),
        ],
      }),
    };
  });
}

function headLine(
  { info }: PaperInput,
  stock: LabelStock,
  pageOrder: number,
  pageCount: number,
): readonly Mark[] {
  const text = `Wire labels ${stock.name}; ${info.machine}, job ${info.jobId} rev ${info.revision}; print at 100 %, no fitting; page ${pageOrder} of ${pageCount}`;
  const widthMm = stock.pitchXMm * (stock.columnCount - 1) + stock.widthMm;
  return fitText(text, area(stock.leftMm, stock.topMm - 4.6, widthMm, 3.4), {
    weight: 400,
    colour: "ink2",
    capsMm: [CAP_MM.fine],
  });
}

/** The number twice the size of the rest, a piece of the wire, the words of its colour, where it goes. */
function labelMarks(label: WireLabel, { widthMm, heightMm }: LabelStock): Mark {
  const inset = 2.5;
  const innerMm = widthMm - 2 * inset;
  const isTall = heightMm >= 18;
  const lineMm = 3.2;
  const topMm = isTall ? 2.6 : 1.4;
  const small = { weight: 400, colour: "ink", capsMm: [CAP_MM.fine] } as const;
  const lines = [
    `${label.code} ${label.colour}`,
    `${label.pin}${label.place === "" ? "" : `, ${label.place}`}`,
    ...(isTall ? [`from here to ${label.far}`] : []),
  ];
  return {
    kind: "group",
    id: `${label.wire} ${label.end}`,
    marks: [
      ...fitText(label.number, area(inset, topMm, innerMm * 0.4, 5.6), {
        weight: 800,
        colour: "ink",
        capsMm: [isTall ? CAP_MM.wireNumber : CAP_MM.part, CAP_MM.part, CAP_MM.text],
      }),
      ...fitText(
        `${printNumber(label.areaMm2, 1)} mm²`,
        area(inset + innerMm * 0.66, topMm + 1.6, innerMm * 0.34, 3.4),
        small,
      ),
      ...wireSample(label, inset + innerMm * 0.42, topMm + 3.2, innerMm * 0.2),
      ...lines.flatMap((text, i) =>
        fitText(text, area(inset, topMm + (isTall ? 7 : 5.2) + i * lineMm, innerMm, lineMm), small),
      ),
    ],
  };
}

const wireSample = (
  { colours, areaMm2 }: WireLabel,
  xMm: number,
  yMm: number,
  lengthMm: number,
): readonly Mark[] => [
  { kind: "wire", points: [point(xMm, yMm), point(xMm + lengthMm, yMm)], areaMm2, colours },
];
