import { type Point, polylineDistance, segmentCrossing } from "../../geometry/index.ts";
import type { LimbFacts, Pose } from "./boardPose.ts";
import { labelCost } from "./labelCost.ts";
import { BENDS, type LimbShape } from "./limbShape.ts";
import { type Box, boxGapMm, boxOf, unionOf } from "./lineBox.ts";

/** Free space between the outsides of two limbs, away from a fork they share. */
export const CLEARANCE_MM = 25;
/** Least angle between two limbs of a fork. */
export const FORK_LEAST_DEG = 30;
/** Nearer than this to a fork, measured along both limbs together, limbs may be closer than the clearance. */
export const FORK_ZONE_MM = 130;

/** What is wrong with a laid tree, and what it costs beside others. */
export interface Priced {
  readonly cost: number;
  readonly crossingCount: number;
  readonly tightCount: number;
  readonly overWidthMm: number;
  readonly pairs: readonly PairPrice[];
}

/** For each pair of limbs: which ends face each other, and how much loom lies between them. */
export interface PairWay {
  readonly i: number;
  readonly j: number;
  readonly iAtStart: boolean;
  readonly jAtStart: boolean;
  readonly betweenMm: number;
}

/** Part of a line from so many mm after its start to so many before its end. */
export function trimmed(
  points: readonly Point[],
  startMm: number,
  endMm: number,
): readonly Point[] {
  const cut = (line: readonly Point[], byMm: number): Point[] => {
    let leftMm = byMm;
    for (let i = 1; i < line.length; i++) {
      const a = line[i - 1]!;
      const b = line[i]!;
      const lengthMm = Math.hypot(b.x - a.x, b.y - a.y);
      if (lengthMm > leftMm) {
        const share = leftMm / lengthMm;
        return [{ x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) }, ...line.slice(i)];
      }
      leftMm -= lengthMm;
    }
    return [line.at(-1)!, line.at(-1)!];
  };
  const headless = startMm > 0 ? cut(points, startMm) : points;
  return endMm > 0 ? cut(headless.toReversed(), endMm).toReversed() : headless;
}

/** How far apart two limbs are outside the zone of the fork between them, from outside to outside, mm. */
export function freeBetweenMm(
  first: LimbShape,
  second: LimbShape,
  diametersMm: readonly [number, number],
  pair: PairWay,
): number {
  const cutMm = Math.max(0, (FORK_ZONE_MM - pair.betweenMm) / 2);
  const a = trimmed(first.points, pair.iAtStart ? cutMm : 0, pair.iAtStart ? 0 : cutMm);
  const b = trimmed(second.points, pair.jAtStart ? cutMm : 0, pair.jAtStart ? 0 : cutMm);
  return polylineDistance(a, b) - (diametersMm[0] + diametersMm[1]) / 2;
}

export function crosses(first: LimbShape, second: LimbShape, pair: PairWay): boolean {
  const shared = pair.betweenMm === 0;
  const fork = pair.iAtStart ? first.points[0]! : first.points.at(-1)!;
  for (let i = 1; i < first.points.length; i++) {
    const p = { a: first.points[i - 1]!, b: first.points[i]! };
    for (let j = 1; j < second.points.length; j++) {
      const at = segmentCrossing(p, { a: second.points[j - 1]!, b: second.points[j]! });
      if (at === null) continue;
      if (!shared || Math.hypot(at.x - fork.x, at.y - fork.y) > 1e-6) return true;
    }
  }
  return false;
}

/** The price of one pair of limbs. */
export interface PairPrice {
  readonly cost: number;
  readonly isCrossing: boolean;
  readonly isTight: boolean;
}

/** A pose already priced, so that pairs which lie to each other as before need not be asked again. */
export interface PricedPose {
  readonly pose: Pose;
  readonly shapes: readonly LimbShape[];
  readonly priced: Priced;
}

/** The whole price of a pose: faults dear, then a small and readable board. */
export function boardCost(
  facts: readonly LimbFacts[],
  pairs: readonly PairWay[],
  { shapes, pose }: Pick<PricedPose, "pose" | "shapes">,
  boardWidthMm: number,
  before: PricedPose | null = null,
): Priced {
  const boxes = shapes.map(({ points }) => boxOf(points));
  const same = before === null ? null : stillness(pose, shapes, before);
  const prices = pairs.map((pair, n): PairPrice => {
    if (before !== null && same!(pair.i, pair.j)) return before.priced.pairs[n]!;
    return pairPrice(facts, shapes, boxes, pair);
  });
  const all = unionOf(boxes);
  const overWidthMm = Math.max(0, all.rightMm - all.leftMm - boardWidthMm);
  let cost = prices.reduce((sum, price) => sum + price.cost, 0);
  const [width, height] = [all.rightMm - all.leftMm, all.bottomMm - all.topMm];
  cost += 8 * overWidthMm + 0.25 * height + 0.05 * width + (width * height) / 8000;
  cost += labelCost(facts, shapes, boxes);
  facts.forEach((fact, i) => {
    cost += limbCost(fact, shapes, pose, i);
  });
  return {
    cost,
    pairs: prices,
    crossingCount: prices.filter(({ isCrossing }) => isCrossing).length,
    tightCount: prices.filter(({ isTight }) => isTight).length,
    overWidthMm,
  };
}

/** Whether two limbs lie to each other as they did: neither turned nor bent, both shifted alike. */
function stillness(
  pose: Pose,
  shapes: readonly LimbShape[],
  before: PricedPose,
): (i: number, j: number) => boolean {
  const kept = shapes.map(
    (_, i) =>
      pose.headings[i] === before.pose.headings[i] && pose.bends[i] === before.pose.bends[i],
  );
  const shifts = shapes.map(({ points }, i) => {
    const was = before.shapes[i]!.points[0]!;
    return { x: points[0]!.x - was.x, y: points[0]!.y - was.y };
  });
  return (i, j) =>
    kept[i]! &&
    kept[j]! &&
    Math.abs(shifts[i]!.x - shifts[j]!.x) < 1e-9 &&
    Math.abs(shifts[i]!.y - shifts[j]!.y) < 1e-9;
}

const NO_PRICE: PairPrice = { cost: 0, isCrossing: false, isTight: false };

function pairPrice(
  facts: readonly LimbFacts[],
  shapes: readonly LimbShape[],
  boxes: readonly Box[],
  pair: PairWay,
): PairPrice {
  const { i, j } = pair;
  const diameters = [facts[i]!.diameterMm, facts[j]!.diameterMm] as const;
  const gapMm = CLEARANCE_MM + (diameters[0] + diameters[1]) / 2;
  if (boxGapMm(boxes[i]!, boxes[j]!) > gapMm) return NO_PRICE;
  const [first, second] = [shapes[i]!, shapes[j]!];
  const isCrossing = crosses(first, second, pair);
  const freeMm = freeBetweenMm(first, second, diameters, pair);
  const isTight = freeMm < CLEARANCE_MM - 1e-6;
  const cost =
    (isCrossing ? 600 : 0) +
    (isTight ? 120 + 6 * (CLEARANCE_MM - freeMm) : 0) +
    (pair.betweenMm === 0 ? forkCost(first, second, pair) : 0);
  return { cost, isCrossing, isTight };
}

function limbCost(fact: LimbFacts, shapes: readonly LimbShape[], pose: Pose, i: number): number {
  let cost = BENDS[pose.bends[i]!]!.reduce(
    (sum, { turnDeg }) => sum + 30 + Math.abs(turnDeg) / 4,
    0,
  );
  const heading = pose.headings[i]!;
  if (fact.sideRad !== null) {
    const weight = Math.min(1, fact.limb.lengthMm / 200);
    cost += 34 * weight * (1 - Math.cos(heading - fact.sideRad));
  }
  const { parentIndex } = fact;
  if (parentIndex >= 0) {
    const turn = Math.abs(turnDeg(heading, shapes[parentIndex]!.endRad));
    // Straight on costs nothing, a clean 45 to 90 degrees little, back along itself much.
    if (turn > 100) cost += (turn - 100) * 0.9;
    else if (turn > 5 && turn < 40) cost += 6;
    else if (turn >= 40) cost += 3;
  }
  return cost;
}

function forkCost(first: LimbShape, second: LimbShape, pair: PairWay): number {
  const away = (shape: LimbShape, atStart: boolean): number => {
    const { points } = shape;
    const [a, b] = atStart ? [points[0]!, points[1]!] : [points.at(-1)!, points.at(-2)!];
    return Math.atan2(b.y - a.y, b.x - a.x);
  };
  const apart = Math.abs(turnDeg(away(first, pair.iAtStart), away(second, pair.jAtStart)));
  if (apart < FORK_LEAST_DEG - 1e-6) return 400 + 4 * (FORK_LEAST_DEG - apart);
  return apart < 44 ? 12 : 0;
}

export function turnDeg(toRad: number, fromRad: number): number {
  const turn = ((toRad - fromRad) * 180) / Math.PI;
  return turn - 360 * Math.round(turn / 360);
}
