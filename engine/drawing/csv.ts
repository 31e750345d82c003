import { stringify } from "csv-stringify/sync";

export type CsvValue = string | number | null;

/** First characters that make a spreadsheet take a cell for a formula. */
const FORMULA_START = /^\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r\n]/;

/**
 * Rows as comma-separated text (RFC 4180, CRLF, UTF-8 without a mark). Numbers stay numbers; text a spreadsheet would take for a formula gets an
 * apostrophe before it, so that nothing written in a job is ever carried out. The first row is the heading.
 */
export function csvText(rows: readonly (readonly CsvValue[])[]): string {
  const guarded = rows.map((row) => row.map(guardedCell));
  return stringify(guarded, { record_delimiter: "windows" });
}

function guardedCell(value: CsvValue): string {
  if (value === null) return "";
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new Error(`a table cannot hold ${value}`);
    return String(value);
  }
  return FORMULA_START.test(value) ? `'${value}` : value;
}
