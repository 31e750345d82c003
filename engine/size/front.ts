import { BUDGET_ROUNDING_V } from "./sizeProblem.ts";

/**
 * One best way to size part of a loom: what it costs and how much drop it leaves for what lies upstream.
 * `picks` is a linked list, so that fronts share their tails.
 */
export interface FrontPoint {
  /** Largest drop the rest of the way may have, V. */
  readonly slackV: number;
  readonly cost: number;
  readonly picks: Picks | null;
}

export interface Picks {
  readonly group: number;
  readonly option: number;
  readonly rest: Picks | null;
  /** A second list, where two branches were joined. */
  readonly other: Picks | null;
}

/** Sorted by rising slack and rising cost: every point is the cheapest for its slack. */
export type Front = readonly FrontPoint[];

/** Two branches that meet: what is upstream must suit both, and both are paid for. */
export function joined(a: Front, b: Front): Front {
  const points: FrontPoint[] = [];
  let i = 0;
  let j = 0;
  while (i < a.length && j < b.length) {
    const [left, right] = [a[i]!, b[j]!];
    const slackV = Math.min(left.slackV, right.slackV);
    points.push({
      slackV,
      cost: left.cost + right.cost,
      picks: joinedPicks(left.picks, right.picks),
    });
    if (left.slackV <= slackV) i++;
    if (right.slackV <= slackV) j++;
  }
  return points;
}

/**
 * What a group of wires leaves of the slack, for every size it may have; what breaks the budget is left out.
 * The front moved by each size is sorted already, so the moved fronts are merged from the most slack downward and a
 * point is kept when it is cheaper than all before it.
 */
export function lessened(front: Front, group: number, sizes: readonly GroupSize[]): Front {
  const places = sizes.map(() => front.length - 1);
  const kept: FrontPoint[] = [];
  let cheapest = Number.POSITIVE_INFINITY;
  for (;;) {
    let best = -1;
    let bestV = -BUDGET_ROUNDING_V;
    let bestCost = Number.POSITIVE_INFINITY;
    for (let k = 0; k < sizes.length; k++) {
      const { cost, dropV } = sizes[k]!;
      let i = places[k]!;
      while (i >= 0 && front[i]!.cost + cost >= cheapest) i--;
      places[k] = i;
      if (i < 0) continue;
      const slackV = front[i]!.slackV - dropV;
      if (slackV < bestV) continue;
      const pointCost = front[i]!.cost + cost;
      if (slackV > bestV || pointCost < bestCost) [best, bestV, bestCost] = [k, slackV, pointCost];
    }
    if (best < 0) return kept.reverse();
    const { option } = sizes[best]!;
    const rest = front[places[best]!]!.picks;
    kept.push({ slackV: bestV, cost: bestCost, picks: { group, option, rest, other: null } });
    cheapest = bestCost;
  }
}

/** One size of a group, with what it costs and drops. */
export interface GroupSize {
  readonly option: number;
  readonly cost: number;
  readonly dropV: number;
}

function joinedPicks(a: Picks | null, b: Picks | null): Picks | null {
  if (a === null) return b;
  if (b === null) return a;
  return { group: -1, option: -1, rest: a, other: b };
}

/** Every pick of a list, group → option. */
export function picked(picks: Picks | null): ReadonlyMap<number, number> {
  const found = new Map<number, number>();
  const open: (Picks | null)[] = [picks];
  while (open.length > 0) {
    const one = open.pop() ?? null;
    if (one === null) continue;
    if (one.group >= 0) found.set(one.group, one.option);
    open.push(one.rest, one.other);
  }
  return found;
}
