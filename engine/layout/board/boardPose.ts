import type { Point } from "../../geometry/index.ts";
import { BENDS, type LimbShape, limbShape } from "./limbShape.ts";
import type { LoomTree, TreeLimb } from "./loomTree.ts";

/** Directions a limb may leave a fork in: steps of 15 degrees, clockwise from the right. */
export const HEADING_COUNT = 24;
export const headingRad = (stepIndex: number): number => (stepIndex * 2 * Math.PI) / HEADING_COUNT;

/** How each limb of a tree lies: its direction, and a row of `BENDS`. */
export interface Pose {
  /** Radians, by limb. */
  readonly headings: readonly number[];
  /** Rows of `BENDS`, by limb. */
  readonly bends: readonly number[];
}

/** What the search needs to know of each limb. */
export interface LimbFacts {
  readonly limb: TreeLimb;
  /** Limb that leads to it; −1 at the root. */
  readonly parentIndex: number;
  readonly diameterMm: number;
  readonly radiusMm: number;
  readonly isEnd: boolean;
  /** Direction in side view, radians; null where nobody has said. */
  readonly sideRad: number | null;
  /** Direction somebody has fixed on the board, radians. */
  readonly fixedRad: number | null;
  /** Half the room its label takes beyond its end, mm. */
  readonly labelMm: number;
}

/**
 * Every limb as a line on the board; null where one is too short for its bends.
 *
 * @param before  a pose laid with the same chords: limbs that lie as they did there are taken from it
 */
export function posed(
  facts: readonly LimbFacts[],
  pose: Pose,
  chordDeg: number,
  before: { readonly pose: Pose; readonly shapes: readonly LimbShape[] } | null = null,
): readonly LimbShape[] | null {
  const shapes: LimbShape[] = [];
  for (const [i, { limb, parentIndex, radiusMm }] of facts.entries()) {
    const start: Point = parentIndex < 0 ? { x: 0, y: 0 } : shapes[parentIndex]!.points.at(-1)!;
    const was = before?.shapes[i];
    if (
      was !== undefined &&
      before!.pose.headings[i] === pose.headings[i] &&
      before!.pose.bends[i] === pose.bends[i] &&
      was.points[0]!.x === start.x &&
      was.points[0]!.y === start.y
    ) {
      shapes.push(was);
      continue;
    }
    const shape = limbShape({
      start,
      headingRad: pose.headings[i]!,
      lengthMm: limb.lengthMm,
      bends: BENDS[pose.bends[i]!]!,
      radiusMm,
      chordDeg,
    });
    if (shape === null) return null;
    shapes.push(shape);
  }
  return shapes;
}

/**
 * A start that cannot cross: each subtree gets a wedge of the circle in proportion to its ends, and every limb points along
 * the middle of its wedge.
 *
 * @source equal-angle drawing of trees, J. Felsenstein, Inferring Phylogenies (2004), ch. 34; quoted from memory
 */
export function equalAnglePose(tree: LoomTree, facts: readonly LimbFacts[]): Pose {
  const leaves = facts.map(() => 0);
  for (let i = facts.length - 1; i >= 0; i--) {
    if (facts[i]!.isEnd) leaves[i] = 1;
    const parent = facts[i]!.parentIndex;
    if (parent >= 0) leaves[parent] = leaves[parent]! + leaves[i]!;
  }
  const rootLeaves = facts.reduce(
    (sum, fact, i) => (fact.parentIndex < 0 ? sum + leaves[i]! : sum),
    0,
  );
  const headings = facts.map(() => 0);
  const ends = new Map<number, number>();
  const isRootEnd = tree.limbs.filter(({ from }) => from === tree.root).length === 1;
  const wholeRad = isRootEnd ? Math.PI : 2 * Math.PI;
  ends.set(-1, -wholeRad / 2);
  facts.forEach((fact, i) => {
    const fromRad = ends.get(fact.parentIndex)!;
    const widthRad = (wholeRad * leaves[i]!) / Math.max(1, rootLeaves);
    ends.set(fact.parentIndex, fromRad + widthRad);
    ends.set(i, fromRad);
    headings[i] = fact.fixedRad ?? fromRad + widthRad / 2;
  });
  return { headings, bends: facts.map(() => 0) };
}
