import {
  agreedBest,
  type CostShares,
  type Crossed,
  copiedBest,
  copiesAgree,
  evenShares,
  movedShares,
  type SizeRange,
} from "./copiedBound.ts";
import { greedyBest } from "./greedyBest.ts";

export interface CrossedBest {
  readonly cost: number;
  readonly lowerBound: number;
  readonly exact: boolean;
  /** Group → size. */
  readonly picks: ReadonlyMap<number, number>;
  readonly stepCount: number;
}

/** Relative gap that counts as none: the rounding of sums of some hundred doubles. */
const GAP_RATIO = 1e-10;
const ROOT_ROUND_COUNT = 80;
/** So few choices of the crossing groups are gone through one by one, once some rounds have not proven the best. */
const FEW_CHOICES = 96;
const FEW_CHOICES_ROUND_COUNT = 6;
const NODE_ROUND_COUNT = 16;
/** Rounds without a better bound before the step is halved. */
const PATIENCE_COUNT = 4;

/**
 * Cheapest sizes where groups cross: branch and bound over Lagrangian copies.
 *
 * Each crossing group is copied once for every budget it is in, and its cost shared among the copies; with the copies
 * free to differ the problem nests, and `laminarBest` bounds it from below. The shares are moved (subgradient, Polyak's
 * step) until the copies agree, which proves the best, or until it pays to split the sizes of a group in two. Where few
 * choices of the crossing groups are left each is solved by itself: the rest nests then.
 *
 * @param maxStepCount  nested problems solved before the search is cut short; the answer is then the best found, with
 *                      its bound.
 */
export function crossedBest(crossed: Crossed, maxStepCount: number): CrossedBest {
  const search: Search = {
    crossed,
    maxStepCount,
    stepCount: 0,
    best: firstBest(crossed),
    agreed: new Set(),
  };
  const ranges = crossed.crossing.map((g) => ({
    low: 0,
    high: crossed.groups[g]!.options.length - 1,
  }));
  const start = { ranges, shares: evenShares(crossed), bound: Number.NEGATIVE_INFINITY };
  const areFew = choiceCount(start) <= FEW_CHOICES;
  const open = [bounded(search, start, areFew ? FEW_CHOICES_ROUND_COUNT : ROOT_ROUND_COUNT)];
  while (open.length > 0) {
    open.sort((a, b) => b.bound - a.bound);
    const node = open.pop()!;
    if (isBeaten(search, node.bound) || search.stepCount >= maxStepCount) {
      return finish(search, node.bound);
    }
    if (choiceCount(node) <= FEW_CHOICES && triedAll(search, node)) continue;
    for (const half of halves(node)) {
      const child = bounded(search, half, NODE_ROUND_COUNT);
      if (!isBeaten(search, child.bound)) open.push(child);
    }
  }
  return finish(search, Number.POSITIVE_INFINITY);
}

interface Node {
  readonly ranges: readonly SizeRange[];
  readonly shares: CostShares;
  /** No choice within the ranges costs less; +∞ where there is none. */
  readonly bound: number;
  /** What the copies chose at the best bound. */
  readonly chosen?: readonly (readonly number[])[];
}

interface Search {
  readonly crossed: Crossed;
  readonly maxStepCount: number;
  stepCount: number;
  best: Whole;
  /** Choices of the crossing groups the rest was solved for. */
  readonly agreed: Set<string>;
}

interface Whole {
  readonly cost: number;
  readonly picks: ReadonlyMap<number, number>;
}

function firstBest({ groups, nest, crossing, budgetsV }: Crossed): Whole {
  const picks = greedyBest(groups, [...nest.order, ...crossing], budgetsV);
  const cost = [...picks].reduce((sum, [g, size]) => sum + groups[g]!.options[size]!.cost, 0);
  return { cost, picks };
}

const isBeaten = ({ best }: Search, bound: number): boolean =>
  bound >= best.cost - GAP_RATIO * Math.abs(best.cost);

function finish(search: Search, bound: number): CrossedBest {
  const { best, stepCount } = search;
  const exact = isBeaten(search, bound);
  return { ...best, exact, lowerBound: exact ? best.cost : bound, stepCount };
}

/** Raises a node's bound by moving the shares, and keeps every whole choice met on the way. */
function bounded(search: Search, node: Node, roundCount: number): Node {
  let { shares } = node;
  let top: Node = node;
  let easing = 1;
  let idleCount = 0;
  for (let round = 0; round < roundCount; round++) {
    search.stepCount++;
    const most = search.best.cost * (1 + GAP_RATIO);
    const copied = copiedBest(search.crossed, node.ranges, shares, most);
    if (copied === null) return { ...node, bound: Number.POSITIVE_INFINITY };
    const isBetter = copied.bound > top.bound || top.chosen === undefined;
    if (isBetter) {
      const bound = Math.max(copied.bound, node.bound);
      top = { ranges: node.ranges, shares, bound, chosen: copied.chosen };
      idleCount = 0;
    } else if (++idleCount >= PATIENCE_COUNT) {
      easing /= 2;
      idleCount = 0;
    }
    tryAgreed(search, copied.chosen, most);
    if (copiesAgree(copied.chosen) || isBeaten(search, top.bound)) break;
    if (search.stepCount >= search.maxStepCount) break;
    const gap = Math.max(search.best.cost - copied.bound, GAP_RATIO * search.best.cost);
    shares = movedShares(shares, copied.chosen, easing * gap);
  }
  return top;
}

/** Solves the rest for what the copies agree on, once for every such choice. */
function tryAgreed(search: Search, chosen: readonly (readonly number[])[], most: number): void {
  const key = chosen.map((sizes) => Math.max(...sizes)).join(" ");
  if (search.agreed.has(key)) return;
  search.agreed.add(key);
  const whole = agreedBest(search.crossed, chosen, most);
  if (whole !== null && whole.cost < search.best.cost) search.best = whole;
}

const choiceCount = ({ ranges }: Pick<Node, "ranges">): number =>
  ranges.reduce((count, { low, high }) => count * (high - low + 1), 1);

/** Solves every choice of a node's crossing groups by itself; false where the steps do not reach. */
function triedAll(search: Search, node: Node): boolean {
  if (search.stepCount + choiceCount(node) > search.maxStepCount) return false;
  let choices: readonly (readonly number[])[] = [[]];
  for (const { low, high } of node.ranges) {
    const sizes = Array.from({ length: high - low + 1 }, (_, i) => low + i);
    choices = choices.flatMap((choice) => sizes.map((size) => [...choice, size]));
  }
  for (const choice of choices) {
    search.stepCount++;
    const most = search.best.cost * (1 + GAP_RATIO);
    tryAgreed(
      search,
      choice.map((size) => [size]),
      most,
    );
  }
  return true;
}

/** Splits the sizes of the group whose copies differ most. */
function halves(node: Node): readonly Node[] {
  const chosen = node.chosen!;
  const spreads = chosen.map((sizes) => Math.max(...sizes) - Math.min(...sizes));
  let widest = spreads.indexOf(Math.max(...spreads));
  if (spreads[widest] === 0) {
    const widths = node.ranges.map(({ low, high }) => high - low);
    widest = widths.indexOf(Math.max(...widths));
    if (widths[widest] === 0) return [];
  }
  const { low, high } = node.ranges[widest]!;
  const sizes = chosen[widest]!;
  const mean = sizes.reduce((sum, size) => sum + size, 0) / sizes.length;
  const cut = Math.min(high - 1, Math.max(low, Math.floor(mean)));
  const withRange = (range: SizeRange): Node => {
    const { chosen: _, ...rest } = node;
    return { ...rest, ranges: node.ranges.map((one, c) => (c === widest ? range : one)) };
  };
  return [withRange({ low, high: cut }), withRange({ low: cut + 1, high })];
}
