import type { Page, PaperSize, PointMm } from "../../drawing/index.ts";
import type { BoardLayout } from "../../layout/index.ts";
import { boardDrawing, facingOf } from "../board/boardDrawing.ts";
import { BOARD_PRINT, type BoardPrint } from "../board/boardPrint.ts";
import { tileMap } from "../board/tileMap.ts";
import { tilePage } from "../tiles/tilePage.ts";
import { type Tiling, tilingOf } from "../tiles/tiling.ts";
import type { Scene } from "./framedScene.ts";
import { type SceneAsked, sourceOf } from "./sceneSource.ts";
import { type WirePlace, wirePlaces } from "./wirePlaces.ts";

export interface BoardScenes {
  /** The whole board at true size. */
  readonly scene: Scene;
  readonly layout: BoardLayout;
  /** A place of the layout plus this is a place of the scene. */
  readonly shiftMm: PointMm;
  /** Notes that found no free place. */
  readonly crowdedCount: number;
  /** Samples of wires beside their numbers. */
  readonly wires: readonly WirePlace[];
  /** The sheets it is printed on: windows on the scene. */
  readonly tiling: Tiling;
  /** Each sheet as printed, in the order of `tiling.tiles`; empty unless asked for. */
  readonly sheets: readonly Page[];
}

export interface BoardAskedOf extends Partial<BoardPrint> {
  readonly withSheets?: boolean;
}

/** One loom's board. Null where the loom has nothing with a length. */
export function boardScenes(
  asked: SceneAsked,
  loomId: string,
  { withSheets = false, ...wanted }: BoardAskedOf = {},
): BoardScenes | null {
  const { input, bundleOf } = sourceOf(asked);
  const paper: PaperSize = wanted.paper ?? "a4";
  const print: BoardPrint = { ...BOARD_PRINT, ...wanted, paper };
  const drawing = boardDrawing(input, loomId, bundleOf, print.boardWidthMm);
  if (drawing === null) return null;
  const name = input.job.looms.find(({ id }) => id === loomId)?.name ?? loomId;
  const title = `Board: ${name}`;
  const { marks, widthMm, heightMm, layout, shiftMm, crowdedCount } = drawing;
  const tiling = tilingOf(drawing, print);
  const pageCount = tiling.tiles.length;
  return {
    scene: { widthMm, heightMm, title, bookmark: [], marks },
    layout,
    shiftMm,
    crowdedCount,
    wires: wirePlaces(marks),
    tiling,
    sheets: (withSheets ? tiling.tiles : []).map((tile, i) => {
      const facing = facingOf(drawing);
      return tilePage({
        marks,
        print,
        tiling,
        tile,
        info: input.info,
        words: { title, facing, pageOrder: i + 1, pageCount },
        map: (room, here) => tileMap(drawing, tiling, room, here),
      });
    }),
  };
}
