import {
  type AreaMm,
  area,
  CAP_MM,
  LINE_MM,
  type Mark,
  moveMarks,
  type PointMm,
  point,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import { type Point, rectanglesOverlap, type Segment } from "../../geometry/index.ts";
import { type PlacedBlock, placeBlocks, type SideRun, type SideView } from "../../layout/index.ts";
import { inkOutline } from "./inkOutline.ts";
import { DOT_MM, locationPlaces } from "./locationPlaces.ts";
import { stationBlock } from "./stationBlock.ts";
import type { StationThings } from "./stationThings.ts";

/** A block further from its station than this stands in a column instead, told by its number. */
const REACH_MM = 18;

/** The machine from the left with everything electrical at its station. */
export function locationDrawing(
  view: SideView,
  things: readonly StationThings[],
  room: AreaMm,
): readonly Mark[] {
  const { to, spots: spread } = locationPlaces(view, room);
  const blocks = view.stations.map(({ station }) =>
    blockHere(things.find(({ id }) => id === station)!, spread.get(station)!, room),
  );
  const near = placeBlocks(
    blocks.map(({ id, anchor, towardsDeg, drawn }) => ({
      id,
      anchor,
      towardsDeg,
      offMm: DOT_MM + 1.4,
      widthMm: drawn.widthMm,
      heightMm: drawn.heightMm,
    })),
    {
      lines: view.runs.map(({ fromStation, toStation }) => ({
        line: { a: spread.get(fromStation)!, b: spread.get(toStation)! },
        halfMm: 0.8,
        isCrossable: true,
      })),
      rectangles: [
        ...[...spread.values()].map((at) => square(at, DOT_MM + 0.6)),
        ...outsideOf(room),
      ],
    },
    { leftMm: room.xMm, rightMm: room.xMm + room.widthMm, reachMm: REACH_MM },
  );
  const placed = inColumns(near, blocks, room);
  return [
    ...view.shapes.map((shape) => inkOutline(shape, to)),
    ...view.runs.map((run) =>
      runMark(run, spread.get(run.fromStation)!, spread.get(run.toStation)!),
    ),
    ...placed.flatMap(({ leader }) => leaderMark(leader)),
    ...jointDots(view, spread),
    ...view.stations.flatMap(({ station, orderCount }) => {
      const { x, y } = spread.get(station)!;
      return stationDot(station, orderCount, point(x, y));
    }),
    ...placed.flatMap(({ id, x, y, width, height }, i): Mark[] => [
      { kind: "rect", area: area(x - 0.4, y - 0.2, width + 0.8, height + 0.4), fill: "ground" },
      { kind: "group", id, of: "station", marks: moveMarks(blocks[i]!.drawn.marks, x, y) },
    ]),
  ];
}

/** What is written at a station, which would rather stand on the far side of it from the middle of the sheet. */
function blockHere(things: StationThings, anchor: Point, room: AreaMm) {
  const away = Math.atan2(
    anchor.y - (room.yMm + room.heightMm / 2),
    anchor.x - (room.xMm + room.widthMm / 2),
  );
  const drawn = stationBlock(things);
  return { id: things.id, drawn, anchor, towardsDeg: (away * 180) / Math.PI };
}

const jointDots = (view: SideView, spots: ReadonlyMap<string, Point>): readonly Mark[] =>
  view.joints.flatMap(({ joint, run, shareRatio }) => {
    const on = view.runs.find((one) => one.run === run);
    if (on === undefined) return [];
    const [a, b] = [spots.get(on.fromStation)!, spots.get(on.toStation)!];
    const at = point(a.x + shareRatio * (b.x - a.x), a.y + shareRatio * (b.y - a.y));
    return [jointDot(joint, at)];
  });

const leaderMark = (leader: Segment | null): readonly Mark[] =>
  leader === null
    ? []
    : [
        {
          kind: "line",
          from: point(leader.a.x, leader.a.y),
          to: point(leader.b.x, leader.b.y),
          stroke: { widthMm: LINE_MM.leader, colour: "ink" },
        },
      ];

/** Blocks that found no place, stacked at the side their station is nearer to, without a line to it. */
function inColumns(
  near: readonly PlacedBlock[],
  blocks: readonly { readonly anchor: Point }[],
  room: AreaMm,
): readonly PlacedBlock[] {
  const taken = near.filter(({ isFree }) => isFree);
  const middle = room.xMm + room.widthMm / 2;
  return near.map((block, i) => {
    if (block.isFree) return block;
    const isLeft = blocks[i]!.anchor.x < middle;
    const tries = [isLeft, !isLeft].flatMap((left) =>
      Array.from({ length: Math.floor(room.heightMm - block.height) }, (_, k) => ({
        ...block,
        leader: null,
        x: left ? room.xMm : room.xMm + room.widthMm - block.width,
        y: room.yMm + k,
      })),
    );
    const free = tries.find((one) => !taken.some((other) => rectanglesOverlap(one, other, 1.5)));
    const set = free ?? tries[0]!;
    taken.push(set);
    return set;
  });
}

const square = ({ x, y }: Point, halfMm: number) => ({
  x: x - halfMm,
  y: y - halfMm,
  width: 2 * halfMm,
  height: 2 * halfMm,
});

/** Four rectangles round the room: nothing may be written there. */
function outsideOf({ xMm, yMm, widthMm, heightMm }: AreaMm) {
  const far = 500;
  return [
    { x: xMm - far, y: yMm - far, width: far, height: heightMm + 2 * far },
    { x: xMm + widthMm, y: yMm - far, width: far, height: heightMm + 2 * far },
    { x: xMm - far, y: yMm - far, width: widthMm + 2 * far, height: far },
    { x: xMm - far, y: yMm + heightMm, width: widthMm + 2 * far, height: far },
  ];
}

export function runMark({ run, flex, isMeasured }: SideRun, a: Point, b: Point): Mark {
  const [from, to] = [point(a.x, a.y), point(b.x, b.y)];
  const dashMm = isMeasured ? undefined : [2, 1.2];
  const base: Mark[] = [
    { kind: "line", from, to, stroke: { widthMm: 1.5, colour: "ink", cap: "round", dashMm } },
    { kind: "line", from, to, stroke: { widthMm: 0.8, colour: "ground", cap: "round" } },
  ];
  return {
    kind: "group",
    id: run,
    of: "run",
    name: "run",
    marks: [...base, ...(flex ? flexArcs(from, to) : [])],
  };
}

/** Two bars across the middle of a run that moves. */
function flexArcs(from: PointMm, to: PointMm): readonly Mark[] {
  const lengthMm = Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm);
  const [dx, dy] = [(to.xMm - from.xMm) / lengthMm, (to.yMm - from.yMm) / lengthMm];
  return [0.46, 0.54].map((share) => {
    const x = from.xMm + share * (to.xMm - from.xMm);
    const y = from.yMm + share * (to.yMm - from.yMm);
    return {
      kind: "line",
      from: point(x - 2 * dy, y + 2 * dx),
      to: point(x + 2 * dy, y - 2 * dx),
      stroke: { widthMm: LINE_MM.detail, colour: "ink" },
    };
  });
}

const jointDot = (joint: string, centre: PointMm): Mark => ({
  kind: "group",
  id: joint,
  of: "joint",
  name: "joint",
  marks: [{ kind: "circle", centre, radiusMm: 0.9, fill: "ink" }],
});

/** A ring alone. */
export const stationRing = (station: string, centre: PointMm, radiusMm: number): Mark => ({
  kind: "group",
  id: station,
  of: "station",
  name: "station",
  marks: [
    {
      kind: "circle",
      centre,
      radiusMm,
      fill: "ground",
      stroke: { widthMm: LINE_MM.symbol, colour: "ink" },
    },
  ],
});

const stationDot = (station: string, orderCount: number, centre: PointMm): readonly Mark[] => [
  {
    kind: "group",
    id: station,
    of: "station",
    name: "station",
    marks: [
      stationRing(station, centre, DOT_MM),
      textMark(
        `${orderCount}`,
        centre.xMm,
        centre.yMm + CAP_MM.fine / 2,
        { ...TEXT_STYLE.fine, weight: 700, colour: "ink" },
        "middle",
      ),
    ],
  },
];
