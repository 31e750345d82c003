import { area } from "../../drawing/index.ts";
import { sideView } from "../../layout/index.ts";
import { inkOutline } from "../location/inkOutline.ts";
import { runMark, stationRing } from "../location/locationDrawing.ts";
import { locationPlaces } from "../location/locationPlaces.ts";
import type { Scene } from "./framedScene.ts";
import { type SceneAsked, sourceOf } from "./sceneSource.ts";

/** The machine pale and its loom on it, without a word: what tells one job from another at a glance. Null where no station has a place in side view. */
export function machineScene(
  asked: SceneAsked,
  { widthMm = 120, heightMm = 80 }: { widthMm?: number; heightMm?: number } = {},
): Scene | null {
  const view = sideView(sourceOf(asked).input.job);
  if (view === null) return null;
  const { to, spots } = locationPlaces(view, area(0, 0, widthMm, heightMm), 2);
  const marks = [
    ...view.shapes.map((shape) => inkOutline(shape, to)),
    ...view.runs.map((run) => runMark(run, spots.get(run.fromStation)!, spots.get(run.toStation)!)),
    ...[...spots].map(([station, { x, y }]) => stationRing(station, { xMm: x, yMm: y }, 0.8)),
  ];
  return { widthMm, heightMm, title: "The loom on the machine", bookmark: [], marks };
}
