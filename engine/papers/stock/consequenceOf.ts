import type { Job } from "../../job/index.ts";
import type { CheckResult } from "../../judge/checkResult.ts";
import type { CheckedJob } from "../../judge/index.ts";
import { type PriceChange, priceChange } from "./priceChange.ts";
import type { PricedShopping } from "./pricedGoods.ts";

/** What an edit leads to, in the order it is told. */
export interface ChangeOutcome {
  readonly before: CheckResult["counts"];
  readonly after: CheckResult["counts"];
  readonly verdictBefore: CheckResult["verdict"];
  readonly verdict: CheckResult["verdict"];
  /** Wires of both jobs whose copper is another. */
  readonly sizeCount: number;
  /** Fuses of both jobs that are marked otherwise. */
  readonly fuseCount: number;
  /** Null where no price list is at hand. */
  readonly price: PriceChange | null;
}

/** The checked job before an edit held against the one after it, with prices where both were priced. */
export function consequenceOf(
  before: CheckedJob,
  after: CheckedJob,
  priced: { readonly before: PricedShopping; readonly after: PricedShopping } | null,
): ChangeOutcome {
  const makes = before.design.conductors;
  const sized = [...after.design.conductors].filter(([id, { makeId }]) => {
    const was = makes.get(id);
    return was !== undefined && was.makeId !== makeId;
  });
  const ratings = fuseRatings(before.design.job);
  const rerated = [...fuseRatings(after.design.job)].filter(([id, ratingA]) => {
    const wasA = ratings.get(id);
    return wasA !== undefined && wasA !== ratingA;
  });
  return {
    before: before.result.counts,
    after: after.result.counts,
    verdictBefore: before.result.verdict,
    verdict: after.result.verdict,
    sizeCount: sized.length,
    fuseCount: rerated.length,
    price: priced === null ? null : priceChange(priced.before, priced.after),
  };
}

const fuseRatings = ({ parts }: Job): ReadonlyMap<string, number> =>
  new Map(parts.flatMap((part) => (part.kind === "fuse" ? [[part.id, part.ratingA]] : [])));
