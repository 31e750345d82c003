import {
  type CsvValue,
  type Sheet,
  type TableColumn,
  type TableRow,
  tableBlocks,
} from "../drawing/index.ts";
import type { CheckFuseRow } from "../judge/index.ts";
import { printNumber, printQuantity } from "../units/index.ts";
import { fuseLidLabel } from "./fuseLidLabel.ts";
import { loadReader } from "./loadText.ts";
import type { PaperInput } from "./paperInput.ts";
import { blockSheets } from "./sheets.ts";
import { compareNumbers, numberOf } from "./wireRows.ts";

const MARKINGS: Readonly<Record<string, string>> = {
  continuous: "marked with what it carries",
  blow: "marked with what blows it",
  unknown: "nobody knows which current the mark means",
};

const COLUMNS: readonly TableColumn[] = [
  { key: "fuse", heading: "Fuse", width: { kind: "natural", maxMm: 34 } },
  { key: "rating", heading: "Rating", width: { kind: "natural", maxMm: 30 } },
  { key: "window", heading: "Window", width: { kind: "natural", maxMm: 34 } },
  {
    key: "guards",
    heading: "Wires it guards alone",
    width: { kind: "share", share: 1.4, minMm: 40 },
  },
  {
    key: "unfused",
    heading: "Bare lead",
    width: { kind: "natural", maxMm: 24 },
  },
  {
    key: "dies",
    heading: "Stops working when it blows",
    width: { kind: "share", share: 1, minMm: 45 },
  },
];

/** F2 before F10, as on the lid. */
const inOrder = (fuses: readonly CheckFuseRow[]): readonly CheckFuseRow[] =>
  fuses.toSorted((left, right) => compareNumbers(left.fuse, right.fuse));

/** The same figures for a spreadsheet. */
export function fuseRows({ job, check }: PaperInput): readonly (readonly CsvValue[])[] {
  const names = new Map(job.parts.map((part) => [part.id, part.name]));
  const loads = loadReader(job);
  return [
    [
      "fuse",
      "name",
      "ratingA",
      "type",
      "marking",
      "windowMinA",
      "windowMaxA",
      "worstLoadA",
      "protects",
      "weakestWire",
      "unfusedMm",
      "dies",
    ],
    ...inOrder(check.fuses).map((fuse) => [
      fuse.fuse,
      names.get(fuse.fuse) ?? "",
      fuse.ratingA,
      fuse.type,
      fuse.marking,
      fuse.windowMinA,
      fuse.windowMaxA,
      fuse.worstLoadA,
      fuse.protects.join(" "),
      fuse.weakestWire,
      fuse.unfusedMm,
      fuse.dies.map(loads).join("; "),
    ]),
  ];
}

/** Fuse by fuse: what it is, what it guards, the window it was chosen from, and what stops when it blows. */
export function fuseSheets(input: PaperInput): readonly Sheet[] {
  const { job, check } = input;
  const loads = loadReader(job);
  const names = new Map(job.parts.map((part) => [part.id, part.name]));
  const numbers = new Map(job.wires.map((wire) => [wire.id, numberOf(wire)]));
  const amps = (value: number | null) => (value === null ? "unknown" : printQuantity(value, "A"));
  const rowOf = (fuse: CheckFuseRow): TableRow => ({
    id: fuse.fuse,
    cells: {
      fuse: { kind: "text", text: fuse.fuse, weight: 700, note: names.get(fuse.fuse) ?? "" },
      rating: {
        kind: "text",
        text: `${printNumber(fuse.ratingA, fuse.ratingA % 1 === 0 ? 0 : 1)} A`,
        weight: 700,
        note: `${fuse.type}, ${MARKINGS[fuse.marking] ?? fuse.marking}`,
      },
      window: {
        kind: "text",
        text:
          fuse.windowMinA === null || fuse.windowMaxA === null
            ? "none fits"
            : `${printNumber(fuse.windowMinA, 1)} to ${amps(fuse.windowMaxA)}`,
        note: `worst load ${amps(fuse.worstLoadA)}`,
      },
      guards: {
        kind: "text",
        text: fuse.protects.map((id) => numbers.get(id) ?? id).join(" ") || "no wire alone",
        note:
          fuse.weakestWire === null
            ? ""
            : `thinnest: ${numbers.get(fuse.weakestWire) ?? fuse.weakestWire}`,
      },
      unfused: fuse.unfusedMm === null ? "measure" : `${printNumber(fuse.unfusedMm, 0)} mm`,
      dies: fuse.dies.map(loads).join("; ") || "nothing by itself",
    },
  });
  if (check.fuses.length === 0) return [];
  return blockSheets(
    input,
    {
      documentName: "fuse schedule",
      orientation: "landscape",
      head: {
        title: "Fuse schedule",
        lead: "A fuse guards the wire, not the lamp. Fit the rating written here and no larger one. Bare lead: what no fuse guards before it.",
      },
    },
    ({ widthMm, heightMm }) => [
      ...tableBlocks(
        { columns: COLUMNS, groups: [{ heading: null, rows: inOrder(check.fuses).map(rowOf) }] },
        widthMm,
        heightMm,
      ),
      fuseLidLabel(input, widthMm),
    ],
  );
}
