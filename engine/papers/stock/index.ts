/** A shop's price list, and what a build or a conversion costs by it. */
export { type ChangeOutcome, consequenceOf } from "./consequenceOf.ts";
export type { Good } from "./good.ts";
export type { PriceChange } from "./priceChange.ts";
export type { Bought, Missing, PricedRow, PricedShopping } from "./pricedGoods.ts";
export { conversionCost, pricedShopping, shoppingGoods } from "./pricedShopping.ts";
export { readStockList, type StockReading } from "./readStockList.ts";
export type { Reel } from "./reelsFor.ts";
export {
  GOOD_KINDS,
  type GoodKind,
  type PassedOver,
  type StockList,
  type StockRow,
  type StockUnit,
} from "./stockRow.ts";
