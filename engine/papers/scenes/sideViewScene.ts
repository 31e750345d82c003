import { area, type PointMm } from "../../drawing/index.ts";
import { type SideView, sideView } from "../../layout/index.ts";
import { locationDrawing } from "../location/locationDrawing.ts";
import { locationPlaces } from "../location/locationPlaces.ts";
import { type StationThings, stationThings } from "../location/stationThings.ts";
import type { Scene } from "./framedScene.ts";
import { type SceneAsked, sourceOf } from "./sceneSource.ts";

export interface SideViewScene {
  readonly scene: Scene;
  readonly view: SideView;
  /** What sits where, front to rear. */
  readonly things: readonly StationThings[];
  /** Centre of each station's ring on the scene; rings that would cover each other stand apart. */
  readonly rings: readonly { readonly station: string; readonly at: PointMm }[];
  /** A place of the job's side view is `jobXMm = (xMm - leftMm) / scaleRatio + view.originMm.x`, and so down. */
  readonly leftMm: number;
  readonly topMm: number;
  readonly scaleRatio: number;
}

/** The machine from its left side. Null where no station has a place in side view. */
export function sideViewScene(
  asked: SceneAsked,
  { widthMm = 390, heightMm = 250 }: { widthMm?: number; heightMm?: number } = {},
): SideViewScene | null {
  const { job } = sourceOf(asked).input;
  const view = sideView(job);
  if (view === null) return null;
  const things = stationThings(job, view);
  const room = area(0, 0, widthMm, heightMm);
  const { leftMm, topMm, scaleRatio, spots } = locationPlaces(view, room);
  const marks = locationDrawing(view, things, room);
  return {
    scene: { widthMm, heightMm, title: "Location view", bookmark: [], marks },
    view,
    things,
    rings: [...spots].map(([station, { x, y }]) => ({ station, at: { xMm: x, yMm: y } })),
    leftMm,
    topMm,
    scaleRatio,
  };
}
