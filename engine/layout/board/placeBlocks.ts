import {
  type Point,
  pointSegmentDistance,
  type Rectangle,
  rectanglesOverlap,
  type Segment,
  segmentCrossing,
  segmentDistance,
} from "../../geometry/index.ts";

/** Something written beside the loom. */
export interface BlockToPlace {
  readonly id: string;
  readonly anchor: Point;
  /** Where it would rather stand, degrees clockwise from the right. */
  readonly towardsDeg: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Least distance from the anchor. */
  readonly offMm: number;
  /** False where nothing ties it to its anchor; absent: a leader does, from some distance on. */
  readonly hasLeader?: boolean | undefined;
}

export interface PlacedBlock extends Rectangle {
  readonly id: string;
  /** From the anchor to the block; null where it stands right beside it. */
  readonly leader: Segment | null;
  /** False where every place tried was taken: then it stands in the last. */
  readonly isFree: boolean;
}

/** What blocks must keep off. */
export interface Obstacles {
  readonly lines: readonly {
    readonly line: Segment;
    readonly halfMm: number;
    /** A thin line that a leader may cross. */
    readonly isCrossable?: boolean | undefined;
  }[];
  readonly rectangles: readonly Rectangle[];
}

/** How far to the left and right blocks may reach while there is room between. */
export interface Sides {
  readonly leftMm: number;
  readonly rightMm: number;
  /** No further from its anchor than this; absent: any distance. */
  readonly reachMm?: number | undefined;
}

const ANYWHERE: Sides = {
  leftMm: Number.NEGATIVE_INFINITY,
  rightMm: Number.POSITIVE_INFINITY,
};

const RINGS_MM = [0, 3, 7, 12, 18, 26, 36, 48, 62, 80, 100, 125, 155, 190, 240, 300, 380];
const TURNS_DEG = [
  0, 15, -15, 30, -30, 45, -45, 60, -60, 80, -80, 100, -100, 125, -125, 150, -150, 180,
];
const GAP_MM = 1.5;
const LEADER_FROM_MM = 9;

/**
 * A free place for every block, near its anchor and on the side it asks for: rings outwards, on each ring the directions
 * nearest to the asked one first. Larger blocks choose before smaller ones.
 */
export function placeBlocks(
  blocks: readonly BlockToPlace[],
  obstacles: Obstacles,
  sides: Sides = ANYWHERE,
): readonly PlacedBlock[] {
  const order = [...blocks].sort(
    (p, q) => q.widthMm * q.heightMm - p.widthMm * p.heightMm || (p.id < q.id ? -1 : 1),
  );
  const placed = new Map<string, PlacedBlock>();
  const leaders: Segment[] = [];
  for (const block of order) {
    const one = placeOne(
      block,
      obstacles,
      [...placed.values()].filter(({ isFree }) => isFree),
      leaders,
      sides,
    );
    placed.set(block.id, one);
    if (one.isFree && one.leader !== null) leaders.push(one.leader);
  }
  return blocks.map(({ id }) => placed.get(id)!);
}

function placeOne(
  block: BlockToPlace,
  obstacles: Obstacles,
  others: readonly Rectangle[],
  leaders: readonly Segment[],
  { leftMm, rightMm, reachMm = Number.POSITIVE_INFINITY }: Sides,
): PlacedBlock {
  let last: PlacedBlock | null = null;
  let outside: PlacedBlock | null = null;
  for (const ringMm of RINGS_MM.filter((one) => one <= reachMm)) {
    for (const turn of TURNS_DEG) {
      const candidate = at(block, ringMm, block.towardsDeg + turn);
      last = candidate;
      const isIn = candidate.x >= leftMm && candidate.x + candidate.width <= rightMm;
      if (!isIn && outside !== null) continue;
      if (!isFree(candidate, obstacles, others, leaders)) continue;
      if (isIn) return candidate;
      outside = candidate;
    }
  }
  return outside ?? { ...last!, isFree: false };
}

/** The block beyond a point so far from the anchor, touching it with the side or corner that faces the anchor. */
function at(block: BlockToPlace, ringMm: number, towardsDeg: number): PlacedBlock {
  const { anchor, widthMm, heightMm, offMm, id } = block;
  const c = Math.cos((towardsDeg * Math.PI) / 180);
  const s = Math.sin((towardsDeg * Math.PI) / 180);
  const near = { x: anchor.x + c * (ringMm + offMm), y: anchor.y + s * (ringMm + offMm) };
  // A side faces the anchor where it lies straight that way, a corner between.
  const share = (component: number): number => Math.max(-1, Math.min(1, component * 1.6));
  const x = near.x - widthMm / 2 + (share(c) * widthMm) / 2;
  const y = near.y - heightMm / 2 + (share(s) * heightMm) / 2;
  const isTied = block.hasLeader !== false && ringMm + offMm > LEADER_FROM_MM;
  const leader = isTied ? { a: anchor, b: near } : null;
  return { id, x, y, width: widthMm, height: heightMm, leader, isFree: true };
}

function isFree(
  block: PlacedBlock,
  obstacles: Obstacles,
  others: readonly Rectangle[],
  leaders: readonly Segment[],
): boolean {
  if (obstacles.rectangles.some((one) => rectanglesOverlap(block, one, GAP_MM))) return false;
  if (others.some((one) => rectanglesOverlap(block, one, GAP_MM))) return false;
  if (obstacles.lines.some(({ line, halfMm }) => rectangleGapMm(block, line) < halfMm + GAP_MM)) {
    return false;
  }
  if (leaders.some((line) => rectangleGapMm(block, line) < GAP_MM)) return false;
  const { leader } = block;
  if (leader === null) return true;
  if (others.some((one) => rectangleGapMm(one, leader) < GAP_MM / 2)) return false;
  if (leaders.some((line) => segmentCrossing(line, leader) !== null)) return false;
  return !obstacles.lines.some(({ line, halfMm, isCrossable }) => {
    if (isCrossable === true) return false;
    if (pointSegmentDistance(leader.a, line) <= halfMm + 1e-6) return false;
    return segmentDistance(line, leader) < halfMm;
  });
}

/** Nearest distance of a rectangle and a segment; 0 where they share a point. */
export function rectangleGapMm({ x, y, width, height }: Rectangle, line: Segment): number {
  const isIn = (p: Point): boolean => p.x >= x && p.x <= x + width && p.y >= y && p.y <= y + height;
  if (isIn(line.a) || isIn(line.b)) return 0;
  const corners = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  return Math.min(
    ...corners.map((corner, i) => segmentDistance({ a: corner, b: corners[(i + 1) % 4]! }, line)),
  );
}
