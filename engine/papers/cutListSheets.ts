import type { CsvValue, Sheet, TableGroup } from "../drawing/index.ts";
import { printNumber, printStranding } from "../units/index.ts";
import { colourCell, colourCode, colourWords, lettersName } from "./colourText.ts";
import type { PaperInput } from "./paperInput.ts";
import { tableSheets } from "./sheets.ts";
import {
  compareNumbers,
  lengthText,
  numberOf,
  type WireRowPair,
  wiresInOrder,
} from "./wireRows.ts";

/** One pass per reel: grouped by make, then colour; longest first; the parts of each length beside it. */
export function cutListSheets(input: PaperInput): readonly Sheet[] {
  const { letters } = input.job.colours;
  const groups = cutGroups(input);
  if (groups.length === 0) return [];
  const mode = input.job.decisions.lengthMode ?? "first-off";
  return tableSheets(
    input,
    {
      documentName: "cut list",
      orientation: "portrait",
      head: {
        title: "Cut list",
        lead: `${input.check.lengthsComplete ? "" : "NOT FINAL: some lengths are not measured. "}${
          mode === "first-off"
            ? "First of its kind: each end has extra to trim on the machine."
            : "Repeat: cut to the length that fitted."
        } Colours in ${lettersName(letters)}.`,
      },
    },
    {
      columns: [
        { key: "number", heading: "No.", width: { kind: "natural", maxMm: 30 } },
        { key: "colour", heading: "Colour", width: { kind: "fixed", mm: 38 } },
        {
          key: "cut",
          heading: "Cut mm",
          width: { kind: "natural", maxMm: 20 },
          align: "end",
          weight: 700,
        },
        { key: "parts", heading: "Made of", width: { kind: "share", share: 1, minMm: 40 } },
        { key: "label", heading: "Label, both ends", width: { kind: "natural", maxMm: 30 } },
        { key: "done", heading: "cut", width: { kind: "fixed", mm: 11 }, align: "middle" },
      ],
      groups: groups.map((list) => groupOf(input, list)),
    },
  );
}

function groupOf(input: PaperInput, list: readonly WireRowPair[]): TableGroup {
  const { letters } = input.job.colours;
  const { row: first, wire: firstWire } = list[0]!;
  const knownMm = list.reduce((sum, { row }) => sum + (row.cutMm?.total ?? 0), 0);
  const unknownCount = list.filter(({ row }) => row.cutMm === null).length;
  const stranding = printStranding({
    strandCount: first.strandCount,
    strandDiameterMm: first.strandDiameterMm,
  });
  return {
    heading: `${stranding} ${first.wall} wall, ${colourWords(firstWire.colour)}`,
    headingNote: `${list.length} pieces, ${printNumber(knownMm / 1000, 2)} m${unknownCount > 0 ? ` and ${unknownCount} not measured` : ""}`,
    rows: longestFirst(list).map(({ wire, row }) => ({
      id: wire.id,
      cells: {
        number: { kind: "wireNumber", text: numberOf(wire) },
        colour: colourCell(wire.colour, row.areaMm2, letters),
        cut: lengthText(row.cutMm?.total ?? null),
        parts:
          row.cutMm === null
            ? (row.why ?? "length not known")
            : `path ${row.cutMm.path}${row.lengthBasis === "measured" ? "" : ` (${row.lengthBasis})`}, strip ${row.cutMm.strip}, re-termination ${row.cutMm.retermination}, flex ${row.cutMm.flex}, trim ${row.cutMm.trim}, rounding ${printNumber(row.cutMm.rounding, 0)}`,
        label: `${numberOf(wire)} ${colourCode(wire.colour, letters)}`,
        done: { kind: "tick" },
      },
    })),
  };
}

/** The same pieces for a spreadsheet, in the order they are cut. A length nobody knows is an empty cell with its reason beside it. */
export function cutListRows(input: PaperInput): readonly (readonly CsvValue[])[] {
  const { letters } = input.job.colours;
  return [
    [
      "number",
      "wire",
      "make",
      "colour",
      "colourCode",
      "cutMm",
      "pathMm",
      "stripMm",
      "reterminationMm",
      "flexMm",
      "trimMm",
      "roundingMm",
      "lengthBasis",
      "why",
    ],
    ...cutGroups(input).flatMap((list) =>
      longestFirst(list).map(({ wire, row }) => [
        numberOf(wire),
        wire.id,
        row.makeId,
        colourWords(wire.colour),
        colourCode(wire.colour, letters),
        row.cutMm?.total ?? null,
        row.cutMm?.path ?? null,
        row.cutMm?.strip ?? null,
        row.cutMm?.retermination ?? null,
        row.cutMm?.flex ?? null,
        row.cutMm?.trim ?? null,
        row.cutMm?.rounding ?? null,
        row.lengthBasis,
        row.cutMm === null ? (row.why ?? "length not known") : "",
      ]),
    ),
  ];
}

/** Pieces to cut, reel by reel: by make, then by colour. */
function cutGroups(input: PaperInput): readonly (readonly WireRowPair[])[] {
  const { letters } = input.job.colours;
  const groups = new Map<string, WireRowPair[]>();
  for (const pair of wiresInOrder(input).filter(({ wire }) => wire.status === "new")) {
    const key = `${pair.row.makeId} ${colourCode(pair.wire.colour, letters)}`;
    groups.set(key, [...(groups.get(key) ?? []), pair]);
  }
  return [...groups].sort(([left], [right]) => compareNumbers(left, right)).map(([, list]) => list);
}

const longestFirst = (list: readonly WireRowPair[]): readonly WireRowPair[] =>
  [...list].sort((left, right) => (right.row.cutMm?.total ?? 0) - (left.row.cutMm?.total ?? 0));
