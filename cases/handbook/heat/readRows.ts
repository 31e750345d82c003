import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parse } from "csv-parse/sync";

/** A row of a handbook case: texts as they stand, numbers where a cell is one. */
export type HandbookRow = Readonly<Record<string, string>>;

/** Rows of a CSV beside this file. */
export function readRows(name: string): readonly HandbookRow[] {
  const path = fileURLToPath(new URL(`./${name}.csv`, import.meta.url));
  return parse(readFileSync(path, "utf8"), { columns: true, skip_empty_lines: true });
}

/** A cell that must be a number. */
export function numberIn(row: HandbookRow, column: string): number {
  const text = row[column];
  const value = Number(text);
  if (text === undefined || text.trim() === "" || !Number.isFinite(value)) {
    throw new Error(`${row.id}: ${column} is "${text}", not a number`);
  }
  return value;
}
