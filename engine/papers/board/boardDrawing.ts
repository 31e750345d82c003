import {
  CAP_MM,
  type Drawn,
  LINE_MM,
  type Mark,
  moveMarks,
  point,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { Rectangle } from "../../geometry/index.ts";
import {
  type BoardLayout,
  layoutBoard,
  type Obstacles,
  type PlacedBlock,
  placeBlocks,
} from "../../layout/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { type BlockHere, blocksOf, nameOf } from "./boardBlocks.ts";
import {
  clipMarks,
  FORK_ARC_MM,
  forkAngles,
  jointBoxes,
  jointHalfMm,
  pegMarks,
} from "./boardSigns.ts";
import type { BundleReader } from "./bundles.ts";
import { type LengthWord, lengthWords } from "./lengthWords.ts";
import { centreLines, coveringBars, foldMarks, loomBody } from "./loomBody.ts";
import { nodeBlock } from "./nodeBlock.ts";
import { turned } from "./turned.ts";
import { wireEndsOf } from "./wireEnds.ts";

/** Ground kept free round everything drawn. */
const BORDER_MM = 8;
/** Width kept for what is written left and right of the loom. */
const NOTES_MM = 110;
/** A board narrower than this is not folded into: the loom then is wider than asked, and says so. */
const LOOM_LEAST_MM = 240;
const SEED = 1;

/** One loom's board, drawn at true size from its own top left corner. */
export interface BoardDrawing extends Drawn {
  readonly loom: string;
  readonly layout: BoardLayout;
  /** What the layout's millimetres were shifted by. */
  readonly shiftMm: { readonly xMm: number; readonly yMm: number };
  /** The job says where its stations are, so that front is left. */
  readonly isOriented: boolean;
  /** Blocks no free place was found for. */
  readonly crowdedCount: number;
}

/** Which way the machine lies on a board, in words. */
export const facingOf = ({ isOriented }: Pick<BoardDrawing, "isOriented">): string =>
  isOriented ? "seen from the left, front is left" : "";

/** @returns null where the loom has nothing with a length. */
export function boardDrawing(
  input: PaperInput,
  loom: string,
  bundleOf: BundleReader,
  boardWidthMm: number,
): BoardDrawing | null {
  const ends = wireEndsOf(input, loom);
  const layout = layoutBoard(input.job, input.design.routed, loom, {
    boardWidthMm: Math.max(LOOM_LEAST_MM, boardWidthMm - NOTES_MM),
    seed: SEED,
    diameterOf: (wires) => bundleOf(wires).asLaidMm,
    labelMmOf: (vertex) => {
      const head = { name: nameOf(input, vertex), note: "000 mm from the datum" };
      const { widthMm, heightMm } = nodeBlock(input, head, ends.at.get(vertex) ?? []);
      return Math.min(60, Math.max(15, (widthMm + heightMm) / 4));
    },
  });
  if (layout === null) return null;
  const angles = forkAngles(layout);
  const lengths = lengthWords(layout);
  const blocks = blocksOf(input, layout, ends);
  const spareMm = Math.max(0, boardWidthMm - 2 * BORDER_MM - layout.widthMm) / 2;
  const placed = placeBlocks(
    blocks.map(({ place }) => place),
    obstaclesOf(layout, angles.words, lengths),
    { leftMm: -spareMm, rightMm: layout.widthMm + spareMm },
  );
  const marks: Mark[] = [
    ...placed.flatMap(leaderMarks),
    ...loomMarks(layout),
    ...angles.marks,
    ...angles.words.map(({ at, text }) =>
      textMark(text, at.xMm, at.yMm + CAP_MM.text / 2, TEXT_STYLE.text, "middle"),
    ),
    ...lengths.flatMap(({ marks: own }) => own),
    ...jointBoxes(layout),
    ...pegMarks(layout),
    ...blockMarks(placed, blocks),
  ];
  const box = extent(layout, placed);
  const shiftMm = { xMm: BORDER_MM - box.x, yMm: BORDER_MM - box.y };
  return {
    loom,
    layout,
    marks: moveMarks(marks, shiftMm.xMm, shiftMm.yMm),
    widthMm: box.width + 2 * BORDER_MM,
    heightMm: box.height + 2 * BORDER_MM,
    shiftMm,
    isOriented: input.job.layout.side !== undefined,
    crowdedCount: placed.filter(({ isFree }) => !isFree).length,
  };
}

const loomMarks = (layout: BoardLayout): readonly Mark[] => [
  ...loomBody(layout),
  ...foldMarks(layout),
  ...centreLines(layout),
  ...coveringBars(layout),
  ...clipMarks(layout),
];

const blockMarks = (
  placed: readonly PlacedBlock[],
  blocks: readonly BlockHere[],
): readonly Mark[] =>
  placed.map(({ x, y }, i) => ({
    kind: "group",
    ...blocks[i]!.about,
    marks: moveMarks(blocks[i]!.drawn.marks, x, y),
  }));

function obstaclesOf(
  layout: BoardLayout,
  angles: readonly { readonly at: { readonly xMm: number; readonly yMm: number } }[],
  lengths: readonly LengthWord[],
): Obstacles {
  const loom = layout.limbs.flatMap((limb) =>
    limb.points.slice(1).map((b, i) => ({
      line: { a: limb.points[i]!, b },
      halfMm: Math.max(...limb.pieces.map(({ diameterMm }) => diameterMm)) / 2 + 0.6,
    })),
  );
  const joints = layout.joints
    .filter(({ limb }) => limb !== null)
    .map(({ joint, at, alongDeg }) => {
      const [a, b] = [-1, 1].map((side) => turned(at, alongDeg, side * jointHalfMm(joint), 0));
      const line = { a: { x: a!.xMm, y: a!.yMm }, b: { x: b!.xMm, y: b!.yMm } };
      return { line, halfMm: 2.7 };
    });
  const arcs = layout.nodes
    .filter(({ kind }) => kind === "breakout")
    .flatMap(({ at }) =>
      Array.from({ length: 12 }, (_, i) => {
        const [a, b] = [i, i + 1].map((k) => turned(at, k * 30, FORK_ARC_MM, 0));
        return {
          line: { a: { x: a!.xMm, y: a!.yMm }, b: { x: b!.xMm, y: b!.yMm } },
          halfMm: 0.8,
          isCrossable: true,
        };
      }),
    );
  const rectangles: Rectangle[] = [
    ...layout.pegs.map(({ at }) => ({ x: at.x - 3, y: at.y - 3, width: 6, height: 6 })),
    ...angles.map(({ at }) => ({ x: at.xMm - 4, y: at.yMm - 2.5, width: 8, height: 5 })),
  ];
  return {
    lines: [...loom, ...joints, ...arcs, ...lengths.map(({ line }) => ({ line, halfMm: 2.4 }))],
    rectangles,
  };
}

const leaderMarks = ({ leader }: PlacedBlock): readonly Mark[] =>
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

function extent(layout: BoardLayout, placed: readonly PlacedBlock[]): Rectangle {
  const xs = placed.flatMap(({ x, width }) => [x, x + width]);
  const ys = placed.flatMap(({ y, height }) => [y, y + height]);
  for (const limb of layout.limbs) {
    const reachMm = Math.max(...limb.pieces.map(({ diameterMm }) => diameterMm)) / 2 + 6;
    for (const { x, y } of limb.points) {
      xs.push(x - reachMm, x + reachMm);
      ys.push(y - reachMm, y + reachMm);
    }
  }
  const x = Math.min(...xs);
  const y = Math.min(...ys);
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
