import {
  type AreaMm,
  area,
  type Mark,
  marksBox,
  type PointMm,
  textAreaMm,
} from "../../drawing/index.ts";

/** Lines are looked at in pieces no longer than this: a slanting one does not fill its box. */
const PIECE_MM = 25;
/** Places of the grid that are tried each way. */
const TRY_COUNT = 12;

/** A grid of windows that covers a drawing: how many each way, how far from one to the next, and how large they are. */
export interface TileGrid {
  readonly columnCount: number;
  readonly rowCount: number;
  readonly stepXMm: number;
  readonly stepYMm: number;
  readonly windowWidthMm: number;
  readonly windowHeightMm: number;
}

/** Boxes that hold everything drawn, none much larger than what it holds. */
export function drawnBoxes(marks: readonly Mark[]): readonly AreaMm[] {
  return marks.flatMap((mark): readonly AreaMm[] => {
    switch (mark.kind) {
      case "group":
        return drawnBoxes(mark.marks);
      case "line":
        return pieces([mark.from, mark.to], mark.stroke.widthMm / 2);
      case "polyline": {
        const points = mark.closed ? [...mark.points, mark.points[0]!] : mark.points;
        return pieces(points, (mark.stroke?.widthMm ?? 0) / 2);
      }
      case "wire":
        return pieces(mark.points, 1.5);
      case "text":
        return [textAreaMm(mark)];
      default: {
        const box = marksBox([mark]);
        return box === null ? [] : [box];
      }
    }
  });
}

function pieces(points: readonly PointMm[], reachMm: number): readonly AreaMm[] {
  return points.slice(1).flatMap((b, i) => {
    const a = points[i]!;
    const lengthMm = Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);
    const count = Math.max(1, Math.ceil(lengthMm / PIECE_MM));
    return Array.from({ length: count }, (_, k) => {
      const at = (shareRatio: number): PointMm => ({
        xMm: a.xMm + shareRatio * (b.xMm - a.xMm),
        yMm: a.yMm + shareRatio * (b.yMm - a.yMm),
      });
      const [p, q] = [at(k / count), at((k + 1) / count)];
      return area(
        Math.min(p.xMm, q.xMm) - reachMm,
        Math.min(p.yMm, q.yMm) - reachMm,
        Math.abs(p.xMm - q.xMm) + 2 * reachMm,
        Math.abs(p.yMm - q.yMm) + 2 * reachMm,
      );
    });
  });
}

/** Where the grid begins so that the fewest windows have something on them; the corner of the drawing where nothing is better. */
export function fewestTiles(
  boxes: readonly AreaMm[],
  drawn: { readonly widthMm: number; readonly heightMm: number },
  grid: TileGrid,
): PointMm {
  const coveredXMm = (grid.columnCount - 1) * grid.stepXMm + grid.windowWidthMm;
  const coveredYMm = (grid.rowCount - 1) * grid.stepYMm + grid.windowHeightMm;
  const spareXMm = Math.max(0, coveredXMm - drawn.widthMm);
  const spareYMm = Math.max(0, coveredYMm - drawn.heightMm);
  let best = { xMm: 0, yMm: 0, count: Number.POSITIVE_INFINITY };
  for (let j = 0; j <= TRY_COUNT; j++) {
    for (let i = 0; i <= TRY_COUNT; i++) {
      const at = { xMm: -(spareXMm * i) / TRY_COUNT, yMm: -(spareYMm * j) / TRY_COUNT };
      const count = usedCount(boxes, at, grid);
      if (count < best.count) best = { ...at, count };
    }
  }
  return { xMm: best.xMm, yMm: best.yMm };
}

function usedCount(boxes: readonly AreaMm[], at: PointMm, grid: TileGrid): number {
  const { columnCount, rowCount, stepXMm, stepYMm, windowWidthMm, windowHeightMm } = grid;
  const used = new Set<number>();
  for (const { xMm, yMm, widthMm, heightMm } of boxes) {
    const [left, top] = [xMm - at.xMm, yMm - at.yMm];
    const fromColumn = Math.max(0, Math.floor((left - windowWidthMm) / stepXMm) + 1);
    const toColumn = lastIndex(left + widthMm, windowWidthMm, stepXMm, columnCount);
    const fromRow = Math.max(0, Math.floor((top - windowHeightMm) / stepYMm) + 1);
    const toRow = lastIndex(top + heightMm, windowHeightMm, stepYMm, rowCount);
    for (let row = fromRow; row <= toRow; row++) {
      for (let column = fromColumn; column <= toColumn; column++)
        used.add(row * columnCount + column);
    }
  }
  return used.size;
}

/** The last window that shows an edge where its neighbour before does not. */
const lastIndex = (edgeMm: number, windowMm: number, stepMm: number, count: number): number => {
  const overlapMm = windowMm - stepMm;
  return Math.min(count - 1, Math.max(0, Math.ceil((edgeMm - overlapMm) / stepMm) - 1));
};
