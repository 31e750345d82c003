import { cheapestPacks, type PackChoice } from "./cheapestPacks.ts";
import type { Good } from "./good.ts";
import { type Reel, reelsFor } from "./reelsFor.ts";
import type { StockList, StockRow } from "./stockRow.ts";

/** Packs of one row of the price list. */
export interface Bought {
  readonly code: string;
  readonly description: string;
  /** Line of the price list. */
  readonly line: number;
  readonly packCount: number;
  readonly packPrice: number;
}

/** Why a line has no price. */
export type Missing = "not-in-list" | "not-enough" | "too-long" | "not-measured";

/** One line of the shopping list with what it costs. */
export interface PricedRow extends Good {
  readonly bought: readonly Bought[];
  /** Null where it cannot be bought from this list: see `missing`. */
  readonly price: number | null;
  readonly missing: Missing | null;
  /** Pieces left in the packs; null for wire, or where nothing is bought. */
  readonly leftoverCount: number | null;
  /** Reels and lengths bought, with what is left of each; empty for anything else. */
  readonly reels: readonly Reel[];
}

export interface PricedShopping {
  readonly currency: string;
  readonly rows: readonly PricedRow[];
  /** Sum of the rows that have a price. */
  readonly totalPrice: number;
  /** Nothing is missing: the total is the whole. */
  readonly isComplete: boolean;
  readonly missingCount: number;
}

/** Goods bought from one list, each line as cheaply as its packs allow. */
export function pricedGoods(goods: readonly Good[], stock: StockList): PricedShopping {
  const rows = goods.map((good) => pricedRow(good, stock.rows));
  const missingCount = rows.filter(({ missing }) => missing !== null).length;
  return {
    currency: stock.currency,
    rows,
    totalPrice: rows.reduce((sum, { price }) => sum + (price ?? 0), 0),
    isComplete: missingCount === 0,
    missingCount,
  };
}

function pricedRow(good: Good, rows: readonly StockRow[]): PricedRow {
  const serving = servingRows(good, rows);
  const none = { ...good, bought: [], price: null, leftoverCount: null, reels: [] };
  if (good.unmeasured.length > 0) return { ...none, missing: "not-measured" };
  if (serving.length === 0) return { ...none, missing: "not-in-list" };
  return good.kind === "wire" ? wireRow(good, serving, none) : piecesRow(good, serving, none);
}

/** Rows of the most exact make there is; of those a row of the very colour before one for every colour. */
function servingRows(good: Good, rows: readonly StockRow[]): readonly StockRow[] {
  const fitting = rows.filter(
    ({ kind, colour }) => kind === good.kind && (colour === null || colour === good.colour),
  );
  for (const make of good.makes) {
    const own = fitting.filter((row) => row.make.toLowerCase() === make.toLowerCase());
    const ofColour = own.filter(({ colour }) => colour !== null);
    if (own.length > 0) return ofColour.length > 0 ? ofColour : own;
  }
  return [];
}

type Unpriced = Omit<PricedRow, "missing">;

function piecesRow(good: Good, serving: readonly StockRow[], none: Unpriced): PricedRow {
  const needed = good.neededCount ?? 0;
  const choices = serving.map(
    ({ packPrice, packCount, inStockCount }): PackChoice => ({
      packPrice,
      mostCount: Math.min(Math.ceil(needed / packCount!), inStockCount ?? Infinity),
    }),
  );
  const heldCount = (counts: readonly number[]): number =>
    counts.reduce((sum, count, k) => sum + count * serving[k]!.packCount!, 0);
  const counts = cheapestPacks(choices, (one) => heldCount(one) >= needed);
  if (counts === null) return { ...none, missing: "not-enough" };
  const bought = boughtOf(serving, counts);
  return {
    ...none,
    bought,
    price: priceOf(bought),
    missing: null,
    leftoverCount: heldCount(counts) - needed,
  };
}

/** Wire: from reels that are not joined, or as one length, whichever costs less. */
function wireRow(good: Good, serving: readonly StockRow[], none: Unpriced): PricedRow {
  const ways = [
    ...serving.filter(({ unit }) => unit === "m").flatMap((row) => lengthWay(good, row) ?? []),
    ...(reelsWay(
      good,
      serving.filter(({ unit }) => unit === "reel"),
    ) ?? []),
  ];
  const [first] = ways.toSorted((a, b) => priceOf(a.bought) - priceOf(b.bought));
  if (first !== undefined) {
    return { ...none, ...first, price: priceOf(first.bought), missing: null };
  }
  const longestM = Math.max(
    ...serving.map(({ unit, packM }) => (unit === "reel" ? packM! : Infinity)),
  );
  const isTooLong = good.piecesM.some((pieceM) => pieceM > longestM);
  return { ...none, missing: isTooLong ? "too-long" : "not-enough" };
}

type Way = Pick<PricedRow, "bought" | "reels">;

function lengthWay({ piecesM }: Good, row: StockRow): Way | null {
  const neededM = piecesM.reduce((sum, pieceM) => sum + pieceM, 0);
  const packM = row.packM!;
  // A metre asked for is not two because of the last bit of a sum.
  const packCount = Math.ceil(neededM / packM - 1e-9);
  if (packCount > (row.inStockCount ?? Infinity)) return null;
  const reels = reelsFor(piecesM, [Math.max(packCount * packM, neededM)]);
  return reels === null ? null : { bought: boughtOf([row], [packCount]), reels };
}

function reelsWay({ piecesM }: Good, rows: readonly StockRow[]): readonly Way[] | null {
  if (rows.length === 0) return null;
  const choices = rows.map(
    ({ packPrice, packM, inStockCount }): PackChoice => ({
      packPrice,
      mostCount: Math.min(reelCountFor(piecesM, packM!), inStockCount ?? Infinity),
    }),
  );
  const lengthsM = (counts: readonly number[]): readonly number[] =>
    counts.flatMap((count, k) => Array<number>(count).fill(rows[k]!.packM!));
  const counts = cheapestPacks(choices, (one) => reelsFor(piecesM, lengthsM(one)) !== null);
  if (counts === null) return null;
  return [{ bought: boughtOf(rows, counts), reels: reelsFor(piecesM, lengthsM(counts))! }];
}

/** Reels of one length that hold every piece that fits one at all. */
function reelCountFor(piecesM: readonly number[], reelM: number): number {
  const fitting = piecesM.filter((pieceM) => pieceM <= reelM);
  let count = 1;
  while (reelsFor(fitting, Array<number>(count).fill(reelM)) === null) count += 1;
  return count;
}

function boughtOf(rows: readonly StockRow[], counts: readonly number[]): readonly Bought[] {
  return rows.flatMap(({ code, description, line, packPrice }, k) => {
    const packCount = counts[k]!;
    return packCount > 0 ? [{ code, description, line, packCount, packPrice }] : [];
  });
}

const priceOf = (bought: readonly Bought[]): number =>
  bought.reduce((sum, { packCount, packPrice }) => sum + packCount * packPrice, 0);
