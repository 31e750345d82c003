import type { PricedRow, PricedShopping } from "./pricedGoods.ts";

/** What a change does to the price of the shopping list. */
export interface PriceChange {
  readonly currency: string;
  /** Dearer by so much, cheaper where negative; null where a line that changes has no price. */
  readonly differencePrice: number | null;
  /** Lines that change and have no price. */
  readonly unpriced: readonly string[];
}

/**
 * Two shopping lists priced from one price list, held against each other: Δ = Σ new − Σ old over the lines that differ. A line that has no price on either
 * side and is the same on both does not matter; one that differs makes the difference unknown.
 */
export function priceChange(before: PricedShopping, after: PricedShopping): PriceChange {
  const [old, fresh] = [rowsByKey(before.rows), rowsByKey(after.rows)];
  const isSame = (a: PricedRow | undefined, b: PricedRow | undefined): boolean =>
    a?.quantity === b?.quantity && a?.price === b?.price;
  const changed = [...new Set([...old.keys(), ...fresh.keys()])]
    .filter((key) => !isSame(old.get(key), fresh.get(key)))
    .map((key) => [old.get(key), fresh.get(key)] as const);
  const unpriced = changed.flatMap(([a, b]) =>
    [a, b].some((row) => row !== undefined && row.price === null) ? [(b ?? a)!.what] : [],
  );
  const differencePrice = changed.reduce(
    (sum, [a, b]) => sum + (b?.price ?? 0) - (a?.price ?? 0),
    0,
  );
  return {
    currency: after.currency,
    differencePrice: unpriced.length > 0 ? null : differencePrice,
    unpriced: unpriced.sort(),
  };
}

/** Lines that read alike are told apart by their order. */
function rowsByKey(rows: readonly PricedRow[]): ReadonlyMap<string, PricedRow> {
  const found = new Map<string, PricedRow>();
  for (const row of rows) {
    const stem = `${row.group} ${row.what}`;
    let key = stem;
    for (let n = 2; found.has(key); n++) key = `${stem} #${n}`;
    found.set(key, row);
  }
  return found;
}
