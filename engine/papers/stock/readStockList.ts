import { type Refusal, refusal } from "../../messages/index.ts";
import { type CsvLine, csvCells } from "./csvCells.ts";
import { readStockRow, type StockCells } from "./readStockRow.ts";
import { GOOD_KINDS, type PassedOver, type StockList, type StockRow } from "./stockRow.ts";

const MOST_MB = 4;
const MOST_ROW_COUNT = 20_000;
/** More would not be read by anybody. */
const MOST_REFUSAL_COUNT = 20;

/** Headings a list must have, and those it may. */
const NEEDED = ["code", "description", "kind", "make", "unit", "price", "currency"] as const;
const FREE = ["colour", "pack", "instock"] as const;

export type StockReading =
  | { readonly ok: true; readonly stock: StockList }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/**
 * A shop's own price list: comma or semicolon separated text whose first line names the columns in any order and case: code, description, kind,
 * make, unit, price, currency, and if wanted colour, pack, in stock. See docs/decisions/0026.
 *
 * Kinds are wire, terminal, splice, connector, fuse and part; rows of any other kind, or without a make, are passed over and told.
 * Refused with its line: what is not a price, a pack, a unit of its kind, a currency; a code twice; two currencies.
 */
export function readStockList(text: string): StockReading {
  if (text.length > MOST_MB * 1e6) {
    return refused(refusal("stock-too-large", place(null, ""), { limitMB: MOST_MB }));
  }
  const read = csvCells(text);
  if (!read.ok) return refused(refusal("stock-quote", place(read.line, ""), {}));
  const [heading, ...lines] = read.lines;
  const columns = columnsOf(heading ?? { line: 1, cells: [] });
  if (!columns.ok) return columns;
  if (lines.length === 0) return refused(refusal("stock-empty", place(null, ""), {}));
  if (lines.length > MOST_ROW_COUNT) {
    return refused(refusal("stock-too-many", place(null, ""), { limitCount: MOST_ROW_COUNT }));
  }
  return rowsOf(lines, columns);
}

type Columns = { readonly ok: true } & {
  readonly indexOf: ReadonlyMap<string, number>;
  readonly headingCount: number;
  readonly unused: readonly string[];
};

const plainHeading = (cell: string): string =>
  cell
    .toLowerCase()
    .replace(/[ _-]/g, "")
    .replace(/^color$/, "colour");

function columnsOf({ line, cells }: CsvLine): Columns | Extract<StockReading, { ok: false }> {
  const indexOf = new Map<string, number>();
  const unused: string[] = [];
  const known: readonly string[] = [...NEEDED, ...FREE];
  for (const [k, cell] of cells.entries()) {
    const heading = plainHeading(cell);
    if (!known.includes(heading)) unused.push(cell);
    else if (indexOf.has(heading)) {
      return refused(refusal("stock-heading-twice", place(line, cell), { heading: cell }));
    } else indexOf.set(heading, k);
  }
  const missing = NEEDED.find((heading) => !indexOf.has(heading));
  if (missing !== undefined) {
    const words = { heading: missing, headings: NEEDED.join(", ") };
    return refused(refusal("stock-heading-missing", place(line, cells.join(",")), words));
  }
  return { ok: true, indexOf, headingCount: cells.length, unused };
}

function rowsOf(lines: readonly CsvLine[], columns: Columns): StockReading {
  const refusals: Refusal[] = [];
  const rows: StockRow[] = [];
  const passedOver: PassedOver[] = [];
  const lineOfCode = new Map<string, number>();
  let currency: { readonly word: string; readonly line: number } | null = null;
  for (const { line, cells } of lines) {
    if (refusals.length >= MOST_REFUSAL_COUNT) break;
    if (cells.length !== columns.headingCount) {
      const words = { cellCount: cells.length, headingCount: columns.headingCount };
      refusals.push(refusal("stock-cells", place(line, cells.join(",")), words));
      continue;
    }
    const cell = (heading: string): string =>
      unguarded(cells[columns.indexOf.get(heading) ?? -1] ?? "");
    const code = cell("code");
    const kind = cell("kind").toLowerCase();
    const isOurs = GOOD_KINDS.includes(kind as never);
    if (!isOurs || cell("make") === "") {
      passedOver.push({ line, code, why: isOurs ? "make" : "kind" });
      continue;
    }
    const row = readStockRow(line, cell as StockCells);
    if (!row.ok) {
      refusals.push(...row.refusals);
      continue;
    }
    const first = lineOfCode.get(code);
    if (first !== undefined) {
      refusals.push(refusal("stock-code-twice", place(line, code), { firstLine: first }));
      continue;
    }
    currency ??= { word: row.currency, line };
    if (row.currency !== currency.word) {
      const words = { first: currency.word, firstLine: currency.line };
      refusals.push(refusal("stock-two-currencies", place(line, row.currency), words));
      continue;
    }
    lineOfCode.set(code, line);
    rows.push(row.row);
  }
  if (refusals.length > 0) return { ok: false, refusals };
  if (currency === null) return refused(refusal("stock-empty", place(null, ""), {}));
  const stock = { currency: currency.word, rows, passedOver, unusedHeadings: columns.unused };
  return { ok: true, stock };
}

/** A cell our own lists guard against being taken for a formula is read without its guard. */
const unguarded = (cell: string): string => (/^'\s*[=+\-@]/.test(cell) ? cell.slice(1) : cell);

const place = (line: number | null, found: string) => ({
  pointer: "stock",
  line,
  found: found.length > 60 ? `${found.slice(0, 57)}…` : found,
});

const refused = (one: Refusal) => ({ ok: false as const, refusals: [one] });
