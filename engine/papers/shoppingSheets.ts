import type { CsvValue, Sheet, TableGroup } from "../drawing/index.ts";
import { cutTotals } from "../route/index.ts";
import { allTables } from "../tables/index.ts";
import { printNumber } from "../units/index.ts";
import { colourCode, colourWords } from "./colourText.ts";
import type { PaperInput } from "./paperInput.ts";
import { tableSheets } from "./sheets.ts";
import { terminalTotals } from "./terminalTotals.ts";
import { compareNumbers } from "./wireRows.ts";

/** One line of the list. */
export interface ShoppingRow {
  readonly group: string;
  readonly what: string;
  readonly quantity: string;
  readonly note: string;
}

/** What to send to a shop as it is: wire by make and colour, terminals with spares, fuses, connectors, joints. Prices are written in. */
export function shoppingSheets(input: PaperInput): readonly Sheet[] {
  return tableSheets(
    input,
    {
      documentName: "shopping list",
      orientation: "portrait",
      head: {
        title: "Shopping list",
        lead: input.check.lengthsComplete
          ? "Wire includes waste; terminals include a tenth more, at least one spare."
          : "NOT FINAL: some lengths are not measured, so some wire is missing from the sums.",
      },
    },
    {
      columns: [
        { key: "what", heading: "What", width: { kind: "share", share: 1, minMm: 60 } },
        {
          key: "quantity",
          heading: "Quantity",
          width: { kind: "natural", maxMm: 28 },
          align: "end",
          weight: 700,
        },
        { key: "note", heading: "Note", width: { kind: "share", share: 0.8, minMm: 40 } },
        { key: "price", heading: "Price", width: { kind: "fixed", mm: 22 }, align: "middle" },
        { key: "have", heading: "have", width: { kind: "fixed", mm: 11 }, align: "middle" },
      ],
      groups: shoppingGroups(input),
    },
  );
}

/** The same rows for the sheet and for the CSV. */
export function shoppingRows(input: PaperInput): readonly ShoppingRow[] {
  const { job } = input;
  const wireName = new Map(
    allTables.wires.rows.map((row) => [row.id as string, row.tradeName as string]),
  );
  const wire = cutTotals(job, input.design.routed, input.design.conductors).map((total) => ({
    group: "Wire",
    what: `${(wireName.get(total.makeId) ?? total.makeId).replace("mm2", "mm²")}, ${colourWords(total.colour ?? undefined)} (${colourCode(total.colour ?? undefined, job.colours.letters)})`,
    quantity: `${printNumber(total.buyM, 2)} m`,
    note:
      total.basis === "complete"
        ? `${total.wireCount} pieces, ${printNumber(total.cutMm / 1000, 2)} m cut`
        : `NOT FINAL: ${total.unknownWires.length} pieces not measured`,
  }));
  const terminals = terminalTotals(input).map((total) => ({
    group: "Terminals",
    what: total.name,
    quantity: String(total.buyCount),
    note: `${total.count} used; ${total.note}`,
  }));
  const parts = present(job.parts).map((part) => ({
    group: "Parts",
    what: part.name,
    quantity: "1",
    note: part.id,
  }));
  const fuses = job.parts
    .filter((part) => part.kind === "fuse" && part.status !== "remove")
    .map((part) => (part.kind === "fuse" ? `${part.ratingA} A ${part.type}` : ""));
  const spares = [...new Set(fuses)].sort().map((what) => ({
    group: "Spare fuses",
    what: `Fuse ${what}`,
    quantity: "2",
    note: "kept under the seat",
  }));
  const connectors = present(job.connectors).map((connector) => ({
    group: "Connectors",
    what: `${connector.name}, ${connector.cavities.length} ways, ${connector.kind}`,
    quantity: "1 pair",
    note: connector.id,
  }));
  return [...wire, ...terminals, ...spliceRows(input), ...connectors, ...parts, ...spares];
}

/** Splice barrels with their sleeves, by the copper they hold. */
function spliceRows({ job, design }: PaperInput): readonly ShoppingRow[] {
  const counts = new Map<string, number>();
  for (const joint of present(job.joints).filter(({ kind }) => kind === "crimped-splice")) {
    const wires = joint.ways.flatMap((way) => design.wiresAt.get(`${joint.id}.${way}`) ?? []);
    const areaMm2 = wires.reduce(
      (sum, { id }) => sum + (design.conductors.get(id)?.areaMm2 ?? 0),
      0,
    );
    const what = `Splice barrel for ${wires.length} wires, ${printNumber(areaMm2, 1)} mm² in all, with shrink sleeve`;
    counts.set(what, (counts.get(what) ?? 0) + 1);
  }
  return [...counts]
    .sort(([left], [right]) => compareNumbers(left, right))
    .map(([what, count]) => ({
      group: "Joints",
      what,
      quantity: String(count + 1),
      note: `${count} used, one spare`,
    }));
}

const present = <T extends { readonly status?: string | undefined }>(
  list: readonly T[],
): readonly T[] => list.filter((one) => one.status === "new");

/** The list for a spreadsheet or an order form. */
export const shoppingCsvRows = (input: PaperInput): readonly (readonly CsvValue[])[] => [
  ["group", "what", "quantity", "note", "price"],
  ...shoppingRows(input).map(({ group, what, quantity, note }) => [
    group,
    what,
    quantity.replace(/\u00a0|\u2009/g, " "),
    note,
    null,
  ]),
];

function shoppingGroups(input: PaperInput): readonly TableGroup[] {
  const groups = new Map<string, TableGroup["rows"]>();
  for (const { group, what, quantity, note } of shoppingRows(input)) {
    const row = {
      cells: {
        what,
        quantity,
        note,
        price: { kind: "writeIn" as const },
        have: { kind: "tick" as const },
      },
    };
    groups.set(group, [...(groups.get(group) ?? []), row]);
  }
  return [...groups].map(([heading, rows]) => ({ heading, rows }));
}
