import { type AreaMm, type PointMm, point } from "../../drawing/index.ts";
import type { Point } from "../../geometry/index.ts";
import { type SideView, spreadApart } from "../../layout/index.ts";

/** Columns at both sides for what finds no place beside its station. */
const COLUMN_MM = 40;
/** Radius of a station's ring. */
export const DOT_MM = 2;

/** How a side view lies in a room of the page. */
export interface LocationPlaces {
  readonly leftMm: number;
  readonly topMm: number;
  /** Page over machine. */
  readonly scaleRatio: number;
  readonly to: (at: Point) => PointMm;
  /** The ring of each station, moved apart from those it would cover. */
  readonly spots: ReadonlyMap<string, Point>;
}

export function locationPlaces(
  view: SideView,
  room: AreaMm,
  columnMm: number = COLUMN_MM,
): LocationPlaces {
  const scaleRatio = Math.min(
    (room.widthMm - 2 * columnMm) / Math.max(1, view.widthMm),
    (room.heightMm - 4) / Math.max(1, view.heightMm),
  );
  const leftMm = room.xMm + (room.widthMm - view.widthMm * scaleRatio) / 2;
  const topMm = room.yMm + (room.heightMm - view.heightMm * scaleRatio) / 2;
  const to = ({ x, y }: Point): PointMm => point(leftMm + x * scaleRatio, topMm + y * scaleRatio);
  const onPage = view.stations.map(({ at }) => ({ x: to(at).xMm, y: to(at).yMm }));
  const apart = spreadApart(onPage, 2 * DOT_MM + 0.4);
  const spots = new Map(apart.map((at, i) => [view.stations[i]!.station, at]));
  return { leftMm, topMm, scaleRatio, to, spots };
}
