import type { CsvValue, Sheet, TableGroup } from "../drawing/index.ts";
import { printNumber, printStranding } from "../units/index.ts";
import { colourCode, colourWords, lettersName } from "./colourText.ts";
import type { PaperInput } from "./paperInput.ts";
import { pinReader } from "./pinText.ts";
import { tableSheets } from "./sheets.ts";
import {
  compareNumbers,
  lengthText,
  numberOf,
  type WireRowPair,
  wiresInOrder,
} from "./wireRows.ts";

const MODES = {
  "first-off": "First of its kind: each end has extra to trim on the machine.",
  repeat: "Repeat: cut to the length that fitted.",
  none: "Nothing added for trimming on the machine.",
} as const;

/** One pass per reel: grouped by make, then colour; longest first; the parts of each length beside it. */
export function cutListSheets(input: PaperInput): readonly Sheet[] {
  const { letters } = input.job.colours;
  const groups = cutGroups(input);
  if (groups.length === 0) return [];
  const pins = pinReader(input.job);
  return tableSheets(
    input,
    {
      documentName: "cut list",
      orientation: "portrait",
      head: {
        title: "Cut list",
        lead: `${input.check.lengthsComplete ? "" : "NOT FINAL: some lengths are not measured. "}${MODES[input.job.decisions.lengthMode ?? "none"]} Colours in ${lettersName(letters)}.`,
      },
    },
    {
      columns: [
        { key: "number", heading: "No.", width: { kind: "natural", maxMm: 30 } },
        {
          key: "cut",
          heading: "Cut mm",
          width: { kind: "natural", maxMm: 20 },
          align: "end",
          weight: 700,
        },
        {
          key: "parts",
          heading: "From, to; made of",
          width: { kind: "share", share: 1, minMm: 40 },
        },
        { key: "label", heading: "Label, both ends", width: { kind: "natural", maxMm: 30 } },
        { key: "done", heading: "cut", width: { kind: "fixed", mm: 11 }, align: "middle" },
      ],
      groups: groups.map((list) => groupOf(input, pins, list)),
    },
  );
}

function groupOf(
  input: PaperInput,
  pins: ReturnType<typeof pinReader>,
  list: readonly WireRowPair[],
): TableGroup {
  const { letters } = input.job.colours;
  const { row: first, wire: firstWire } = list[0]!;
  const knownMm = list.reduce((sum, { row }) => sum + (row.cutMm?.total ?? 0), 0);
  const unknownCount = list.filter(({ row }) => row.cutMm === null).length;
  const stranding = printStranding({
    strandCount: first.strandCount,
    strandDiameterMm: first.strandDiameterMm,
  });
  return {
    heading: `${colourCode(firstWire.colour, letters)}  ${colourWords(firstWire.colour)}, ${stranding} ${first.wall} wall`,
    headingNote: `${list.length} ${list.length === 1 ? "piece" : "pieces"}, ${printNumber(knownMm / 1000, 2)} m${unknownCount > 0 ? ` and ${unknownCount} not measured` : ""}`,
    rows: longestFirst(list).map(({ wire, row }) => ({
      id: wire.id,
      cells: {
        number: { kind: "wireNumber", text: numberOf(wire) },
        cut: lengthText(row.cutMm?.total ?? null),
        parts: { kind: "text", text: placesOf(pins, wire), note: partsOf(row) },
        label: `${numberOf(wire)} ${colourCode(wire.colour, letters)}`,
        done: { kind: "tick" },
      },
    })),
  };
}

const placesOf = (pins: ReturnType<typeof pinReader>, { from, to }: WireRowPair["wire"]): string =>
  `${pins(from).short} to ${pins(to).short}`;

/** What a cut length is made of, parts of nothing left out. */
function partsOf({ cutMm, lengthBasis, why }: WireRowPair["row"]): string {
  if (cutMm === null) return why ?? "length not known";
  const parts: readonly (readonly [string, number])[] = [
    [`path${lengthBasis === "measured" ? "" : ` (${lengthBasis})`}`, cutMm.path],
    ["strip", cutMm.strip],
    ["re-termination", cutMm.retermination],
    ["flex", cutMm.flex],
    ["trim", cutMm.trim],
    ["rounding", cutMm.rounding],
  ];
  return parts
    .filter(([, mm]) => mm !== 0)
    .map(([name, mm]) => `${name} ${printNumber(mm, 0)}`)
    .join(" + ");
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
