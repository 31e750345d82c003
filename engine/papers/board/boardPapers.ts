import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import { tilePage } from "../tiles/tilePage.ts";
import { tilingOf } from "../tiles/tiling.ts";
import { nameOf } from "./boardBlocks.ts";
import { type BoardDrawing, boardDrawing, facingOf } from "./boardDrawing.ts";
import type { BoardPrint } from "./boardPrint.ts";
import type { BundleReader } from "./bundles.ts";
import { looseWireSheets, wiresOffBoards } from "./looseWireSheets.ts";
import { mapSheets } from "./mapSheets.ts";
import { rollPage } from "./rollPage.ts";
import { tileMap } from "./tileMap.ts";

/**
 * One paper a loom: tile map, tiles, and the whole board for a roll or a plotter. A loom with nothing measured has none; its wires stand with the loose
 * ones on a paper of their own, so that every wire to be made is on exactly one of these papers.
 */
export function boardPapers(
  input: PaperInput,
  names: { readonly board: string; readonly loose: string },
  bundleOf: BundleReader,
  print: BoardPrint,
): readonly PackPaper[] {
  const looms = input.job.looms.flatMap((loom) => {
    const drawing = boardDrawing(input, loom.id, bundleOf, print.boardWidthMm);
    return drawing === null ? [] : [{ loom, drawing }];
  });
  const boards = looms.map(({ loom, drawing }): PackPaper => {
    const title = `Board: ${loom.name}`;
    const tiling = tilingOf(drawing, print);
    const maps = mapSheets(input, title, drawing, tiling, print);
    const tiles = tiling.tiles.map((tile) => ({
      ...maps[0]!,
      bookmark: [title, `tile ${tile.name}`],
      marks: [],
      ownPage: (pageOrder: number, pageCount: number) =>
        tilePage({
          marks: drawing.marks,
          print,
          tiling,
          tile,
          info: input.info,
          words: { title, facing: facingOf(drawing), pageOrder, pageCount },
          map: (room, here) => tileMap(drawing, tiling, room, here),
        }),
    }));
    return {
      name: `${names.board}-${loom.id}`,
      title,
      sheets: [...maps, ...tiles],
      rows: pegRows(input, drawing),
      drawings: null,
      plots: [
        {
          name: `${names.board}-${loom.id}-whole`,
          page: rollPage(drawing, print, input.info, title),
        },
      ],
    };
  });
  const off = wiresOffBoards(
    input,
    looms.map(({ drawing }) => drawing),
  );
  const sheets = looseWireSheets(input, off);
  const loose = { name: names.loose, title: "Loose wires", rows: null, drawings: null };
  return sheets.length === 0 ? boards : [...boards, { ...loose, sheets }];
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
