import type { Job } from "../../job/index.ts";
import { figure } from "../../tables/index.ts";
import { boardCost, type PairWay, type Priced } from "./boardCost.ts";
import type { BoardAsked } from "./boardLayout.ts";
import { equalAnglePose, headingRad, type LimbFacts, type Pose, posed } from "./boardPose.ts";
import type { LimbShape } from "./limbShape.ts";
import type { LoomTree } from "./loomTree.ts";
import { boardStepCount, searchPose } from "./searchPose.ts";

/** Chords of a drawn fold turn by no more than this. */
const CHORD_DEG = 3;
/** A hairpin of a thin lead is no tighter than this. */
const FOLD_LEAST_MM = 20;

/** Searches with other seeds while something is not kept. */
const TRY_COUNT = 5;

export interface LaidTree {
  readonly tree: LoomTree;
  readonly shapes: readonly LimbShape[];
  readonly priced: Priced;
  readonly stepCount: number;
}

/** One tree laid on the board: a start that cannot cross, then a search for a smaller and clearer one. */
export function layTree(
  job: Job,
  tree: LoomTree,
  labelMmOf: (vertex: string) => number,
  { boardWidthMm, seed }: BoardAsked,
): LaidTree {
  const facts = factsOf(job, tree, labelMmOf);
  const pairs = pairWays(tree);
  const equal = equalAnglePose(tree, facts);
  const snapped = facts.map(({ fixedRad }, i) => fixedRad ?? snap(equal.headings[i]!));
  const sideways = facts.map(
    ({ fixedRad, sideRad }, i) => fixedRad ?? snap(sideRad ?? equal.headings[i]!),
  );
  const starts: readonly Pose[] = [
    { ...equal, headings: sideways },
    { ...equal, headings: snapped },
  ];
  const perTry = boardStepCount(facts.length);
  let best: LaidTree | null = null;
  let stepCount = 0;
  for (let k = 0; k < TRY_COUNT; k++) {
    // The equal-angle start as it is cannot cross, so the last try has it to fall back on.
    const from = k === TRY_COUNT - 1 ? [...starts, equal] : starts;
    const search = { facts, pairs, starts: from, boardWidthMm, seed: seed + k, stepCount: perTry };
    const { pose, stepCount: used } = searchPose(search);
    stepCount += used;
    const shapes = posed(facts, pose, CHORD_DEG)!;
    const priced = boardCost(facts, pairs, { shapes, pose }, boardWidthMm);
    if (best === null || priced.cost < best.priced.cost) best = { tree, shapes, priced, stepCount };
    if (isClean(best.priced)) break;
  }
  return { ...best!, stepCount };
}

const isClean = ({ crossingCount, tightCount, overWidthMm }: Priced): boolean =>
  crossingCount === 0 && tightCount === 0 && overWidthMm === 0;

const snap = (rad: number): number => headingRad(Math.round(rad / headingRad(1)));

function factsOf(
  job: Job,
  tree: LoomTree,
  labelMmOf: (vertex: string) => number,
): readonly LimbFacts[] {
  const foldRatio = figure("loomRules", "fold-radius", "value").value;
  const started = new Set(tree.limbs.map(({ from }) => from));
  return tree.limbs.map((limb) => {
    const diameterMm = Math.max(...limb.pieces.map((piece) => piece.diameterMm));
    return {
      limb,
      parentIndex: tree.limbs.findIndex(({ to }) => to === limb.from),
      diameterMm,
      radiusMm: Math.max(FOLD_LEAST_MM, foldRatio * diameterMm),
      isEnd: !started.has(limb.to),
      sideRad: between(job.layout.side ?? {}, limb.from, limb.meets ?? limb.to),
      fixedRad: between(job.layout.board ?? {}, limb.from, limb.to),
      labelMm: labelMmOf(limb.to),
    };
  });
}

function between(
  places: Readonly<Record<string, { readonly xMm: number; readonly yMm: number }>>,
  from: string,
  to: string,
): number | null {
  const a = places[from];
  const b = places[to];
  if (a === undefined || b === undefined || (a.xMm === b.xMm && a.yMm === b.yMm)) return null;
  return Math.atan2(b.yMm - a.yMm, b.xMm - a.xMm);
}

/** For every two limbs of a tree: their facing ends and the loom between these. */
export function pairWays(tree: LoomTree): readonly PairWay[] {
  const vertices = [...new Set(tree.limbs.flatMap(({ from, to }) => [from, to]))];
  const distances = new Map(vertices.map((vertex) => [vertex, distancesFrom(tree, vertex)]));
  return tree.limbs.flatMap((second, j) =>
    tree.limbs.slice(0, j).map((first, i): PairWay => {
      const ways = [true, false].flatMap((iAtStart) =>
        [true, false].map((jAtStart) => ({
          i,
          j,
          iAtStart,
          jAtStart,
          betweenMm: distances
            .get(iAtStart ? first.from : first.to)!
            .get(jAtStart ? second.from : second.to)!,
        })),
      );
      return ways.reduce((least, way) => (way.betweenMm < least.betweenMm ? way : least));
    }),
  );
}

function distancesFrom(tree: LoomTree, start: string): ReadonlyMap<string, number> {
  const found = new Map([[start, 0]]);
  for (const [vertex, atMm] of found) {
    for (const { from, to, lengthMm } of tree.limbs) {
      const next = from === vertex ? to : to === vertex ? from : null;
      if (next !== null && !found.has(next)) found.set(next, atMm + lengthMm);
    }
  }
  return found;
}
