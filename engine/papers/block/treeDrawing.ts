import {
  type AreaMm,
  area,
  CAP_MM,
  LINE_MM,
  type Mark,
  point,
  TEXT_STYLE,
  textMark,
  wrapText,
} from "../../drawing/index.ts";
import type { BoxWords } from "./boxWords.ts";
import type { FeedBox } from "./feedTree.ts";

const GAP_MM = 9;
const ROW_GAP_MM = 2.2;
const PAD_MM = 1.8;
const TITLE_PITCH_MM = 4.3;
const NOTE_PITCH_MM = 3.1;

/** A box with its place: column from the left, and the height it and what hangs under it take. */
interface Laid {
  readonly box: FeedBox;
  readonly titles: readonly string[];
  readonly notes: readonly string[];
  readonly heightMm: number;
  readonly spanMm: number;
  readonly under: readonly Laid[];
}

/** Depth of the deepest box, the root counting as one. */
export const depthOf = (box: FeedBox): number => 1 + Math.max(0, ...box.under.map(depthOf));

/**
 * Trees of boxes from left to right, page after page: loads all in the last column, everything else as far left as it stands in the tree. A page repeats
 * what the boxes on it hang from.
 */
export function treePages(
  trees: readonly FeedBox[],
  words: (box: FeedBox) => BoxWords,
  room: AreaMm,
): readonly (readonly Mark[])[] {
  const columnCount = Math.max(2, ...trees.map(depthOf));
  const boxMm = (room.widthMm - (columnCount - 1) * GAP_MM) / columnCount;
  const laid = trees.map((tree) => laidBox(tree, words, boxMm));
  const pages = laid.flatMap((tree) => pagesOf(tree, room.heightMm));
  const groups = packed(pages, room.heightMm);
  return groups.map((group) => {
    let topMm = room.yMm;
    return group.flatMap((tree) => {
      const marks = treeMarks(tree, 0, topMm, { room, boxMm, columnCount });
      topMm += tree.spanMm + ROW_GAP_MM;
      return marks;
    });
  });
}

function laidBox(box: FeedBox, words: (box: FeedBox) => BoxWords, boxMm: number): Laid {
  const { title, note } = words(box);
  const widthMm = boxMm - 2 * PAD_MM;
  const titles = wrapText(title, widthMm, CAP_MM.text, 700);
  const notes = note === "" ? [] : wrapText(note, widthMm, CAP_MM.fine, 400);
  const heightMm =
    2 * PAD_MM +
    CAP_MM.text +
    (titles.length - 1) * TITLE_PITCH_MM +
    notes.length * NOTE_PITCH_MM +
    0.6;
  const under = box.under.map((each) => laidBox(each, words, boxMm));
  return { box, titles, notes, heightMm, under, spanMm: spanOf(heightMm, under) };
}

const spanOf = (heightMm: number, under: readonly Laid[]): number =>
  Math.max(heightMm, under.reduce((sum, { spanMm }) => sum + spanMm + ROW_GAP_MM, 0) - ROW_GAP_MM);

/** A tree cut into trees no taller than a page, each with the boxes it hangs from. */
function pagesOf(tree: Laid, heightMm: number): readonly Laid[] {
  if (tree.spanMm <= heightMm || tree.under.length === 0) return [tree];
  const pieces = tree.under.flatMap((each) => pagesOf(each, heightMm));
  return packed(pieces, heightMm).map((under) => ({
    ...tree,
    under,
    spanMm: spanOf(tree.heightMm, under),
  }));
}

/** Each into the first group that still has the height for it. */
function packed(pieces: readonly Laid[], heightMm: number): readonly (readonly Laid[])[] {
  const groups: { readonly pieces: Laid[]; usedMm: number }[] = [];
  for (const piece of pieces) {
    const needMm = piece.spanMm + ROW_GAP_MM;
    let group = groups.find(({ usedMm }) => usedMm + piece.spanMm <= heightMm);
    if (!group) {
      group = { pieces: [], usedMm: 0 };
      groups.push(group);
    }
    group.pieces.push(piece);
    group.usedMm += needMm;
  }
  return groups.map((group) => group.pieces);
}

interface Frame {
  readonly room: AreaMm;
  readonly boxMm: number;
  readonly columnCount: number;
}

const leftOf = ({ room, boxMm }: Frame, column: number): number =>
  room.xMm + column * (boxMm + GAP_MM);

function treeMarks(laid: Laid, column: number, topMm: number, frame: Frame): Mark[] {
  const middleMm = topMm + laid.spanMm / 2;
  const rightMm = leftOf(frame, column) + frame.boxMm;
  const trunkMm = rightMm + GAP_MM / 2;
  const marks = boxMarks(laid, leftOf(frame, column), middleMm, frame.boxMm);
  const usedMm = laid.under.reduce((sum, { spanMm }) => sum + spanMm + ROW_GAP_MM, -ROW_GAP_MM);
  let childTopMm = topMm + Math.max(0, (laid.spanMm - usedMm) / 2);
  const middles: { yMm: number; live: boolean }[] = [];
  for (const child of laid.under) {
    const isLeaf = child.box.kind === "load" || child.box.kind === "coil";
    const childColumn = isLeaf ? frame.columnCount - 1 : column + 1;
    const yMm = childTopMm + child.spanMm / 2;
    const stroke = feedStroke(child.box.alwaysLive);
    marks.push(
      {
        kind: "line",
        from: point(trunkMm, yMm),
        to: point(leftOf(frame, childColumn), yMm),
        stroke,
      },
      ...treeMarks(child, childColumn, childTopMm, frame),
    );
    middles.push({ yMm, live: child.box.alwaysLive });
    childTopMm += child.spanMm + ROW_GAP_MM;
  }
  if (middles.length > 0) marks.push(...trunkMarks(middles, rightMm, trunkMm, middleMm));
  return marks;
}

const feedStroke = (alwaysLive: boolean) =>
  ({ widthMm: alwaysLive ? 1 : LINE_MM.symbol, colour: "ink", cap: "round" }) as const;

function trunkMarks(
  middles: readonly { readonly yMm: number; readonly live: boolean }[],
  rightMm: number,
  trunkMm: number,
  middleMm: number,
): Mark[] {
  const stroke = feedStroke(middles.some(({ live }) => live));
  const ys = [middleMm, ...middles.map(({ yMm }) => yMm)];
  return [
    { kind: "line", from: point(rightMm, middleMm), to: point(trunkMm, middleMm), stroke },
    {
      kind: "line",
      from: point(trunkMm, Math.min(...ys)),
      to: point(trunkMm, Math.max(...ys)),
      stroke,
    },
  ];
}

function boxMarks(laid: Laid, leftMm: number, middleMm: number, boxMm: number): Mark[] {
  const topMm = middleMm - laid.heightMm / 2;
  const isRound = laid.box.kind === "load" || laid.box.kind === "coil";
  const firstMm = topMm + PAD_MM + CAP_MM.text;
  const noteMm = firstMm + (laid.titles.length - 1) * TITLE_PITCH_MM + NOTE_PITCH_MM + 0.4;
  const name = laid.titles.join(" ");
  return [
    {
      kind: "group",
      id: laid.box.parts[0]!.id,
      name,
      marks: [
        {
          kind: "rect",
          area: area(leftMm, topMm, boxMm, laid.heightMm),
          stroke: {
            widthMm: laid.box.kind === "fuse" ? LINE_MM.frame : LINE_MM.symbol,
            colour: "ink",
          },
          fill: laid.box.kind === "source" ? "pale" : "ground",
          ...(isRound ? { cornerMm: 2 } : {}),
        },
        ...laid.titles.map((line, i) =>
          textMark(line, leftMm + PAD_MM, firstMm + i * TITLE_PITCH_MM, TEXT_STYLE.strong),
        ),
        ...laid.notes.map((line, i) =>
          textMark(line, leftMm + PAD_MM, noteMm + i * NOTE_PITCH_MM, {
            ...TEXT_STYLE.fine,
            colour: "ink",
          }),
        ),
      ],
    },
  ];
}
