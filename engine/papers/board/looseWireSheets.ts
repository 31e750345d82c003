import type { Sheet, TableColumn, TableRow } from "../../drawing/index.ts";
import type { Loom } from "../../job/index.ts";
import { colourLineCell, lettersName } from "../colourText.ts";
import type { PaperInput } from "../paperInput.ts";
import { pinReader } from "../pinText.ts";
import { tableSheets } from "../sheets.ts";
import { terminalName } from "../terminalText.ts";
import { lengthText, numberOf, sizeText, type WireRowPair, wiresInOrder } from "../wireRows.ts";
import type { BoardDrawing } from "./boardDrawing.ts";

const COLUMNS: readonly TableColumn[] = [
  { key: "number", heading: "No.", width: { kind: "natural", maxMm: 30 } },
  { key: "colour", heading: "Colour", width: { kind: "natural", maxMm: 46 } },
  { key: "size", heading: "Size", width: { kind: "natural", maxMm: 26 } },
  { key: "from", heading: "End A", width: { kind: "share", share: 1, minMm: 40 } },
  { key: "to", heading: "End B", width: { kind: "share", share: 1, minMm: 40 } },
  { key: "cut", heading: "Cut mm", width: { kind: "natural", maxMm: 20 }, align: "end" },
  { key: "made", heading: "made", width: { kind: "fixed", mm: 11 }, align: "middle" },
  { key: "tested", heading: "test", width: { kind: "fixed", mm: 9.5 }, align: "middle" },
];

/** Wires that lie on no board, under why: in no loom, or in a loom nobody has measured anything of. */
export interface WiresOffBoards {
  readonly loose: readonly WireRowPair[];
  readonly unlaid: readonly { readonly loom: Loom; readonly wires: readonly WireRowPair[] }[];
}

/** @param drawings  boards of the looms that have one */
export function wiresOffBoards(
  input: PaperInput,
  drawings: readonly Pick<BoardDrawing, "loom">[],
): WiresOffBoards {
  const all = wiresInOrder(input).filter(({ wire }) => wire.status !== "remove");
  const laid = new Set(drawings.map(({ loom }) => loom));
  const of = (loom: string) => all.filter(({ wire }) => wire.loom === loom);
  return {
    loose: all.filter(({ wire }) => wire.loom === undefined),
    unlaid: input.job.looms
      .filter(({ id }) => !laid.has(id) && of(id).length > 0)
      .map((loom) => ({ loom, wires: of(loom.id) })),
  };
}

/** The wires that are made without a board, with what goes on each end. */
export function looseWireSheets(
  input: PaperInput,
  { loose, unlaid }: WiresOffBoards,
): readonly Sheet[] {
  const row = rowReader(input);
  const groups = [
    { heading: "Loose: each by itself, in no loom", rows: loose.map(row) },
    ...unlaid.map(({ loom, wires }) => ({
      heading: `${loom.name}: no length measured, therefore no board`,
      rows: wires.map(row),
    })),
  ].filter(({ rows }) => rows.length > 0);
  if (groups.length === 0) return [];
  return tableSheets(
    input,
    {
      documentName: "loose wires",
      orientation: "landscape",
      head: {
        title: "Loose wires",
        lead: `Wires that lie on no loom board, made one by one. Cut: with what the terminals take. Colours in ${lettersName(input.job.colours.letters)}.`,
      },
    },
    { columns: COLUMNS, groups },
  );
}

function rowReader(input: PaperInput): (pair: WireRowPair) => TableRow {
  const pins = pinReader(input.job);
  const endOf = (wire: string, end: "from" | "to"): string => {
    const fitting = input.fittings.find((one) => one.wire === wire && one.end === end);
    return fitting === undefined ? "" : terminalName(fitting);
  };
  const endCell = (wire: WireRowPair["wire"], end: "from" | "to") => {
    const { short, place } = pins(wire[end]);
    const note = [place, endOf(wire.id, end)].filter((word) => word !== "").join("; ");
    return { kind: "text", text: short, weight: 600, note } as const;
  };
  return ({ wire, row }) => {
    const { area, stranding } = sizeText(row);
    return {
      id: wire.id,
      cells: {
        number: { kind: "wireNumber", text: numberOf(wire) },
        colour: colourLineCell(wire.colour, row.areaMm2, input.job.colours.letters),
        size: { kind: "text", text: area, note: stranding },
        from: endCell(wire, "from"),
        to: endCell(wire, "to"),
        cut: { kind: "text", text: lengthText(row.cutMm?.total ?? null), weight: 700 },
        made: { kind: "tick" },
        tested: { kind: "tick" },
      },
    };
  };
}
