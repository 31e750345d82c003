import { nearestWord } from "../../messages/index.ts";
import {
  colourSchemes,
  colours,
  connectorClasses,
  lamps,
  resolveWire,
  studs,
  terminals,
  wires,
} from "../../tables/index.ts";
import { dropClassSchema } from "../loomSchema.ts";
import type { JobIndex } from "./jobIndex.ts";
import { type Problem, problem } from "./problem.ts";
import { type RowKind, type RowUse, rowUses } from "./rowUses.ts";

const ids = (rows: readonly { readonly id: string }[]) => new Set(rows.map((row) => row.id));

/** What each kind of name may be, and what its table is called. `none`: the job keeps to no scheme. */
const KNOWN: Readonly<Record<RowKind, { readonly table: string; readonly words: Set<string> }>> = {
  colour: { table: "colours", words: new Set(colours.map((row) => row.word)) },
  scheme: {
    table: "colour schemes",
    words: new Set(["none", ...colourSchemes.map((row) => row.scheme)]),
  },
  make: { table: "wires", words: ids(wires) },
  stud: { table: "studs", words: ids(studs) },
  terminal: {
    table: "terminals",
    words: new Set([...ids(terminals), ...studs.map((row) => `ring-${row.id}`)]),
  },
  connector: { table: "connectors", words: ids(connectorClasses) },
  lamp: { table: "lamps", words: ids(lamps) },
  dropClass: { table: "volt-drop classes", words: new Set(dropClassSchema.options) },
};

/** Names of colours, makes, studs, terminals, connectors, lamps and schemes that no table has a row for. */
export function tableRows(index: JobIndex): readonly Problem[] {
  return rowUses(index.job).flatMap((use) => unknownRow(index, use));
}

function unknownRow(index: JobIndex, [kind, path, id]: RowUse): readonly Problem[] {
  const { table, words } = KNOWN[kind];
  if (id === undefined || words.has(id)) return [];
  return [
    problem("unknown-row", path, id, () => ({
      place: index.place(path),
      id,
      table,
      suggestion: suggestion(kind, id, [...words]),
    })),
  ];
}

function suggestion(kind: RowKind, id: string, known: readonly string[]): string {
  const nearest = nearestWord(id, known);
  if (nearest !== null) return `Did you mean "${nearest}"?`;
  const meant = kind === "make" ? resolveWire(id).candidates.map((row) => row.id) : [];
  const some = meant.length > 0 ? meant : known;
  if (some.length <= 24) return `Write one of ${some.join(", ")}.`;
  return `Write the id of a row, such as ${some.slice(0, 6).join(", ")}.`;
}
