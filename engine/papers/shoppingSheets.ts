import type { CsvValue, Sheet, TableCell, TableGroup } from "../drawing/index.ts";
import type { PaperInput } from "./paperInput.ts";
import { tableSheets } from "./sheets.ts";
import type { Good } from "./stock/good.ts";
import { goodsOf } from "./stock/goodsOf.ts";
import { type Missing, type PricedShopping, pricedGoods } from "./stock/pricedGoods.ts";

const MISSING: Readonly<Record<Missing, string>> = {
  "not-in-list": "not in the list",
  "not-enough": "not enough in stock",
  "too-long": "longer than a reel",
  "not-measured": "not measured",
};

/** Shorter ends of wire are not worth telling, m. */
const LEAST_LEFT_M = 0.01;

/** What to send to a shop as it is: wire by make and colour, terminals with spares, fuses, connectors, joints. Prices are of the shop's list, or written in. */
export function shoppingSheets(input: PaperInput): readonly Sheet[] {
  const goods = goodsOf(input);
  const priced = input.stock === undefined ? null : pricedGoods(goods, input.stock);
  return tableSheets(
    input,
    {
      documentName: "shopping list",
      orientation: "portrait",
      head: {
        title: "Shopping list",
        lead: [
          input.check.lengthsComplete
            ? "Wire includes waste; terminals include a tenth more, at least one spare."
            : "NOT FINAL: some lengths are not measured, so some wire is missing from the sums.",
          ...(priced === null ? [] : [totalText(priced)]),
        ].join(" "),
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
      groups: shoppingGroups(goods, priced),
    },
  );
}

/** The sum, or what of it is missing. */
const totalText = ({ currency, totalPrice, missingCount }: PricedShopping): string =>
  missingCount === 0
    ? `All of it costs ${moneyText(totalPrice)} ${currency}.`
    : `${moneyText(totalPrice)} ${currency} without ${missingCount} lines that have no price.`;

const moneyText = (price: number): string => price.toFixed(2);

/** The list for a spreadsheet or an order form. */
export function shoppingCsvRows(input: PaperInput): readonly (readonly CsvValue[])[] {
  const goods = goodsOf(input);
  const plain = ({ group, what, quantity, note }: Good): readonly CsvValue[] => [
    group,
    what,
    quantity.replace(/\u00a0|\u2009/g, " "),
    note,
  ];
  const headings = ["group", "what", "quantity", "note", "price"];
  if (input.stock === undefined) return [headings, ...goods.map((one) => [...plain(one), null])];
  const { rows, currency, totalPrice } = pricedGoods(goods, input.stock);
  return [
    [...headings, "currency", "order", "left over", "missing"],
    ...rows.map((row): readonly CsvValue[] => [
      ...plain(row),
      row.price === null ? null : Number(moneyText(row.price)),
      row.price === null ? null : currency,
      row.bought.map(({ code, packCount }) => `${packCount} x ${code}`).join(", "),
      leftoverText(row),
      row.missing === null ? null : MISSING[row.missing],
    ]),
    ["total", null, null, null, Number(moneyText(totalPrice)), currency, null, null, null],
  ];
}

function leftoverText({ reels, leftoverCount }: PricedShopping["rows"][number]): string | null {
  const left = reels.filter(({ leftoverM }) => leftoverM >= LEAST_LEFT_M);
  if (left.length > 0) return left.map(({ leftoverM }) => `${leftoverM.toFixed(2)} m`).join(", ");
  return leftoverCount === null || leftoverCount === 0 ? null : String(leftoverCount);
}

function shoppingGroups(
  goods: readonly Good[],
  priced: PricedShopping | null,
): readonly TableGroup[] {
  const groups = new Map<string, TableGroup["rows"]>();
  for (const [k, { group, what, quantity, note }] of goods.entries()) {
    const row = {
      cells: { what, quantity, note, price: priceCell(priced, k), have: { kind: "tick" as const } },
    };
    groups.set(group, [...(groups.get(group) ?? []), row]);
  }
  return [...groups].map(([heading, rows]) => ({ heading, rows }));
}

function priceCell(priced: PricedShopping | null, k: number): TableCell {
  const price = priced?.rows[k]?.price ?? null;
  return price === null ? { kind: "writeIn" } : moneyText(price);
}
