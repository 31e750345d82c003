import { type GoodKind, type PricedShopping, printNumber } from "@copperwright/engine";
import { printTable } from "../printTable.ts";

const MISSING = {
  "not-in-list": "not in the list",
  "not-enough": "not enough in stock",
  "too-long": "longer than a reel",
  "not-measured": "not measured",
} as const;

/** The first make of a part is its id on this very machine; a shop lists the next. */
const MAKE_SHOWN: Readonly<Partial<Record<GoodKind, number>>> = { part: 1, connector: 1, fuse: 1 };

/** What is to be bought, from which row of the list, and what it comes to. */
export function printStock({ rows, currency, totalPrice, missingCount }: PricedShopping): string {
  const table = rows.map((row) => [
    row.what,
    row.quantity,
    row.bought.map(({ code, packCount }) => `${packCount} x ${code}`).join(", "),
    row.price === null ? MISSING[row.missing ?? "not-in-list"] : printNumber(row.price, 2),
    row.missing === "not-in-list" ? (row.makes[MAKE_SHOWN[row.kind] ?? 0] ?? row.makes[0]!) : "",
  ]);
  const sum = `${printNumber(totalPrice, 2)} ${currency}`;
  const total =
    missingCount === 0
      ? `All of it: ${sum}.`
      : `${sum} without ${missingCount} lines that have no price: write their make in the list.`;
  if (rows.length === 0) return "Nothing has to be bought.";
  const head = ["buy", "how much", "order", "price", "make to list"];
  return `${printTable(head, table, { right: [3] })}\n${total}`;
}
