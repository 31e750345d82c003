import { colourWords } from "../colourText.ts";
import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import { compareNumbers, numberOf } from "../wireRows.ts";
import { nameOf } from "./boardBlocks.ts";
import { type BoardDrawing, boardDrawing } from "./boardDrawing.ts";
import type { BoardPrint } from "./boardPrint.ts";
import { boardTiling, tilePage } from "./boardTiles.ts";
import type { BundleReader } from "./bundles.ts";
import { mapSheets } from "./mapSheets.ts";
import { rollPage } from "./rollPage.ts";

/** One paper a loom: tile map, tiles, and the whole board for a roll or a plotter. A loom with nothing measured has none. */
export function boardPapers(
  input: PaperInput,
  name: string,
  bundleOf: BundleReader,
  print: BoardPrint,
): readonly PackPaper[] {
  return input.job.looms.flatMap((loom) => {
    const drawing = boardDrawing(input, loom.id, bundleOf, print.boardWidthMm);
    if (drawing === null) return [];
    const title = `Board: ${loom.name}`;
    const tiling = boardTiling(drawing, print);
    const maps = mapSheets(input, title, drawing, tiling, print);
    const tiles = tiling.tiles.map((tile) => ({
      ...maps[0]!,
      bookmark: [title, `tile ${tile.name}`],
      marks: [],
      ownPage: (pageOrder: number, pageCount: number) =>
        tilePage({
          drawing,
          print,
          tiling,
          tile,
          info: input.info,
          words: { title, pageOrder, pageCount },
        }),
    }));
    return [
      {
        name: `${name}-${loom.id}`,
        title,
        sheets: [...maps, ...tiles],
        rows: pegRows(input, drawing),
        drawings: null,
        plots: [
          { name: `${name}-${loom.id}-whole`, page: rollPage(drawing, print, input.info, title) },
        ],
      },
    ];
  });
}

/** Every peg and joint for a spreadsheet: where it is along the loom and on the board. */
function pegRows(input: PaperInput, { layout, shiftMm }: BoardDrawing): PackPaper["rows"] {
  const pegs = layout.pegs.map(({ label, fromDatumMm, node, at }) => [
    "peg",
    label,
    fromDatumMm,
    node === null ? "" : nameOf(input, node),
    at.x + shiftMm.xMm,
    at.y + shiftMm.yMm,
  ]);
  const joints = layout.joints.map(({ joint, fromDatumMm, at }) => [
    "joint",
    joint,
    fromDatumMm,
    "",
    at.x + shiftMm.xMm,
    at.y + shiftMm.yMm,
  ]);
  return [["kind", "label", "fromDatumMm", "place", "xMm", "yMm"], ...pegs, ...joints];
}

/** Wires that lie in no loom, for whoever looks for them on a board. */
export const looseWires = ({ job }: PaperInput): readonly string[] =>
  job.wires
    .filter(({ loom, status }) => loom === undefined && status !== "remove")
    .map((wire) => `${numberOf(wire)} ${colourWords(wire.colour)}`)
    .sort(compareNumbers);
