import type { CheckedJob, Conversion } from "../../judge/index.ts";
import { endFittings } from "../../size/index.ts";
import type { Good } from "./good.ts";
import { goodsOf, partGood } from "./goodsOf.ts";
import { type PricedShopping, pricedGoods } from "./pricedGoods.ts";
import type { StockList } from "./stockRow.ts";

/** What a checked job's build has to buy, priced from one list: the shopping list line by line, what is missing, what is left over. */
export function pricedShopping(
  { design }: Pick<CheckedJob, "design">,
  stock: StockList,
): PricedShopping {
  const { job, conductors } = design;
  return pricedGoods(goodsOf({ job, design, fittings: endFittings(job, conductors) }), stock);
}

/** The shopping list alone, without prices. */
export function shoppingGoods({ design }: Pick<CheckedJob, "design">): readonly Good[] {
  const { job, conductors } = design;
  return goodsOf({ job, design, fittings: endFittings(job, conductors) });
}

/** What a conversion has to buy: parts that are replaced, and fuses of other ratings. */
export function conversionCost(conversion: Conversion, stock: StockList): PricedShopping {
  const { job, parts, fuses } = conversion;
  const replaced = new Set(
    parts.flatMap(({ part, action }) => (action === "replace" ? [part] : [])),
  );
  const rerated = new Set(
    fuses.flatMap(({ fuse, beforeA, afterA }) => (beforeA === afterA ? [] : [fuse])),
  );
  const goods = job.parts
    .filter(({ id }) => replaced.has(id) || rerated.has(id))
    .map((part) => partGood(part, job.supply.nominalV));
  return pricedGoods(goods, stock);
}
