import {
  type AreaMm,
  area,
  type Drawn,
  isAnyWithin,
  type Orientation,
  type PointMm,
  paperSizeMm,
  point,
} from "../../drawing/index.ts";
import type { BoardPrint } from "../board/boardPrint.ts";
import { drawnBoxes, fewestTiles, type TileGrid } from "./fewestTiles.ts";
import { FOOTER_HEIGHT_MM } from "./tileFooter.ts";

/** How a large drawing is put on paper. */
export type TilePrint = Omit<BoardPrint, "boardWidthMm">;

export interface Tile {
  /** "B2": row and column. */
  readonly name: string;
  readonly rowIndex: number;
  readonly columnIndex: number;
  /** Part of the drawing on it, overlap included. */
  readonly window: AreaMm;
}

export interface Tiling {
  readonly orientation: Orientation;
  readonly tiles: readonly Tile[];
  readonly rowCount: number;
  readonly columnCount: number;
  readonly windowWidthMm: number;
  readonly windowHeightMm: number;
  /** How far neighbours lie over each other: what was asked, or more where the sheets are shared out evenly. */
  readonly overlapXMm: number;
  readonly overlapYMm: number;
}

/** Not corrected for a printer. */
export const isExact = ({ readAcrossMm, readDownMm }: TilePrint): boolean =>
  readAcrossMm === 100 && readDownMm === 100;

/** What undoes the printer: true millimetres over what it made of them. */
export const ratiosOf = ({ readAcrossMm, readDownMm }: TilePrint) => ({
  acrossRatio: 100 / readAcrossMm,
  downRatio: 100 / readDownMm,
});

/**
 * The sheets of a drawing, the way round and with the first corner that take the fewest; a sheet with nothing of the drawing on it is left out.
 *
 * @param isEven  sheets lie over each other further, so that none holds a mere strip
 */
export function tilingOf(drawn: Drawn, print: TilePrint, isEven = false): Tiling {
  const boxes = isEven ? [] : drawnBoxes(drawn.marks);
  const ways = (["landscape", "portrait"] as const).map((one) =>
    tilingOn(drawn, print, one, isEven, boxes),
  );
  return ways[1]!.tiles.length < ways[0]!.tiles.length ? ways[1]! : ways[0]!;
}

function tilingOn(
  drawn: Drawn,
  print: TilePrint,
  orientation: Orientation,
  isEven: boolean,
  boxes: readonly AreaMm[],
): Tiling {
  const { marginMm, paper } = print;
  const sheet = paperSizeMm({ size: paper, orientation });
  const { acrossRatio, downRatio } = ratiosOf(print);
  const windowWidthMm = (sheet.widthMm - 2 * marginMm) / acrossRatio;
  const windowHeightMm = (sheet.heightMm - 2 * marginMm) / downRatio - FOOTER_HEIGHT_MM;
  const across = steps(drawn.widthMm, windowWidthMm, print.overlapMm, isEven);
  const down = steps(drawn.heightMm, windowHeightMm, print.overlapMm, isEven);
  const [columnCount, rowCount] = [across.count, down.count];
  const grid: TileGrid = {
    columnCount,
    rowCount,
    stepXMm: across.stepMm,
    stepYMm: down.stepMm,
    windowWidthMm,
    windowHeightMm,
  };
  const tilesFrom = (corner: PointMm): readonly Tile[] =>
    Array.from({ length: rowCount * columnCount }, (_, i): Tile => {
      const [rowIndex, columnIndex] = [Math.floor(i / columnCount), i % columnCount];
      const xMm = corner.xMm + columnIndex * across.stepMm;
      const yMm = corner.yMm + rowIndex * down.stepMm;
      const window = area(xMm, yMm, windowWidthMm, windowHeightMm);
      return { name: `${rowName(rowIndex)}${columnIndex + 1}`, rowIndex, columnIndex, window };
    }).filter((tile) => isAnyWithin(drawn.marks, coreOf(tile, grid)));
  const plain = tilesFrom(point(0, 0));
  const shifted = isEven ? plain : tilesFrom(fewestTiles(boxes, drawn, grid));
  const tiles = shifted.length < plain.length ? shifted : plain;
  return {
    orientation,
    tiles,
    rowCount,
    columnCount,
    windowWidthMm,
    windowHeightMm,
    overlapXMm: windowWidthMm - across.stepMm,
    overlapYMm: windowHeightMm - down.stepMm,
  };
}

/** What of a sheet its neighbours to the left and above do not show as well: what has nothing there is not needed. */
function coreOf({ rowIndex, columnIndex, window }: Tile, grid: TileGrid): AreaMm {
  const leftMm = columnIndex === 0 ? 0 : grid.windowWidthMm - grid.stepXMm;
  const topMm = rowIndex === 0 ? 0 : grid.windowHeightMm - grid.stepYMm;
  const { xMm, yMm, widthMm, heightMm } = window;
  return area(xMm + leftMm, yMm + topMm, widthMm - leftMm, heightMm - topMm);
}

/** How many windows a length takes, and from one to the next. */
function steps(wholeMm: number, windowMm: number, overlapMm: number, isEven: boolean) {
  const fullMm = windowMm - overlapMm;
  const count = Math.max(1, Math.ceil((wholeMm - overlapMm) / fullMm));
  const stepMm = isEven && count > 1 ? (wholeMm - windowMm) / (count - 1) : fullMm;
  return { count, stepMm };
}

const rowName = (index: number): string =>
  index < 26
    ? String.fromCharCode(65 + index)
    : `${rowName(Math.floor(index / 26) - 1)}${rowName(index % 26)}`;
