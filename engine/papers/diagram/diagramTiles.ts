import {
  type AreaMm,
  area,
  framedDocument,
  LINE_MM,
  type Mark,
  type Page,
  type PointMm,
  point,
  type Sheet,
  type SheetInfo,
  type TextMark,
  textAreaMm,
} from "../../drawing/index.ts";
import { CROSS_ARM_MM, tilePage } from "../tiles/tilePage.ts";
import { type TilePrint, type Tiling, tilingOf } from "../tiles/tiling.ts";

/** A large sheet cut into tiles for a small printer, true size, as the loom boards are: crosses, bar and square, and a small map on each. */
export function diagramTiles(info: SheetInfo, sheet: Sheet, print: TilePrint): readonly Sheet[] {
  const { title } = sheet.head;
  const whole = framedDocument(info, title, [sheet]).pages[0]!;
  const tiling = tilingOf(whole, print, true);
  const crossesAt = freeCrosses(tiling, whole);
  return tiling.tiles.map((tile) => ({
    ...sheet,
    paper: { size: print.paper, orientation: tiling.orientation },
    bookmark: [title, `tile ${tile.name}`],
    marks: [],
    ownPage: (pageOrder, pageCount) =>
      tilePage({
        marks: whole.marks,
        print,
        tiling,
        tile,
        info,
        crossesAt,
        words: { title: whole.title, facing: "", pageOrder, pageCount },
        map: (room, here) => mapMarks(tiling, whole, room, here),
      }),
  }));
}

/** How far along what two neighbours share a cross is tried, from either end. */
const SHARES = Array.from({ length: 12 }, (_, i) => 0.05 + 0.035 * i);

/** Two crosses in the middle of what each two neighbours share, as near its ends as no lettering is. */
function freeCrosses({ tiles }: Tiling, whole: Page): readonly PointMm[] {
  const words = textMarksOf(whole.marks).map(textAreaMm);
  const isFree = ({ xMm, yMm }: PointMm): boolean =>
    words.every(
      (one) =>
        xMm + CROSS_ARM_MM < one.xMm ||
        xMm - CROSS_ARM_MM > one.xMm + one.widthMm ||
        yMm + CROSS_ARM_MM < one.yMm ||
        yMm - CROSS_ARM_MM > one.yMm + one.heightMm,
    );
  return tiles.flatMap((tile) =>
    [0, 1].flatMap((down) => {
      const next = tiles.find(
        ({ rowIndex, columnIndex }) =>
          rowIndex === tile.rowIndex + down && columnIndex === tile.columnIndex + 1 - down,
      );
      if (next === undefined) return [];
      const { xMm, yMm } = next.window;
      const shared = area(
        xMm,
        yMm,
        tile.window.xMm + tile.window.widthMm - xMm,
        tile.window.yMm + tile.window.heightMm - yMm,
      );
      return [SHARES, SHARES.map((share) => 1 - share)].map((shares) => {
        const places = shares.map((share) =>
          down === 1
            ? point(shared.xMm + share * shared.widthMm, shared.yMm + shared.heightMm / 2)
            : point(shared.xMm + shared.widthMm / 2, shared.yMm + share * shared.heightMm),
        );
        return places.find(isFree) ?? places[0]!;
      });
    }),
  );
}

const textMarksOf = (marks: readonly Mark[]): readonly TextMark[] =>
  marks.flatMap((mark) => {
    if (mark.kind === "group") return textMarksOf(mark.marks);
    return mark.kind === "text" ? [mark] : [];
  });

/** Which tile this is, on a small picture of all. */
function mapMarks(
  { tiles, columnCount, rowCount }: Tiling,
  whole: Page,
  room: AreaMm,
  here: string,
): Mark[] {
  const ratio = Math.min(room.widthMm / whole.widthMm, room.heightMm / whole.heightMm);
  const widthMm = (whole.widthMm * ratio) / columnCount;
  const heightMm = (whole.heightMm * ratio) / rowCount;
  return tiles.map(
    ({ rowIndex, columnIndex, name }): Mark => ({
      kind: "rect",
      area: area(
        room.xMm + columnIndex * widthMm,
        room.yMm + rowIndex * heightMm,
        widthMm,
        heightMm,
      ),
      stroke: { widthMm: LINE_MM.leader, colour: "ink" },
      ...(name === here ? { fill: "ink" as const } : {}),
    }),
  );
}
