import {
  type AreaMm,
  area,
  CAP_MM,
  LINE_MM,
  type Mark,
  marksWithin,
  moveMarks,
  type Orientation,
  type Page,
  palettes,
  paperSizeMm,
  point,
  type SheetInfo,
  stretchMarks,
  TEXT_STYLE,
  type TextMark,
  textAreaMm,
  textMark,
} from "../../drawing/index.ts";
import type { BoardDrawing } from "./boardDrawing.ts";
import { boardFooter, FOOTER_HEIGHT_MM } from "./boardFooter.ts";
import type { BoardPrint } from "./boardPrint.ts";
import { tileMap } from "./tileMap.ts";

/** A foot this wide has room for a small tile map. */
const MAP_FROM_MM = 255;

export interface Tile {
  /** "B2": row and column. */
  readonly name: string;
  readonly rowIndex: number;
  readonly columnIndex: number;
  /** Part of the board on it, overlap included. */
  readonly window: AreaMm;
}

export interface Tiling {
  readonly orientation: Orientation;
  readonly tiles: readonly Tile[];
  readonly rowCount: number;
  readonly columnCount: number;
  readonly windowWidthMm: number;
  readonly windowHeightMm: number;
}

/** Which way the machine lies on a board, in words. */
export const facingOf = ({ isOriented }: BoardDrawing): string =>
  isOriented ? "seen from the left, front is left" : "";

/** Not corrected for a printer. */
export const isExact = ({ readAcrossMm, readDownMm }: BoardPrint): boolean =>
  readAcrossMm === 100 && readDownMm === 100;

/** What undoes the printer: true millimetres over what it made of them. */
export const ratiosOf = ({ readAcrossMm, readDownMm }: BoardPrint) => ({
  acrossRatio: 100 / readAcrossMm,
  downRatio: 100 / readDownMm,
});

/** The sheets of a board, the way round that takes fewer; a sheet with nothing of the board on it is left out. */
export function boardTiling(drawing: BoardDrawing, print: BoardPrint): Tiling {
  const ways = (["landscape", "portrait"] as const).map((one) => tilingOf(drawing, print, one));
  return ways[1]!.tiles.length < ways[0]!.tiles.length ? ways[1]! : ways[0]!;
}

function tilingOf(drawing: BoardDrawing, print: BoardPrint, orientation: Orientation): Tiling {
  const { marginMm, overlapMm, paper } = print;
  const sheet = paperSizeMm({ size: paper, orientation });
  const { acrossRatio, downRatio } = ratiosOf(print);
  const windowWidthMm = (sheet.widthMm - 2 * marginMm) / acrossRatio;
  const windowHeightMm = (sheet.heightMm - 2 * marginMm) / downRatio - FOOTER_HEIGHT_MM;
  const stepX = windowWidthMm - overlapMm;
  const stepY = windowHeightMm - overlapMm;
  const columnCount = Math.max(1, Math.ceil((drawing.widthMm - overlapMm) / stepX));
  const rowCount = Math.max(1, Math.ceil((drawing.heightMm - overlapMm) / stepY));
  const tiles = Array.from({ length: rowCount * columnCount }, (_, i): Tile => {
    const [rowIndex, columnIndex] = [Math.floor(i / columnCount), i % columnCount];
    const window = area(columnIndex * stepX, rowIndex * stepY, windowWidthMm, windowHeightMm);
    return { name: `${rowName(rowIndex)}${columnIndex + 1}`, rowIndex, columnIndex, window };
  }).filter(({ window }) => marksWithin(drawing.marks, window).length > 0);
  return { orientation, tiles, rowCount, columnCount, windowWidthMm, windowHeightMm };
}

const rowName = (index: number): string =>
  index < 26
    ? String.fromCharCode(65 + index)
    : `${rowName(Math.floor(index / 26) - 1)}${rowName(index % 26)}`;

/** Everything one sheet of a board is made from. */
export interface TileAsked {
  readonly drawing: BoardDrawing;
  readonly print: BoardPrint;
  readonly tiling: Tiling;
  readonly tile: Tile;
  readonly info: SheetInfo;
  readonly words: {
    readonly title: string;
    readonly pageOrder: number;
    readonly pageCount: number;
  };
}

/** One sheet of a board: its part of the drawing, crosses to lay neighbours by, bar and square at its foot. */
export function tilePage({ drawing, print, tiling, tile, info, words }: TileAsked): Page {
  const size = paperSizeMm({ size: print.paper, orientation: tiling.orientation });
  const ratios = ratiosOf(print);
  const { marginMm, overlapMm } = print;
  const { xMm, yMm, widthMm, heightMm } = tile.window;
  const left = marginMm / ratios.acrossRatio;
  const top = marginMm / ratios.downRatio;
  const inside = withoutCutLines(marksWithin(drawing.marks, tile.window), tile.window, overlapMm);
  const moved = moveMarks(inside, left - xMm, top - yMm);
  const shown = area(left, top, widthMm, heightMm);
  const foot = area(left, top + heightMm, widthMm, FOOTER_HEIGHT_MM);
  const index = tiling.tiles.indexOf(tile);
  const marks: Mark[] = [
    ...moved,
    ...masks(shown, size.widthMm / ratios.acrossRatio, size.heightMm / ratios.downRatio),
    { kind: "rect", area: shown, stroke: { widthMm: LINE_MM.leader, colour: "rule" } },
    ...crosses(shown, overlapMm),
    ...glueWords(tiling, tile, shown, overlapMm, moved),
    ...boardFooter(
      info,
      {
        ...words,
        facing: facingOf(drawing),
        name: tile.name,
        place: `tile ${index + 1} of ${tiling.tiles.length}${isExact(print) ? "" : ", corrected"}`,
      },
      foot,
    ),
    ...(foot.widthMm < MAP_FROM_MM
      ? []
      : tileMap(
          drawing,
          tiling,
          area(foot.xMm + MAP_FROM_MM - 62, foot.yMm + 2, foot.widthMm - MAP_FROM_MM + 62, 21),
          tile.name,
        )),
  ];
  return {
    ...size,
    title: `${words.title}, ${tile.name}`,
    bookmark: [words.title, `tile ${tile.name}`],
    marks: stretchMarks(marks, ratios, palettes.print),
  };
}

/** Lines of text cut along their length are left to the neighbour above or below, on whose overlap they stand whole. */
function withoutCutLines(marks: readonly Mark[], window: AreaMm, overlapMm: number): Mark[] {
  return marks.flatMap((mark): Mark[] => {
    if (mark.kind === "group") {
      return [{ ...mark, marks: withoutCutLines(mark.marks, window, overlapMm) }];
    }
    if (mark.kind !== "text") return [mark];
    const { yMm, heightMm } = textAreaMm(mark);
    const isWhole = yMm >= window.yMm && yMm + heightMm <= window.yMm + window.heightMm;
    return isWhole || heightMm > overlapMm ? [mark] : [];
  });
}

/** White over everything that reaches out of the window. */
function masks(shown: AreaMm, pageWidthMm: number, pageHeightMm: number): readonly Mark[] {
  const { xMm, yMm, widthMm, heightMm } = shown;
  const far = 2000;
  const right = xMm + widthMm;
  const bottom = yMm + heightMm;
  return [
    area(-far, -far, pageWidthMm + 2 * far, yMm + far),
    area(-far, bottom, pageWidthMm + 2 * far, pageHeightMm + far - bottom),
    area(-far, yMm, xMm + far, heightMm),
    area(right, yMm, pageWidthMm + far - right, heightMm),
  ].map((one): Mark => ({ kind: "rect", area: one, fill: "ground" }));
}

/** Four crosses in the middle of the overlap: each lies on its neighbours' when the sheets are laid right. */
function crosses({ xMm, yMm, widthMm, heightMm }: AreaMm, overlapMm: number): readonly Mark[] {
  const stroke = { widthMm: LINE_MM.leader, colour: "ink" } as const;
  const inset = overlapMm / 2;
  const arm = Math.min(5, inset);
  return [xMm + inset, xMm + widthMm - inset].flatMap((x) =>
    [yMm + inset, yMm + heightMm - inset].flatMap((y): Mark[] => [
      { kind: "line", from: point(x - arm, y), to: point(x + arm, y), stroke },
      { kind: "line", from: point(x, y - arm), to: point(x, y + arm), stroke },
      { kind: "circle", centre: point(x, y), radiusMm: arm * 0.45, stroke },
    ]),
  );
}

/** Which sheet lies over the right and the lower edge, written where nothing else is; nothing where there is no such place. */
function glueWords(
  tiling: Tiling,
  tile: Tile,
  shown: AreaMm,
  overlapMm: number,
  drawn: readonly Mark[],
): readonly Mark[] {
  const find = (rowIndex: number, columnIndex: number): Tile | undefined =>
    tiling.tiles.find((one) => one.rowIndex === rowIndex && one.columnIndex === columnIndex);
  const right = find(tile.rowIndex, tile.columnIndex + 1);
  const lower = find(tile.rowIndex + 1, tile.columnIndex);
  const x = shown.xMm + shown.widthMm - overlapMm / 2 - CAP_MM.fine / 2;
  const y = shown.yMm + shown.heightMm - overlapMm / 2 + CAP_MM.fine / 2;
  const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8];
  const firstFree = (words: readonly TextMark[]): readonly Mark[] =>
    words.filter((one) => marksWithin(drawn, textAreaMm(one)).length === 0).slice(0, 1);
  const text = (name: string) => `${name} lies over this edge`;
  const style = TEXT_STYLE.fine;
  return [
    ...firstFree(
      (right === undefined ? [] : shares).map((share) => ({
        ...textMark(text(right!.name), x, shown.yMm + share * shown.heightMm, style, "middle"),
        turnDeg: 90,
      })),
    ),
    ...firstFree(
      (lower === undefined ? [] : shares).map((share) =>
        textMark(text(lower!.name), shown.xMm + share * shown.widthMm, y, style, "middle"),
      ),
    ),
  ];
}
