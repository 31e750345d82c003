import { BUDGET_ROUNDING_V } from "./sizeProblem.ts";

/**
 * One best way to size part of a loom: what it costs and how much drop it leaves for what lies upstream. How it came
 * about is kept as links to the points it was made of, so that fronts share their tails.
 */
export interface FrontPoint {
  /** Largest drop the rest of the way may have, V. */
  readonly slackV: number;
  readonly cost: number;
  /** Group whose size was chosen here, and which; −1 where branches were joined or nothing was chosen yet. */
  readonly group: number;
  readonly option: number;
  readonly rest: FrontPoint | null;
  /** The second branch, where two were joined. */
  readonly other: FrontPoint | null;
}

/** Sorted by rising slack and rising cost: every point is the cheapest for its slack. */
export type Front = readonly FrontPoint[];

/** One size of a group, with what it costs and drops. */
export interface GroupSize {
  readonly option: number;
  readonly cost: number;
  readonly dropV: number;
}

/** A budget before anything is taken from it. */
export const budgetFront = (slackV: number): Front => [
  { slackV, cost: 0, group: -1, option: -1, rest: null, other: null },
];

/** Two branches that meet: what is upstream must suit both, and both are paid for; what costs more than `most` is left out. */
export function joined(a: Front, b: Front, most: number): Front {
  const points: FrontPoint[] = [];
  let i = 0;
  let j = 0;
  while (i < a.length && j < b.length) {
    const left = a[i]!;
    const right = b[j]!;
    const slackV = Math.min(left.slackV, right.slackV);
    const cost = left.cost + right.cost;
    if (cost > most) break;
    points.push({ slackV, cost, group: -1, option: -1, rest: left, other: right });
    if (left.slackV <= slackV) i++;
    if (right.slackV <= slackV) j++;
  }
  return points;
}

/**
 * What a group of wires leaves of the slack, for every size it may have; what breaks the budget is left out.
 * The front moved by each size is sorted already, so the moved fronts are merged from the most slack downward and a
 * point is kept when it is cheaper than all before it.
 *
 * @param most  points that cost more are left out.
 */
export function lessened(
  front: Front,
  group: number,
  sizes: readonly GroupSize[],
  most: number,
): Front {
  const slacksV = Float64Array.from(front, ({ slackV }) => slackV);
  const costs = Float64Array.from(front, ({ cost }) => cost);
  const sizeDropsV = Float64Array.from(sizes, ({ dropV }) => dropV);
  const sizeCosts = Float64Array.from(sizes, ({ cost }) => cost);
  const places = new Int32Array(sizes.length).fill(front.length - 1);
  const kept: FrontPoint[] = [];
  let cheapest = most;
  for (;;) {
    let best = -1;
    let bestV = -BUDGET_ROUNDING_V;
    let bestCost = Number.POSITIVE_INFINITY;
    for (let k = 0; k < places.length; k++) {
      const under = cheapest - sizeCosts[k]!;
      let i = places[k]!;
      while (i >= 0 && costs[i]! >= under) i--;
      places[k] = i;
      if (i < 0) continue;
      const slackV = slacksV[i]! - sizeDropsV[k]!;
      if (slackV < bestV) continue;
      const cost = costs[i]! + sizeCosts[k]!;
      if (slackV > bestV || cost < bestCost) {
        best = k;
        bestV = slackV;
        bestCost = cost;
      }
    }
    if (best < 0) return kept.reverse();
    const { option } = sizes[best]!;
    const rest = front[places[best]!]!;
    kept.push({ slackV: bestV, cost: bestCost, group, option, rest, other: null });
    // Of what this size still offers the point just taken is dearest, so the next is below it even if sums round alike.
    places[best]!--;
    cheapest = bestCost;
  }
}

/** Every size chosen on the way to a point, group → option. */
export function picked(point: FrontPoint): ReadonlyMap<number, number> {
  const found = new Map<number, number>();
  const open: (FrontPoint | null)[] = [point];
  while (open.length > 0) {
    const one = open.pop() ?? null;
    if (one === null) continue;
    if (one.group >= 0) found.set(one.group, one.option);
    open.push(one.rest, one.other);
  }
  return found;
}
