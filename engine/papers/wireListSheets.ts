import type { CsvValue, Sheet, TableColumn, TableRow } from "../drawing/index.ts";
import { printQuantity } from "../units/index.ts";
import { colourCode, colourLineCell, colourWords, lettersName } from "./colourText.ts";
import type { PaperInput } from "./paperInput.ts";
import { pinReader } from "./pinText.ts";
import { tableSheets } from "./sheets.ts";
import { lengthText, numberOf, sizeText, type WireRowPair, wiresInOrder } from "./wireRows.ts";

const COLUMNS: readonly TableColumn[] = [
  { key: "number", heading: "No.", width: { kind: "natural", maxMm: 30 } },
  { key: "colour", heading: "Colour", width: { kind: "natural", maxMm: 46 } },
  { key: "size", heading: "Size", width: { kind: "natural", maxMm: 26 } },
  { key: "from", heading: "From (A)", width: { kind: "share", share: 1, minMm: 30 } },
  { key: "to", heading: "To (B)", width: { kind: "share", share: 1, minMm: 30 } },
  {
    key: "cut",
    heading: "Cut mm",
    width: { kind: "natural", maxMm: 20 },
    align: "end",
    weight: 700,
  },
  { key: "amps", heading: "Amps", width: { kind: "natural", maxMm: 24 }, align: "end" },
  { key: "fuse", heading: "Fuse", width: { kind: "natural", maxMm: 22 } },
  { key: "done", heading: "cut", width: { kind: "fixed", mm: 8.5 }, align: "middle" },
  { key: "a", heading: "A", width: { kind: "fixed", mm: 7.5 }, align: "middle" },
  { key: "b", heading: "B", width: { kind: "fixed", mm: 7.5 }, align: "middle" },
  { key: "tested", heading: "test", width: { kind: "fixed", mm: 9.5 }, align: "middle" },
];

/** Every wire: number, colour, size, both ends, cut, circuit, fuse, amps, and the four ticks. */
export function wireListSheets(input: PaperInput): readonly Sheet[] {
  return tableSheets(
    input,
    {
      documentName: "wire list",
      orientation: "landscape",
      head: {
        title: "Wire list",
        lead: `Tick when cut, when each end is on, when tested. Colours in ${lettersName(input.job.colours.letters)}, main colour first. Amps: the most in any position tried.`,
      },
    },
    {
      columns: COLUMNS,
      groups: [{ heading: null, rows: wiresInOrder(input).map(rowReader(input)) }],
    },
  );
}

function rowReader(input: PaperInput): (pair: WireRowPair) => TableRow {
  const pins = pinReader(input.job);
  return ({ wire, row }) => {
    const [from, to] = [pins(wire.from), pins(wire.to)];
    const { area, stranding } = sizeText(row);
    const fuses = [...new Set(row.feeds.flatMap((feed) => feed.cut))];
    return {
      id: wire.id,
      cells: {
        number: { kind: "wireNumber", text: numberOf(wire) },
        colour: colourLineCell(wire.colour, row.areaMm2, input.job.colours.letters),
        size: { kind: "text", text: area, note: stranding },
        from: { kind: "text", text: from.short, weight: 600, note: from.place },
        to: { kind: "text", text: to.short, weight: 600, note: to.place },
        cut: {
          kind: "text",
          text: lengthText(row.cutMm?.total ?? null),
          weight: 700,
          note: wire.status === "new" ? (row.loom ?? "loose") : wire.status,
        },
        amps: {
          kind: "text",
          text: row.worstA === null ? "not known" : printQuantity(row.worstA, "A"),
          note: `of ${printQuantity(row.ratingA, "A")}`,
        },
        fuse: { kind: "text", text: fuses.join(" ") || "none", note: wire.circuit },
        done: { kind: "tick" },
        a: { kind: "tick" },
        b: { kind: "tick" },
        tested: { kind: "tick" },
      },
    };
  };
}

const CSV_HEADINGS = [
  "wire",
  "number",
  "circuit",
  "loom",
  "status",
  "colour",
  "colourCode",
  "make",
  "areaMm2",
  "strandCount",
  "strandDiameterMm",
  "from",
  "fromPlace",
  "to",
  "toPlace",
  "pathMm",
  "cutMm",
  "lengthBasis",
  "worstA",
  "ratingA",
  "fuses",
  "sizedBy",
] as const;

/** The same wires for a spreadsheet, to be sorted by wire, connector or colour. */
export function wireListRows(input: PaperInput): readonly (readonly CsvValue[])[] {
  const pins = pinReader(input.job);
  const { letters } = input.job.colours;
  return [
    CSV_HEADINGS,
    ...wiresInOrder(input).map(({ wire, row }) => [
      wire.id,
      numberOf(wire),
      wire.circuit,
      row.loom,
      wire.status,
      colourWords(wire.colour),
      colourCode(wire.colour, letters),
      row.makeId,
      row.areaMm2,
      row.strandCount,
      row.strandDiameterMm,
      wire.from,
      pins(wire.from).where,
      wire.to,
      pins(wire.to).where,
      row.pathMm,
      row.cutMm?.total ?? null,
      row.lengthBasis,
      row.worstA,
      row.ratingA,
      [...new Set(row.feeds.flatMap((feed) => feed.cut))].join(" "),
      row.sizedBy,
    ]),
  ];
}
