import { type Refusal, refusal } from "../../messages/index.ts";
import { readNumber } from "../../units/index.ts";
import type { GoodKind, StockRow, StockUnit } from "./stockRow.ts";

export type StockCells = (
  heading:
    | "code"
    | "description"
    | "kind"
    | "make"
    | "colour"
    | "unit"
    | "price"
    | "currency"
    | "pack"
    | "instock",
) => string;

export type StockRowReading =
  | { readonly ok: true; readonly row: StockRow; readonly currency: string }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** Ways each kind is sold; the first is meant where the cell is empty. */
const UNITS: Readonly<Record<GoodKind, readonly StockUnit[]>> = {
  wire: ["m", "reel"],
  terminal: ["each"],
  splice: ["each"],
  connector: ["each"],
  fuse: ["each"],
  part: ["each"],
};
const MOST_PRICE = 1e6;
const MOST_PACK = 1e5;
const ANY_COLOUR = /^(any|all)?$/;

/** One line of a price list whose kind and make are known to be there. */
export function readStockRow(line: number, cell: StockCells): StockRowReading {
  const kind = cell("kind").toLowerCase() as GoodKind;
  const place = (found: string) => ({ pointer: "stock", line, found: found.slice(0, 60) });
  const unit = (cell("unit").toLowerCase() || UNITS[kind][0]!) as StockUnit;
  const packPrice = readNumber(cell("price"));
  const pack = cell("pack") === "" ? 1 : readNumber(cell("pack"));
  const inStockCount = readAmount(cell("instock"));
  const currency = cell("currency").toUpperCase();
  const isWhole = unit !== "each" || Number.isInteger(pack);
  const refusals = [
    ...(cell("code") === "" ? [refusal("stock-code", place(""), {})] : []),
    ...(UNITS[kind].includes(unit)
      ? []
      : [refusal("stock-unit", place(cell("unit")), { kind, units: UNITS[kind].join(" or ") })]),
    ...(packPrice === null || packPrice < 0 || packPrice > MOST_PRICE
      ? [refusal("stock-price", place(cell("price")), {})]
      : []),
    ...(pack === null || pack <= 0 || pack > MOST_PACK || !isWhole
      ? [refusal("stock-pack", place(cell("pack")), {})]
      : []),
    ...(inStockCount === "unread" ? [refusal("stock-amount", place(cell("instock")), {})] : []),
    ...(/^[A-Z]{3}$/.test(currency)
      ? []
      : [refusal("stock-currency", place(cell("currency")), {})]),
  ];
  if (refusals.length > 0 || packPrice === null || pack === null || inStockCount === "unread")
    return { ok: false, refusals };
  const colour = cell("colour")
    .toLowerCase()
    .replace(/ *[,/] */g, "/");
  const row = {
    line,
    code: cell("code"),
    description: cell("description"),
    kind,
    make: cell("make"),
    colour: ANY_COLOUR.test(colour) ? null : colour,
    unit,
    packCount: unit === "each" ? pack : null,
    packM: unit === "each" ? null : pack,
    packPrice,
    inStockCount,
  };
  return { ok: true, row, currency };
}

/** Whole packs; "yes" says that there are some, "no" that there are none. */
function readAmount(cell: string): number | null | "unread" {
  const word = cell.toLowerCase();
  if (word === "" || word === "yes") return null;
  if (word === "no") return 0;
  const packs = readNumber(word);
  return packs === null || packs < 0 || !Number.isInteger(packs) ? "unread" : packs;
}
