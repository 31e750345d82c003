import {
  type AreaMm,
  area,
  framedDocument,
  LINE_MM,
  type Mark,
  type Page,
  type Sheet,
  type SheetInfo,
} from "../../drawing/index.ts";
import { tilePage } from "../tiles/tilePage.ts";
import { type TilePrint, type Tiling, tilingOf } from "../tiles/tiling.ts";

/** A large sheet cut into tiles for a small printer, true size, as the loom boards are: crosses, bar and square, and a small map on each. */
export function diagramTiles(info: SheetInfo, sheet: Sheet, print: TilePrint): readonly Sheet[] {
  const { title } = sheet.head;
  const whole = framedDocument(info, title, [sheet]).pages[0]!;
  const tiling = tilingOf(whole, print, true);
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
        words: { title: whole.title, facing: "", pageOrder, pageCount },
        map: (room, here) => mapMarks(tiling, whole, room, here),
      }),
  }));
}

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
