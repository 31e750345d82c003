import {
  type CsvValue,
  headingBlock,
  keyValueBlocks,
  paragraphBlocks,
  type Sheet,
  type TableColumn,
  type TableGroup,
  type TableRow,
  tableBlocks,
} from "../drawing/index.ts";
import type { EndFitting } from "../size/index.ts";
import { printNumber } from "../units/index.ts";
import { colourCell, lettersName } from "./colourText.ts";
import type { PaperInput } from "./paperInput.ts";
import { pinReader } from "./pinText.ts";
import { blockSheets } from "./sheets.ts";
import { basisText, kindText, problemText, terminalName } from "./terminalText.ts";
import { twoUp } from "./twoUp.ts";
import { compareNumbers, numberOf } from "./wireRows.ts";

const COLUMNS: readonly TableColumn[] = [
  { key: "number", heading: "No.", width: { kind: "natural", maxMm: 26 } },
  { key: "colour", heading: "Colour", width: { kind: "fixed", mm: 31 } },
  { key: "where", heading: "At", width: { kind: "share", share: 1, minMm: 18 } },
  { key: "on", heading: "on", width: { kind: "fixed", mm: 7.5 }, align: "middle" },
];

/** Every end to be fitted, one terminal and size at a time: sleeve first, strip, crimp, pull a sample. */
export function terminalSheets(input: PaperInput): readonly Sheet[] {
  const groups = terminalGroups(input);
  if (groups.length === 0) return [];
  return blockSheets(
    input,
    {
      documentName: "terminals",
      orientation: "portrait",
      head: {
        title: "Terminals",
        lead: `Sleeve or seal on the wire first. Colours in ${lettersName(input.job.colours.letters)}.`,
      },
    },
    ({ widthMm, heightMm }) => [
      ...headingBlock("Tools", widthMm, 2),
      ...keyValueBlocks(toolPairs(input), widthMm),
      ...paragraphBlocks(
        "Pull one sample of each size at each setting of the tool: it must hold the force given. Never crimp a tinned end.",
        widthMm,
      ),
      ...tableBlocks(twoUp(COLUMNS, groups), widthMm, heightMm),
    ],
  );
}

/** Which tool for which kind of terminal. */
function toolPairs(input: PaperInput): readonly (readonly [string, string])[] {
  const kinds = new Map<string, Set<string>>();
  for (const { fitting } of sortedEnds(input)) {
    const kind = kindText({ ...fitting, half: null });
    kinds.set(fitting.tool, (kinds.get(fitting.tool) ?? new Set()).add(kind));
  }
  return [...kinds].map(([tool, names]) => [[...names].join(", "), tool]);
}

/** Ends of new wires by terminal and tool, wires in the order of their numbers. */
function sortedEnds({ job, fittings }: PaperInput) {
  const wires = new Map(job.wires.map((wire) => [wire.id, wire]));
  const ends = fittings.flatMap((fitting) => {
    const wire = wires.get(fitting.wire);
    return wire?.status === "new" ? [{ fitting, wire }] : [];
  });
  const key = ({ fitting }: (typeof ends)[number]): string => settingText(fitting);
  return ends.sort(
    (a, b) =>
      compareNumbers(key(a), key(b)) ||
      compareNumbers(numberOf(a.wire), numberOf(b.wire)) ||
      (a.fitting.end < b.fitting.end ? -1 : 1),
  );
}

function terminalGroups(input: PaperInput): readonly TableGroup[] {
  const pins = pinReader(input.job);
  const groups = new Map<string, { readonly note: string; readonly rows: TableRow[] }>();
  for (const { fitting, wire } of sortedEnds(input)) {
    const heading = settingText(fitting);
    const group = groups.get(heading) ?? { note: settingNote(fitting), rows: [] };
    group.rows.push({
      id: wire.id,
      cells: {
        number: { kind: "wireNumber", text: numberOf(wire) },
        colour: colourCell(
          wire.colour,
          input.design.conductors.get(wire.id)?.areaMm2 ?? null,
          input.job.colours.letters,
        ),
        where: {
          kind: "text",
          text: pins(fitting.pin).short,
          weight: 600,
          note: noteOf(input, fitting),
        },
        on: { kind: "tick" },
      },
    });
    groups.set(heading, group);
  }
  return [...groups].map(([heading, { note, rows }]) => ({
    heading,
    headingNote: `${note}, ${rows.length} ${rows.length === 1 ? "end" : "ends"}`,
    rows,
  }));
}

/** One setting of one tool: terminal and copper, and what does not go together. */
function settingText(fitting: EndFitting): string {
  const { barrelAreaMm2 } = fitting;
  const copper = `on ${printNumber(barrelAreaMm2, barrelAreaMm2 % 1 === 0 ? 0 : 2)} mm²`;
  const problem = problemText(fitting);
  const size = fitting.kind === "splice" || fitting.kind === "soldered" ? "" : `, ${fitting.size}`;
  return `${kindText(fitting)}${size}, ${copper}${problem === "" ? "" : `: ${problem}`}`;
}

function settingNote({ stripMm, pullN, joining }: EndFitting): string {
  const pull = pullN === null ? [] : [`holds ${printNumber(pullN, 0)} N`];
  const how = joining === "crimped" ? [] : [joining];
  return [`strip ${printNumber(stripMm, 0)} mm`, ...how, ...pull].join(", ");
}

/** What is out of the ordinary at one end; empty where nothing is. */
function noteOf({ job }: PaperInput, fitting: EndFitting): string {
  const numbers = new Map(job.wires.map((wire) => [wire.id, numberOf(wire)]));
  const shared =
    fitting.sharedWith.length === 0
      ? ""
      : `in one barrel with ${fitting.sharedWith.map((id) => numbers.get(id) ?? id).join(", ")}`;
  const basis = fitting.basis === "area" || fitting.basis === "person" ? basisText(fitting) : "";
  return [basis, shared].filter(Boolean).join("; ");
}

/** The same ends for a spreadsheet. */
export function terminalRows(input: PaperInput): readonly (readonly CsvValue[])[] {
  return [
    [
      "number",
      "wire",
      "end",
      "pin",
      "terminal",
      "name",
      "tool",
      "onFirst",
      "stripMm",
      "barrelAreaMm2",
      "pullN",
      "pullSource",
      "chosenBy",
      "why",
      "problem",
      "sharedWith",
    ],
    ...sortedEnds(input).map(({ fitting, wire }) => [
      numberOf(wire),
      wire.id,
      fitting.end,
      fitting.pin,
      fitting.terminal,
      terminalName(fitting),
      fitting.tool,
      fitting.sleeveFirst,
      fitting.stripMm,
      fitting.barrelAreaMm2,
      fitting.pullN,
      fitting.pull === null
        ? null
        : `${fitting.pull.source}, ${fitting.pull.place} (${fitting.pull.confidence})`,
      fitting.chosenBy,
      basisText(fitting),
      problemText(fitting),
      fitting.sharedWith.join(" "),
    ]),
  ];
}
