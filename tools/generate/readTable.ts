import { parse } from "csv-parse/sync";
import { unitOfColumn, unitWords } from "./unitOfColumn.ts";

export const confidenceWords = [
  "seen",
  "secondary",
  "memory",
  "derived",
  "computed",
  "common practice",
  "own",
] as const;

export type Cell = string | number | boolean | null;
export type Column = {
  readonly name: string;
  /** "number" has a unit in its heading; "value" takes its unit from the row; "yesNo" is a truth. */
  readonly kind: "text" | "number" | "value" | "yesNo";
  readonly unit: string | null;
  /** heading ended in `?`: a cell may be `-`, which reads as null. */
  readonly mayBeMissing: boolean;
};
export type ReadTable = {
  readonly name: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
};

const required = ["id", "source", "place", "confidence"];
const numberForm = /^-?\d+(\.\d+)?(e[-+]?\d+)?$/i;

/**
 * Reads one table of published figures and refuses it whole if anything in it is doubtful.
 *
 * @param name     table name, from the file name.
 * @param text     the CSV, first line the headings.
 * @param sources  ids a `source` cell may name.
 * @returns the table, typed cell by cell.
 * @throws  Error naming table, row and column: a table is part of the program, so this is a bug.
 */
export function readTable(name: string, text: string, sources: ReadonlySet<string>): ReadTable {
  const lines: string[][] = parse(text, { relaxColumnCount: true, trim: false });
  const [headings, ...body] = lines;
  if (headings === undefined) throw new Error(`${name}: no heading line`);
  const columns = headings.map(readHeading(name));
  for (const needed of required) {
    if (!columns.some((column) => column.name === needed))
      throw new Error(`${name}: no column "${needed}"`);
  }
  refuseRepeats(
    name,
    "column",
    columns.map((column) => column.name),
  );
  const idAt = columns.findIndex((column) => column.name === "id");
  refuseRepeats(
    name,
    "row",
    body.map((row) => row[idAt] ?? ""),
  );
  const rows = body.map((row, i) => {
    const where = `${name}: row ${i + 2} (${row[idAt] ?? ""})`;
    if (row.length !== columns.length)
      throw new Error(`${where}: ${row.length} cells under ${columns.length} headings`);
    return columns.map((column, k) =>
      readCell(`${where}, ${column.name}`, column, row[k]!, sources),
    );
  });
  if (rows.length === 0) throw new Error(`${name}: no rows`);
  return { name, columns, rows };
}

function readHeading(table: string): (heading: string) => Column {
  return (heading) => {
    const mayBeMissing = heading.endsWith("?");
    const name = mayBeMissing ? heading.slice(0, -1) : heading;
    if (!/^[a-z][A-Za-z0-9]*$/.test(name)) throw new Error(`${table}: bad heading "${heading}"`);
    if (mayBeMissing && required.includes(name))
      throw new Error(`${table}: "${name}" may not be missing`);
    const unit = unitOfColumn(name);
    if (name === "value") return { name, kind: "value", unit: null, mayBeMissing };
    if (unit !== null) return { name, kind: "number", unit, mayBeMissing };
    const kind = /^(is|has|may)[A-Z]/.test(name) ? "yesNo" : "text";
    return { name, kind, unit: null, mayBeMissing };
  };
}

function refuseRepeats(table: string, what: string, names: readonly string[]): void {
  const seen = new Set<string>();
  for (const one of names) {
    if (seen.has(one)) throw new Error(`${table}: ${what} "${one}" appears twice`);
    seen.add(one);
  }
}

function readCell(where: string, column: Column, cell: string, sources: ReadonlySet<string>): Cell {
  if (cell.trim() === "") throw new Error(`${where}: blank; write - where a figure is not known`);
  if (cell !== cell.trim()) throw new Error(`${where}: space around "${cell}"`);
  if (cell === "-") {
    if (column.mayBeMissing) return null;
    throw new Error(`${where}: may not be missing`);
  }
  if (column.kind === "number" || column.kind === "value") {
    const value = Number(cell);
    if (!numberForm.test(cell) || !Number.isFinite(value))
      throw new Error(`${where}: "${cell}" is not a number`);
    return value;
  }
  if (column.kind === "yesNo") {
    if (cell !== "yes" && cell !== "no") throw new Error(`${where}: "${cell}" is not yes or no`);
    return cell === "yes";
  }
  refuseUnknownWord(where, column.name, cell, sources);
  return cell;
}

function refuseUnknownWord(
  where: string,
  name: string,
  cell: string,
  sources: ReadonlySet<string>,
): void {
  const isConfidence = name === "confidence" || name.endsWith("Confidence");
  if (isConfidence && !(confidenceWords as readonly string[]).includes(cell))
    throw new Error(`${where}: "${cell}" is not one of ${confidenceWords.join(", ")}`);
  if ((name === "source" || name.endsWith("Source")) && !sources.has(cell))
    throw new Error(`${where}: source "${cell}" is not in sources.csv`);
  if (name === "unit" && !unitWords.has(cell)) throw new Error(`${where}: unknown unit "${cell}"`);
}
