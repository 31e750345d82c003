import { area, type PointMm } from "../../drawing/index.ts";
import { sideView } from "../../layout/index.ts";
import { inkOutline } from "../location/inkOutline.ts";
import { runMark, stationRing } from "../location/locationDrawing.ts";
import { locationPlaces } from "../location/locationPlaces.ts";
import type { Scene } from "./framedScene.ts";
import { type SceneAsked, sourceOf } from "./sceneSource.ts";

export interface MachineScene extends Scene {
  /** Centre of each station's ring. */
  readonly rings: readonly { readonly station: string; readonly at: PointMm }[];
}

/** The machine pale and its loom on it, without a word: what tells one job from another at a glance. Null where no station has a place in side view. */
export function machineScene(
  asked: SceneAsked,
  { widthMm = 120, heightMm = 80 }: { widthMm?: number; heightMm?: number } = {},
): MachineScene | null {
  const view = sideView(sourceOf(asked).input.job);
  if (view === null) return null;
  const { to, spots } = locationPlaces(view, area(0, 0, widthMm, heightMm), 2);
  const marks = [
    ...view.shapes.map((shape) => inkOutline(shape, to)),
    ...view.runs.map((run) => runMark(run, spots.get(run.fromStation)!, spots.get(run.toStation)!)),
    ...[...spots].map(([station, { x, y }]) => stationRing(station, { xMm: x, yMm: y }, 0.8)),
  ];
  const rings = [...spots].map(([station, { x, y }]) => ({ station, at: { xMm: x, yMm: y } }));
  return { widthMm, heightMm, title: "The loom on the machine", bookmark: [], marks, rings };
}
