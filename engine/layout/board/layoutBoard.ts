import type { Point } from "../../geometry/index.ts";
import type { Job } from "../../job/index.ts";
import type { Routed } from "../../route/index.ts";
import { alongLine } from "./alongLine.ts";
import type { BoardAsked, BoardLayout, BoardLimb, BoardNode } from "./boardLayout.ts";
import { boardClips, boardCoverings, boardJoints, boardPegs } from "./boardMarks.ts";
import { type LaidTree, layTree } from "./layTree.ts";
import { loomTrees } from "./loomTree.ts";

/** Between parts of a loom that hang together nowhere, mm. */
const PART_GAP_MM = 90;

/**
 * One loom flat on a board at true length: no limb crosses another, 25 mm stay free between limbs away from their forks,
 * and a limb longer than the board is folded. What could not be kept is counted in `faults`.
 *
 * @param diameterOf  outside diameter of a bundle as laid, mm.
 * @param labelMmOf   half the room what is written at a vertex takes, mm.
 * @returns null where the loom has no measured run at all.
 */
export function layoutBoard(
  job: Job,
  routed: Routed,
  loom: string,
  asked: BoardAsked & {
    readonly diameterOf: (wires: readonly string[]) => number;
    readonly labelMmOf: (vertex: string) => number;
  },
): BoardLayout | null {
  const { trees, brokenLoops, unmeasured } = loomTrees(job, routed, loom, asked.diameterOf);
  if (trees.length === 0) return null;
  const laid = trees.map((tree) => layTree(job, tree, asked.labelMmOf, asked));
  const origins = stacked(laid);
  const limbs = laid.flatMap((one, k) => limbsOf(one, origins[k]!));
  const nodes = laid.flatMap((one, k) => nodesOf(job, one, origins[k]!, k));
  const xs = limbs.flatMap(({ points }) => points.map(({ x }) => x));
  const ys = limbs.flatMap(({ points }) => points.map(({ y }) => y));
  const faultsOf = (pick: (one: LaidTree) => number): number[] => laid.map(pick);
  return {
    loom,
    widthMm: Math.max(...xs),
    heightMm: Math.max(...ys),
    limbs,
    nodes: nodes.sort((p, q) => p.partIndex - q.partIndex || p.fromDatumMm - q.fromDatumMm),
    joints: boardJoints(job, loom, limbs, nodes),
    clips: boardClips(limbs),
    coverings: boardCoverings(limbs, nodes),
    pegs: boardPegs(limbs, nodes),
    brokenLoops,
    unmeasured,
    faults: {
      crossingCount: faultsOf(({ priced }) => priced.crossingCount).reduce((a, b) => a + b),
      tightCount: faultsOf(({ priced }) => priced.tightCount).reduce((a, b) => a + b),
      overWidthMm: Math.max(...faultsOf(({ priced }) => priced.overWidthMm)),
    },
    seed: asked.seed,
    stepCount: laid.reduce((sum, { stepCount }) => sum + stepCount, 0),
  };
}

/** Where the origin of each part goes, so that the parts stand one under the other with the least x and y at nil. */
function stacked(laid: readonly LaidTree[]): readonly Point[] {
  let yMm = 0;
  return laid.map(({ shapes }) => {
    const points = shapes.flatMap((shape) => shape.points);
    const left = Math.min(...points.map(({ x }) => x));
    const top = Math.min(...points.map(({ y }) => y));
    const bottom = Math.max(...points.map(({ y }) => y));
    const origin = { x: -left, y: yMm - top };
    yMm += bottom - top + PART_GAP_MM;
    return origin;
  });
}

function limbsOf({ tree, shapes }: LaidTree, origin: Point): readonly BoardLimb[] {
  return tree.limbs.map(({ id, from, to, lengthMm, pieces }, i) => ({
    id,
    from,
    to,
    lengthMm,
    pieces,
    folds: shapes[i]!.folds,
    points: shapes[i]!.points.map(({ x, y }) => ({ x: x + origin.x, y: y + origin.y })),
  }));
}

function nodesOf(job: Job, laid: LaidTree, origin: Point, partIndex: number): readonly BoardNode[] {
  const { tree } = laid;
  const stations = new Set(job.stations.map(({ id }) => id));
  const limbs = limbsOf(laid, origin);
  const reached = new Map([[tree.root, { at: limbs[0]!.points[0]!, fromDatumMm: 0 }]]);
  const passed: BoardNode[] = [];
  tree.limbs.forEach((limb, i) => {
    const start = reached.get(limb.from)!.fromDatumMm;
    const { points } = limbs[i]!;
    reached.set(limb.to, { at: points.at(-1)!, fromDatumMm: start + limb.lengthMm });
    for (const { vertex, atMm } of limb.passed) {
      if (vertex.includes("@")) continue;
      const { at, alongDeg } = alongLine(points, atMm);
      const fromDatumMm = start + atMm;
      const outwardDeg = alongDeg - 90;
      const station = stations.has(vertex) ? vertex : null;
      const common = { id: vertex, station, meets: null, partIndex };
      passed.push({ ...common, kind: "passed", at, fromDatumMm, outwardDeg });
    }
  });
  const met = [...reached].map(([vertex, { at, fromDatumMm }]): BoardNode => {
    const away = directionsAway(limbs, vertex);
    return {
      id: vertex,
      station: stations.has(vertex) ? vertex : null,
      kind: away.length === 1 ? "end" : "breakout",
      at,
      fromDatumMm,
      meets: tree.limbs.find(({ to }) => to === vertex)?.meets ?? null,
      outwardDeg: freest(away),
      partIndex,
    };
  });
  return [...met, ...passed];
}

function directionsAway(limbs: readonly BoardLimb[], vertex: string): readonly number[] {
  const angle = (a: Point, b: Point): number => (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
  return limbs.flatMap(({ from, to, points }) => [
    ...(from === vertex ? [angle(points[0]!, points[1]!)] : []),
    ...(to === vertex ? [angle(points.at(-1)!, points.at(-2)!)] : []),
  ]);
}

/** Middle of the widest free angle. */
function freest(away: readonly number[]): number {
  const sorted = [...away].map((one) => ((one % 360) + 360) % 360).sort((a, b) => a - b);
  let widest = { gap: -1, middle: 0 };
  sorted.forEach((one, i) => {
    const next = i + 1 < sorted.length ? sorted[i + 1]! : sorted[0]! + 360;
    if (next - one > widest.gap + 1e-9) widest = { gap: next - one, middle: (one + next) / 2 };
  });
  return widest.middle;
}
