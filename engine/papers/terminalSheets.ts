import type { CsvValue, Sheet, TableGroup, TableRow } from "../drawing/index.ts";
import type { EndFitting } from "../size/index.ts";
import { printNumber } from "../units/index.ts";
import { colourCell, lettersName } from "./colourText.ts";
import type { PaperInput } from "./paperInput.ts";
import { pinReader } from "./pinText.ts";
import { tableSheets } from "./sheets.ts";
import { basisText, problemText, terminalName } from "./terminalText.ts";
import { compareNumbers, numberOf } from "./wireRows.ts";

/** Every end to be fitted, one kind of terminal and one tool at a time: sleeve first, strip, crimp, pull a sample. */
export function terminalSheets(input: PaperInput): readonly Sheet[] {
  const groups = terminalGroups(input);
  if (groups.length === 0) return [];
  return tableSheets(
    input,
    {
      documentName: "terminal schedule",
      orientation: "portrait",
      head: {
        title: "Terminals and tools",
        lead: `Sleeve or seal on the wire before the terminal. Pull one sample of each size at each tool setting: it must hold the force given. Colours in ${lettersName(input.job.colours.letters)}.`,
      },
    },
    {
      columns: [
        { key: "number", heading: "No.", width: { kind: "natural", maxMm: 30 } },
        { key: "colour", heading: "Colour", width: { kind: "fixed", mm: 38 } },
        { key: "where", heading: "At", width: { kind: "share", share: 1, minMm: 40 } },
        { key: "first", heading: "On first", width: { kind: "natural", maxMm: 18 } },
        { key: "strip", heading: "Strip mm", width: { kind: "fixed", mm: 12 }, align: "end" },
        {
          key: "pull",
          heading: "Pull N",
          width: { kind: "fixed", mm: 13 },
          align: "end",
          weight: 700,
        },
        { key: "on", heading: "on", width: { kind: "fixed", mm: 9 }, align: "middle" },
      ],
      groups,
    },
  );
}

/** Ends of new wires by terminal and tool, wires in the order of their numbers. */
function sortedEnds({ job, fittings }: PaperInput) {
  const wires = new Map(job.wires.map((wire) => [wire.id, wire]));
  const ends = fittings.flatMap((fitting) => {
    const wire = wires.get(fitting.wire);
    return wire?.status === "new" ? [{ fitting, wire }] : [];
  });
  const key = ({ fitting }: (typeof ends)[number]): string => terminalName(fitting);
  return ends.sort(
    (a, b) =>
      compareNumbers(key(a), key(b)) ||
      compareNumbers(numberOf(a.wire), numberOf(b.wire)) ||
      (a.fitting.end < b.fitting.end ? -1 : 1),
  );
}

function terminalGroups(input: PaperInput): readonly TableGroup[] {
  const pins = pinReader(input.job);
  const groups = new Map<string, { tool: string; rows: TableRow[] }>();
  for (const { fitting, wire } of sortedEnds(input)) {
    const name = terminalName(fitting);
    const group = groups.get(name) ?? { tool: fitting.tool, rows: [] };
    const at = pins(fitting.pin);
    group.rows.push({
      id: wire.id,
      cells: {
        number: { kind: "wireNumber", text: numberOf(wire) },
        colour: colourCell(
          wire.colour,
          input.design.conductors.get(wire.id)?.areaMm2 ?? null,
          input.job.colours.letters,
        ),
        where: { kind: "text", text: at.what, weight: 600, note: noteOf(input, fitting) },
        first: fitting.sleeveFirst ?? "",
        strip: printNumber(fitting.stripMm, 0),
        pull: fitting.pullN === null ? "–" : printNumber(fitting.pullN, 0),
        on: { kind: "tick" },
      },
    });
    groups.set(name, group);
  }
  return [...groups].map(([name, { tool, rows }]) => ({
    heading: `${name}: ${tool}`,
    headingNote: `${rows.length} ${rows.length === 1 ? "end" : "ends"}`,
    rows,
  }));
}

function noteOf({ job }: PaperInput, fitting: EndFitting): string {
  const numbers = new Map(job.wires.map((wire) => [wire.id, numberOf(wire)]));
  const shared =
    fitting.sharedWith.length === 0
      ? ""
      : `in one barrel with ${fitting.sharedWith.map((id) => numbers.get(id) ?? id).join(", ")}`;
  return [basisText(fitting), shared, problemText(fitting)].filter(Boolean).join("; ");
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
