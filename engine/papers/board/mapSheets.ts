import {
  type Block,
  bulletBlocks,
  flowBlocks,
  headingBlock,
  keyValueBlocks,
  type Sheet,
  sheetRoom,
} from "../../drawing/index.ts";
import { printNumber } from "../../units/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { isExact, type Tiling } from "../tiles/tiling.ts";
import type { BoardDrawing } from "./boardDrawing.ts";
import { LEGEND, legendRow } from "./boardLegend.ts";
import type { BoardPrint } from "./boardPrint.ts";
import { tileMap } from "./tileMap.ts";

/** How much of the width the picture takes: the first that leaves the words on one sheet. */
const PICTURE_SHARES = [0.58, 0.48, 0.4] as const;
const GAP_MM = 8;

/** First sheet of a board, and more where the words need it: which tile goes where, how to print and glue, what the signs mean, what is not on it. */
export function mapSheets(
  input: PaperInput,
  title: string,
  drawing: BoardDrawing,
  tiling: Tiling,
  print: BoardPrint,
): readonly Sheet[] {
  const paper = { size: input.paper, orientation: "landscape" } as const;
  const head = {
    title,
    lead: `${tiling.tiles.length} tiles of true size follow. Print at 100 %, no fitting; measure the 100 mm bar both ways before building.`,
  };
  const { content } = sheetRoom(paper, input.info, head);
  const tried = PICTURE_SHARES.map((share) => {
    const leftMm = content.widthMm * share;
    const rightMm = content.widthMm - leftMm - GAP_MM;
    const words = flowBlocks(wordBlocks(drawing, tiling, print, rightMm), {
      ...content,
      xMm: content.xMm + leftMm + GAP_MM,
      widthMm: rightMm,
    });
    return { leftMm, words };
  });
  const { leftMm, words } = tried.find((one) => one.words.length === 1) ?? tried[0]!;
  return words.map((column, i) => ({
    paper,
    documentName: "loom board",
    head,
    bookmark: [title, i === 0 ? "tile map" : `tile map, continued ${i + 1}`],
    marks: [
      ...(i === 0 ? tileMap(drawing, tiling, { ...content, widthMm: leftMm }) : []),
      ...column.marks,
    ],
  }));
}

function wordBlocks(
  drawing: BoardDrawing,
  tiling: Tiling,
  print: BoardPrint,
  widthMm: number,
): readonly Block[] {
  const { layout } = drawing;
  const lengthMm = layout.limbs.reduce((sum, limb) => sum + limb.lengthMm, 0);
  return [
    ...headingBlock("On paper", widthMm, 2),
    ...keyValueBlocks(
      [
        [
          "Loom",
          `${printNumber(lengthMm, 0)} mm in ${counted(layout.limbs.length, "limb", "limbs")}, ${printNumber(layout.widthMm, 0)} × ${printNumber(layout.heightMm, 0)} mm laid`,
        ],
        [
          "Sheets",
          `${counted(tiling.rowCount, "row", "rows")}, ${counted(tiling.columnCount, "column", "columns")}, ${tiling.rowCount * tiling.columnCount - tiling.tiles.length} left out as empty; ${printNumber(print.overlapMm, 0)} mm overlap, margin ${printNumber(print.marginMm, 0)} mm`,
        ],
        [
          "Size",
          isExact(print)
            ? "exact: not corrected for a printer"
            : `corrected for a printer that makes ${printNumber(print.readAcrossMm, 1)} mm across and ${printNumber(print.readDownMm, 1)} mm down of 100; the bar must now be 100`,
        ],
      ],
      widthMm,
      16,
    ),
    ...faultBlocks(drawing, widthMm),
    ...headingBlock("Signs", widthMm, 2),
    ...LEGEND.map((row) => legendRow(row, widthMm)),
    ...headingBlock("How", widthMm, 2),
    ...bulletBlocks(
      [
        "Lay cross on cross, the named sheet over the edge that names it, and glue.",
        "If the bar is not 100 mm, print again with both readings given.",
        "Figures at pegs are mm along the loom from the datum, peg 1; between arrows, from peg to peg.",
      ],
      widthMm,
    ),
  ];
}

const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** What the board does not keep or does not show, in words. */
function faultBlocks({ layout, crowdedCount }: BoardDrawing, widthMm: number): readonly Block[] {
  const { faults, brokenLoops, unmeasured } = layout;
  const foldCount = layout.limbs.reduce((sum, { folds }) => sum + folds.length, 0);
  const lines = [
    ...(foldCount > 0
      ? [
          `${counted(foldCount, "fold", "folds")} the machine does not have, broken line on both sides: to be straight on the machine.`,
        ]
      : []),
    ...(brokenLoops.length > 0
      ? [`Loop opened at ${brokenLoops.join(", ")}: its far end is marked with the place it meets.`]
      : []),
    ...(unmeasured.length > 0
      ? [`Not measured, therefore not on the board: ${unmeasured.join(", ")}.`]
      : []),
    ...(faults.crossingCount > 0
      ? [`${faults.crossingCount} places where limbs cross as they are laid.`]
      : []),
    ...(faults.tightCount > 0
      ? [`${faults.tightCount} places with less than 25 mm between limbs.`]
      : []),
    ...(faults.overWidthMm > 0
      ? [`${printNumber(faults.overWidthMm, 0)} mm wider than the board asked for.`]
      : []),
    ...(crowdedCount > 0
      ? [`${crowdedCount} notes found no free place and stand over something.`]
      : []),
  ];
  return lines.length === 0
    ? []
    : [...headingBlock("To know", widthMm, 2), ...bulletBlocks(lines, widthMm)];
}
