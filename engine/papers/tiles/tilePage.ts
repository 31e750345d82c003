import {
  type AreaMm,
  area,
  CAP_MM,
  LINE_MM,
  type Mark,
  marksWithin,
  moveMarks,
  type Page,
  type PointMm,
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
import { FOOTER_HEIGHT_MM, tileFooter } from "./tileFooter.ts";
import { isExact, ratiosOf, type Tile, type TilePrint, type Tiling } from "./tiling.ts";

/** Half a cross by which sheets are laid. */
export const CROSS_ARM_MM = 5;
/** A foot this wide has room for a small picture of all sheets. */
const MAP_FROM_MM = 255;

/** Everything one sheet of a large drawing is made from. */
export interface TileAsked {
  readonly marks: readonly Mark[];
  readonly print: TilePrint;
  readonly tiling: Tiling;
  readonly tile: Tile;
  readonly info: SheetInfo;
  readonly words: {
    readonly title: string;
    /** Which way the machine lies on it; empty where that says nothing. */
    readonly facing: string;
    readonly pageOrder: number;
    readonly pageCount: number;
  };
  /** Places of crosses on the drawing; absent: four in the middle of the overlap. Every sheet shows those that lie on it. */
  readonly crossesAt?: readonly PointMm[] | undefined;
  /** A small picture of all sheets, in the room the foot has for it. */
  readonly map: (room: AreaMm, here: string) => readonly Mark[];
}

/** One sheet of a large drawing: its part of the drawing, crosses to lay neighbours by, bar and square at its foot. */
export function tilePage(asked: TileAsked): Page {
  const { print, tiling, tile, info, words, map } = asked;
  const size = paperSizeMm({ size: print.paper, orientation: tiling.orientation });
  const ratios = ratiosOf(print);
  const { marginMm } = print;
  const { xMm, yMm, widthMm, heightMm } = tile.window;
  const left = marginMm / ratios.acrossRatio;
  const top = marginMm / ratios.downRatio;
  const inside = withoutCutLines(
    marksWithin(asked.marks, tile.window),
    tile.window,
    tiling.overlapYMm,
  );
  const moved = moveMarks(inside, left - xMm, top - yMm);
  const shown = area(left, top, widthMm, heightMm);
  const foot = area(left, top + heightMm, widthMm, FOOTER_HEIGHT_MM);
  const placed = (at: PointMm): readonly PointMm[] =>
    isIn(at, tile.window) ? [point(at.xMm + left - xMm, at.yMm + top - yMm)] : [];
  const index = tiling.tiles.indexOf(tile);
  const marks: Mark[] = [
    ...moved,
    ...masks(shown, size.widthMm / ratios.acrossRatio, size.heightMm / ratios.downRatio),
    { kind: "rect", area: shown, stroke: { widthMm: LINE_MM.leader, colour: "rule" } },
    ...crosses(shown, tiling, asked.crossesAt?.flatMap(placed)),
    ...glueWords(tiling, tile, shown, moved),
    ...tileFooter(
      info,
      {
        ...words,
        name: tile.name,
        place: `tile ${index + 1} of ${tiling.tiles.length}${isExact(print) ? "" : ", corrected"}`,
      },
      foot,
    ),
    ...(foot.widthMm < MAP_FROM_MM
      ? []
      : map(
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
function crosses(
  { xMm, yMm, widthMm, heightMm }: AreaMm,
  { overlapXMm, overlapYMm }: Tiling,
  places: readonly PointMm[] | undefined,
): readonly Mark[] {
  const stroke = { widthMm: LINE_MM.leader, colour: "ink" } as const;
  const [insetX, insetY] = [overlapXMm / 2, overlapYMm / 2];
  const arm = Math.min(CROSS_ARM_MM, insetX, insetY);
  const inCorners = [xMm + insetX, xMm + widthMm - insetX].flatMap((x) =>
    [yMm + insetY, yMm + heightMm - insetY].map((y) => point(x, y)),
  );
  return (places ?? inCorners).flatMap((centre): Mark[] => {
    const { xMm: x, yMm: y } = centre;
    return [
      { kind: "line", from: point(x - arm, y), to: point(x + arm, y), stroke },
      { kind: "line", from: point(x, y - arm), to: point(x, y + arm), stroke },
      { kind: "circle", centre, radiusMm: arm * 0.45, stroke },
    ];
  });
}

const isIn = ({ xMm, yMm }: PointMm, area: AreaMm): boolean =>
  xMm >= area.xMm &&
  xMm <= area.xMm + area.widthMm &&
  yMm >= area.yMm &&
  yMm <= area.yMm + area.heightMm;

/** Which sheet lies over the right and the lower edge, written where nothing else is; nothing where there is no such place. */
function glueWords(
  tiling: Tiling,
  tile: Tile,
  shown: AreaMm,
  drawn: readonly Mark[],
): readonly Mark[] {
  const find = (rowIndex: number, columnIndex: number): Tile | undefined =>
    tiling.tiles.find((one) => one.rowIndex === rowIndex && one.columnIndex === columnIndex);
  const right = find(tile.rowIndex, tile.columnIndex + 1);
  const lower = find(tile.rowIndex + 1, tile.columnIndex);
  const x = shown.xMm + shown.widthMm - tiling.overlapXMm / 2 - CAP_MM.fine / 2;
  const y = shown.yMm + shown.heightMm - tiling.overlapYMm / 2 + CAP_MM.fine / 2;
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
