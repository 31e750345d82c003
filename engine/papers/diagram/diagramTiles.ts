import {
  type AreaMm,
  area,
  framedDocument,
  LINE_MM,
  type Mark,
  marksWithin,
  moveMarks,
  type Page,
  type PaperSize,
  paperSizeMm,
  point,
  type Sheet,
  type SheetInfo,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";

/** What common printers leave white, and how far neighbouring tiles lie over each other. */
const MARGIN_MM = 8;
const OVERLAP_MM = 10;
const FOOT_MM = 14;
const MAP_WIDTH_MM = 34;

interface Tile {
  /** "B2": row and column. */
  readonly name: string;
  readonly rowIndex: number;
  readonly columnIndex: number;
  /** Part of the large sheet on it, overlap included. */
  readonly window: AreaMm;
}

interface Tiling {
  readonly tiles: readonly Tile[];
  readonly whole: { readonly widthMm: number; readonly heightMm: number };
}

/** A large sheet cut into tiles for a small printer, true size: crosses to lay neighbours by, and a small map on each. */
export function diagramTiles(info: SheetInfo, sheet: Sheet, size: PaperSize): readonly Sheet[] {
  const whole = framedDocument(info, sheet.head.title, [sheet]).pages[0]!;
  const tiling: Tiling = { whole, tiles: tilesOf(whole, size) };
  return tiling.tiles.map((tile, i) => ({
    ...sheet,
    paper: { size, orientation: "landscape" },
    bookmark: [sheet.head.title, `tile ${tile.name}`],
    marks: [],
    ownPage: (pageNumber, pageCount) =>
      tilePage(info, whole, tiling, tile, size, `${i + 1}`, `${pageNumber} of ${pageCount}`),
  }));
}

const roomOf = (size: PaperSize): AreaMm => {
  const { widthMm, heightMm } = paperSizeMm({ size, orientation: "landscape" });
  return area(MARGIN_MM, MARGIN_MM, widthMm - 2 * MARGIN_MM, heightMm - 2 * MARGIN_MM - FOOT_MM);
};

/** Tiles shared out evenly over the sheet, so that none holds a mere strip. */
function tilesOf(whole: Page, size: PaperSize): readonly Tile[] {
  const { widthMm, heightMm } = roomOf(size);
  const columnCount = countOf(whole.widthMm, widthMm);
  const rowCount = countOf(whole.heightMm, heightMm);
  const stepX = columnCount === 1 ? 0 : (whole.widthMm - widthMm) / (columnCount - 1);
  const stepY = rowCount === 1 ? 0 : (whole.heightMm - heightMm) / (rowCount - 1);
  return Array.from({ length: rowCount * columnCount }, (_, i): Tile => {
    const [rowIndex, columnIndex] = [Math.floor(i / columnCount), i % columnCount];
    return {
      rowIndex,
      columnIndex,
      name: `${String.fromCharCode(65 + rowIndex)}${columnIndex + 1}`,
      window: area(columnIndex * stepX, rowIndex * stepY, widthMm, heightMm),
    };
  }).filter(({ window }) => marksWithin(whole.marks, window).length > 0);
}

const countOf = (wholeMm: number, tileMm: number): number =>
  Math.max(1, Math.ceil((wholeMm - OVERLAP_MM) / (tileMm - OVERLAP_MM)));

function tilePage(
  info: SheetInfo,
  whole: Page,
  tiling: Tiling,
  tile: Tile,
  size: PaperSize,
  number: string,
  pageText: string,
): Page {
  const room = roomOf(size);
  const paper = paperSizeMm({ size, orientation: "landscape" });
  const { window } = tile;
  const moved = moveMarks(
    marksWithin(whole.marks, window),
    room.xMm - window.xMm,
    room.yMm - window.yMm,
  );
  const footMm = room.yMm + room.heightMm;
  const words = `${whole.title}, tile ${tile.name} (${number} of ${tiling.tiles.length})`;
  const job = `${info.machine}, job ${info.jobId}, rev ${info.revision}; print at 100 %, lay cross on cross; page ${pageText}`;
  return {
    ...paper,
    title: `${whole.title}, ${tile.name}`,
    bookmark: [whole.title, `tile ${tile.name}`],
    marks: [
      ...moved,
      ...masks(room),
      { kind: "rect", area: room, stroke: { widthMm: LINE_MM.leader, colour: "rule" } },
      ...crosses(tiling, tile, room),
      textMark(words, room.xMm, footMm + 5.5, TEXT_STYLE.part),
      textMark(job, room.xMm, footMm + 10.5, TEXT_STYLE.text),
      ...tileMap(tiling, tile, room.xMm + room.widthMm - MAP_WIDTH_MM, footMm + 1.5),
    ],
  };
}

/** White over everything that reaches out of the window. */
function masks({ xMm, yMm, widthMm, heightMm }: AreaMm): readonly Mark[] {
  const farMm = 1000;
  const [right, bottom] = [xMm + widthMm, yMm + heightMm];
  return [
    area(-farMm, -farMm, 3 * farMm, yMm + farMm),
    area(-farMm, bottom, 3 * farMm, farMm),
    area(-farMm, yMm, xMm + farMm, heightMm),
    area(right, yMm, farMm, heightMm),
  ].map((one): Mark => ({ kind: "rect", area: one, fill: "ground" }));
}

/** Crosses in the middle of what two neighbours share: each lies on the neighbour's when the tiles are laid right. */
function crosses({ tiles }: Tiling, tile: Tile, room: AreaMm): readonly Mark[] {
  const neighbours = tiles.filter(
    ({ rowIndex, columnIndex }) =>
      Math.abs(rowIndex - tile.rowIndex) + Math.abs(columnIndex - tile.columnIndex) === 1,
  );
  return neighbours.flatMap(({ window }) => {
    const shared = sharedArea(window, tile.window);
    const isBeside = shared.heightMm > shared.widthMm;
    const [longMm, xMid, yMid] = [
      isBeside ? shared.heightMm : shared.widthMm,
      shared.xMm + shared.widthMm / 2,
      shared.yMm + shared.heightMm / 2,
    ];
    return [-0.42, 0.42].flatMap((part) =>
      cross(
        (isBeside ? xMid : xMid + part * longMm) - tile.window.xMm + room.xMm,
        (isBeside ? yMid + part * longMm : yMid) - tile.window.yMm + room.yMm,
      ),
    );
  });
}

function sharedArea(a: AreaMm, b: AreaMm): AreaMm {
  const [left, top] = [Math.max(a.xMm, b.xMm), Math.max(a.yMm, b.yMm)];
  const right = Math.min(a.xMm + a.widthMm, b.xMm + b.widthMm);
  const bottom = Math.min(a.yMm + a.heightMm, b.yMm + b.heightMm);
  return area(left, top, right - left, bottom - top);
}

function cross(xMm: number, yMm: number): Mark[] {
  const stroke = { widthMm: LINE_MM.detail, colour: "ink" } as const;
  return [
    { kind: "line", from: point(xMm - 4, yMm), to: point(xMm + 4, yMm), stroke },
    { kind: "line", from: point(xMm, yMm - 4), to: point(xMm, yMm + 4), stroke },
    { kind: "circle", centre: point(xMm, yMm), radiusMm: 1.8, stroke },
  ];
}

/** Which tile this is, on a small picture of all. */
function tileMap({ tiles, whole }: Tiling, here: Tile, xMm: number, yMm: number): Mark[] {
  const ratio = Math.min(MAP_WIDTH_MM / whole.widthMm, (FOOT_MM - 2) / whole.heightMm);
  const rowCount = Math.max(...tiles.map(({ rowIndex }) => rowIndex)) + 1;
  const columnCount = Math.max(...tiles.map(({ columnIndex }) => columnIndex)) + 1;
  const [widthMm, heightMm] = [
    (whole.widthMm * ratio) / columnCount,
    (whole.heightMm * ratio) / rowCount,
  ];
  return tiles.map(
    ({ rowIndex, columnIndex, name }): Mark => ({
      kind: "rect",
      area: area(xMm + columnIndex * widthMm, yMm + rowIndex * heightMm, widthMm, heightMm),
      stroke: { widthMm: LINE_MM.leader, colour: "ink" },
      ...(name === here.name ? { fill: "ink" as const } : {}),
    }),
  );
}
