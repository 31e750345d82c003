import type { PriceChange } from "@copperwright/engine";
import type { Consequence } from "../engine/engineApi.ts";
import { changedCounts } from "./changedCounts.ts";
import { moneyText } from "./moneyText.ts";
import { verdictWord } from "./verdictWord.ts";

/** What a change would do, told before it is made: counts worst first, sizes, fuses, price, verdict. */
export function consequenceText(consequence: Consequence | null): string {
  if (consequence === null) return "being tried";
  if (!consequence.ok) {
    const [first] = consequence.refusals;
    return `cannot be done: ${first?.message ?? "it does not fit"}`;
  }
  const { sizeCount, fuseCount, price, verdict, verdictBefore } = consequence;
  const counts = changedCounts(consequence);
  return [
    ...(counts.length === 0 ? ["the check's counts stay"] : counts),
    sizeCount === 0 ? "" : `${counted(sizeCount, "wire")} of another size`,
    fuseCount === 0 ? "" : `${counted(fuseCount, "fuse")} of another rating`,
    price === null ? "" : priceText(price),
    verdict === verdictBefore
      ? `verdict stays: ${verdictWord(verdict)}`
      : `verdict then: ${verdictWord(verdict)}`,
  ]
    .filter(Boolean)
    .join(" · ");
}

const counted = (count: number, word: string): string =>
  count === 1 ? `1 ${word}` : `${count} ${word}s`;

/** Half the smallest coin of most currencies: less than that is no difference. */
const NOTHING = 0.005;

function priceText({ differencePrice, currency, unpriced }: PriceChange): string {
  if (differencePrice === null) {
    const [first, ...more] = unpriced;
    return `price not known: ${first}${more.length > 0 ? ` and ${more.length} more` : ""} not in the list`;
  }
  if (Math.abs(differencePrice) < NOTHING) return "costs the same";
  const sign = differencePrice > 0 ? "+" : "\u2212";
  return `${sign}${moneyText(Math.abs(differencePrice), currency)}`;
}
