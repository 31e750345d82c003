import { seededRandom } from "../../geometry/index.ts";
import { boardCost, type PairWay, type Priced, type PricedPose } from "./boardCost.ts";
import { HEADING_COUNT, headingRad, type LimbFacts, type Pose, posed } from "./boardPose.ts";
import { BENDS } from "./limbShape.ts";

/** Coarse chords while searching: only lengths must be exact, and they are. */
const SEARCH_CHORD_DEG = 45;
const HOTTEST = 60;
const COLDEST = 0.4;

export interface SearchedPose {
  readonly pose: Pose;
  readonly priced: Priced;
  readonly stepCount: number;
}

/** Steps a board of so many limbs is given. */
export const boardStepCount = (limbCount: number): number =>
  limbCount <= 1 ? 60 : Math.min(24_000, 400 + 1_200 * limbCount);

/**
 * Improves a pose by turning and bending limbs, worse ones taken less and less often: counted steps and a seed, so the same
 * loom always lies alike. The best pose met is kept, and the start is one of them.
 */
export function searchPose(asked: {
  readonly facts: readonly LimbFacts[];
  readonly pairs: readonly PairWay[];
  readonly starts: readonly Pose[];
  readonly boardWidthMm: number;
  readonly seed: number;
  readonly stepCount: number;
}): SearchedPose {
  const { facts, pairs, starts, boardWidthMm, stepCount } = asked;
  const random = seededRandom(asked.seed);
  const price = (pose: Pose, before: PricedPose | null): PricedPose | null => {
    const shapes = posed(facts, pose, SEARCH_CHORD_DEG, before);
    if (shapes === null) return null;
    return {
      pose,
      shapes,
      priced: boardCost(facts, pairs, { shapes, pose }, boardWidthMm, before),
    };
  };
  let best: PricedPose | null = null;
  const perStart = Math.floor(stepCount / starts.length);
  for (const start of starts) {
    let now = price(start, null)!;
    if (best === null || now.priced.cost < best.priced.cost) best = now;
    for (let k = 0; k < perStart; k++) {
      const heat = HOTTEST * (COLDEST / HOTTEST) ** (k / perStart);
      const pose = moved(facts, now.pose, random);
      const next = pose === null ? null : price(pose, now);
      if (next === null) continue;
      const rise = next.priced.cost - now.priced.cost;
      if (rise > 0 && random() >= Math.exp(-rise / heat)) continue;
      now = next;
      if (now.priced.cost < best.priced.cost - 1e-9) best = now;
    }
  }
  return { ...best!, stepCount: perStart * starts.length };
}

/** One limb turned alone, one turned with all beyond it, two exchanged, one bent otherwise, or the whole turned over. */
function moved(facts: readonly LimbFacts[], pose: Pose, random: () => number): Pose | null {
  const i = Math.floor(random() * facts.length);
  const kind = random();
  const headings = [...pose.headings];
  const step = headingRad(1) * (random() < 0.5 ? -1 : 1) * (1 + Math.floor(random() * 4));
  if (kind < 0.15) {
    const bends = [...pose.bends];
    bends[i] = random() < 0.5 ? 0 : Math.floor(random() * BENDS.length);
    return { headings, bends };
  }
  if (facts[i]!.fixedRad !== null) return null;
  if (kind < 0.45) headings[i] = headings[i]! + step;
  else if (kind < 0.6) headings[i] = headingRad(Math.floor(random() * HEADING_COUNT));
  else if (kind < 0.8) turnBeyond(facts, headings, i, step);
  else if (kind < 0.88) mirrorBeyond(facts, headings, i);
  else {
    const j = Math.floor(random() * facts.length);
    if (facts[j]!.fixedRad !== null || facts[i]!.parentIndex !== facts[j]!.parentIndex) return null;
    const other = headings[j]! - headings[i]!;
    turnBeyond(facts, headings, i, other);
    if (i !== j) turnBeyond(facts, headings, j, -other);
  }
  return { headings, bends: pose.bends };
}

/** Everything beyond a limb turned over about its own direction. */
function mirrorBeyond(facts: readonly LimbFacts[], headings: number[], i: number): void {
  const beyond = new Set([i]);
  for (let j = i + 1; j < facts.length; j++) {
    const { parentIndex, fixedRad } = facts[j]!;
    if (!beyond.has(parentIndex)) continue;
    beyond.add(j);
    if (fixedRad === null) headings[j] = 2 * headings[i]! - headings[j]!;
  }
}

function turnBeyond(
  facts: readonly LimbFacts[],
  headings: number[],
  i: number,
  byRad: number,
): void {
  const beyond = new Set([i]);
  headings[i] = headings[i]! + byRad;
  for (let j = i + 1; j < facts.length; j++) {
    const { parentIndex, fixedRad } = facts[j]!;
    if (!beyond.has(parentIndex)) continue;
    beyond.add(j);
    if (fixedRad === null) headings[j] = headings[j]! + byRad;
  }
}
