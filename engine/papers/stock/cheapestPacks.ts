/** A pack that may be bought: what it costs and how many there are. */
export interface PackChoice {
  readonly packPrice: number;
  /** No more than this can be wanted or had. */
  readonly mostCount: number;
}

/** Counted steps after which the best found so far is taken. */
const MOST_STEP_COUNT = 20_000;

/**
 * Cheapest numbers of packs, one number a choice, that are enough; of equal prices the first found, taking earlier choices first. Branch and bound: a
 * branch that already costs the best so far is left.
 *
 * @param isEnough  whether these numbers will do; more of any never makes it false.
 * @returns null where all there is will not do.
 */
export function cheapestPacks(
  choices: readonly PackChoice[],
  isEnough: (counts: readonly number[]) => boolean,
): readonly number[] | null {
  const all = choices.map(({ mostCount }) => mostCount);
  if (!isEnough(all)) return null;
  let best: { readonly counts: readonly number[]; readonly price: number } = {
    counts: all,
    price: priceOf(choices, all),
  };
  let stepCount = 0;
  const search = (counts: readonly number[], price: number): void => {
    stepCount += 1;
    if (stepCount > MOST_STEP_COUNT) return;
    const k = counts.length;
    if (k === choices.length) {
      if (price < best.price && isEnough(counts)) best = { counts, price };
      return;
    }
    const { packPrice, mostCount } = choices[k]!;
    const rest = choices.slice(k + 1).map((one) => one.mostCount);
    // Fewer of this one are not enough even with all there is of the others.
    const leastCount = leastEnough(mostCount, (count) => isEnough([...counts, count, ...rest]));
    for (let count = leastCount; count <= mostCount; count++) {
      const next = price + count * packPrice;
      if (next >= best.price || stepCount > MOST_STEP_COUNT) return;
      search([...counts, count], next);
    }
  };
  search([], 0);
  return best.counts;
}

/** Smallest count that is enough, by halving; the most where it is said to be. */
function leastEnough(mostCount: number, isEnough: (count: number) => boolean): number {
  let [low, high] = [0, mostCount];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (isEnough(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

const priceOf = (choices: readonly PackChoice[], counts: readonly number[]): number =>
  counts.reduce((sum, count, k) => sum + count * choices[k]!.packPrice, 0);
