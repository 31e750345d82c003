import type { Point } from "../../geometry/index.ts";
import type { Job } from "../../job/index.ts";
import { bodyShapes } from "./bodyShapes.ts";
import { REFERENCE, type SideShape } from "./sideShape.ts";

/** A machine from its left side, front left: mm of the job's own side view, x to the right, y down. */
export interface SideView {
  readonly shapes: readonly SideShape[];
  readonly stations: readonly SideStation[];
  readonly runs: readonly SideRun[];
  readonly joints: readonly SideJoint[];
  /** Stations nobody has given a place. */
  readonly unplaced: readonly string[];
  /** Where its upper left corner lies in the job's own side view: a place of the view plus this is a place of the job. */
  readonly originMm: Point;
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface SideStation {
  readonly station: string;
  /** From 1, front to rear. */
  readonly orderCount: number;
  readonly at: Point;
}

/** A joint along a run, at a share of its length from the run's `from` station. */
export interface SideJoint {
  readonly joint: string;
  readonly run: string;
  readonly shareRatio: number;
}

export interface SideRun {
  readonly run: string;
  readonly fromStation: string;
  readonly toStation: string;
  readonly flex: boolean;
  readonly isMeasured: boolean;
}

/**
 * The side elevation of a job: its body drawn round its own stations, so that lamp, tail and the lowest place of the loom
 * lie where the drawing has lamp, tail and axles.
 *
 * @returns null where no station has a place in side view.
 */
export function sideView(job: Job): SideView | null {
  const places = job.layout.side ?? {};
  const placed = job.stations.filter(({ id }) => id in places);
  if (placed.length === 0) return null;
  const at = (id: string): Point => ({ x: places[id]!.xMm, y: places[id]!.yMm });
  const isMachine = job.machine.kind === "motorcycle" || job.machine.kind === "three-wheeler";
  const shapes = isMachine
    ? fitted(
        job,
        placed.map(({ id }) => at(id)),
      )
    : [];
  const runs = job.runs
    .filter(({ from, to }) => from in places && to in places)
    .map(
      ({ id, from, to, flex, lengthMm }): SideRun => ({
        run: id,
        fromStation: from,
        toStation: to,
        flex: flex ?? false,
        isMeasured: lengthMm !== undefined && lengthMm.basis !== "estimated",
      }),
    );
  const ordered = [...placed].sort((p, q) => at(p.id).x - at(q.id).x || (p.id < q.id ? -1 : 1));
  const all = [...shapes.flatMap(({ points }) => points), ...placed.map(({ id }) => at(id))];
  const left = Math.min(...all.map(({ x }) => x));
  const top = Math.min(...all.map(({ y }) => y));
  const move = ({ x, y }: Point): Point => ({ x: x - left, y: y - top });
  return {
    shapes: shapes.map((shape) => ({ ...shape, points: shape.points.map(move) })),
    stations: ordered.map(({ id }, i) => ({ station: id, orderCount: i + 1, at: move(at(id)) })),
    runs,
    joints: jointPlaces(job),
    originMm: { x: left, y: top },
    unplaced: job.stations.filter(({ id }) => !(id in places)).map(({ id }) => id),
    widthMm: Math.max(...all.map(({ x }) => x)) - left,
    heightMm: Math.max(...all.map(({ y }) => y)) - top,
  };
}

/**
 * The body where the reference has it, with whatever is placed already: while a machine is surveyed from its first station on, and so long as the stations
 * do not yet tell how long it is.
 */
export function referenceSideView(job: Job): SideView {
  const isMachine = job.machine.kind === "motorcycle" || job.machine.kind === "three-wheeler";
  const shapes = isMachine ? bodyShapes(bodyOf(job)) : [];
  const places = Object.values(job.layout.side ?? {}).map(({ xMm, yMm }) => ({ x: xMm, y: yMm }));
  const all = [
    ...shapes.flatMap(({ points }) => points),
    REFERENCE.lamp,
    REFERENCE.tail,
    ...places,
  ];
  const left = Math.min(...all.map(({ x }) => x));
  const top = Math.min(...all.map(({ y }) => y));
  const move = ({ x, y }: Point): Point => ({ x: x - left, y: y - top });
  const view = sideView(job);
  const shiftX = (view?.originMm.x ?? 0) - left;
  const shiftY = (view?.originMm.y ?? 0) - top;
  return {
    shapes: shapes.map((shape) => ({ ...shape, points: shape.points.map(move) })),
    stations: (view?.stations ?? []).map((one) => ({
      ...one,
      at: { x: one.at.x + shiftX, y: one.at.y + shiftY },
    })),
    runs: view?.runs ?? [],
    joints: view?.joints ?? [],
    originMm: { x: left, y: top },
    unplaced: view?.unplaced ?? job.stations.map(({ id }) => id),
    widthMm: Math.max(...all.map(({ x }) => x)) - left,
    heightMm: Math.max(REFERENCE.axleY, ...all.map(({ y }) => y)) - top,
  };
}

/** Whether the stations placed lie far enough apart for the body to be drawn round them, mm. */
export function isSpread(job: Job): boolean {
  const xs = Object.values(job.layout.side ?? {}).map(({ xMm }) => xMm);
  return xs.length > 1 && Math.max(...xs) - Math.min(...xs) >= SPREAD_MM;
}

const SPREAD_MM = 400;

const bodyOf = ({ machine }: Job) =>
  machine.body ?? (machine.kind === "three-wheeler" ? "three-wheeler" : "other");

/** The reference body moved and stretched: lamp on the headlamp's station, tail on the rearmost, axles under the lowest. */
function fitted(job: Job, stations: readonly Point[]): readonly SideShape[] {
  const xs = stations.map(({ x }) => x);
  const ys = stations.map(({ y }) => y);
  const lampX = Math.min(...xs);
  const tailX = Math.max(...xs);
  const { lamp, tail, axleY } = REFERENCE;
  // One station, or all above each other: drawn at the size of the reference.
  const ratio = tailX - lampX < SPREAD_MM ? 1 : (tailX - lampX) / (tail.x - lamp.x);
  const lampY = lampPlace(job)?.y ?? Math.min(...ys) + 130;
  const downRatio = Math.max(0.8, (Math.max(...ys) - lampY) / (axleY - lamp.y));
  return bodyShapes(bodyOf(job)).map((shape) => ({
    ...shape,
    points: shape.points.map(({ x, y }) => ({
      x: lampX + (x - lamp.x) * ratio,
      y: lampY + (y - lamp.y) * (Math.abs(downRatio / ratio - 1) < 0.25 ? ratio : downRatio),
    })),
  }));
}

/** Station of the headlamp: of the lamp with the most filaments that shine forward, told by its watts. */
function lampPlace(job: Job): Point | null {
  const lamps = job.parts.flatMap((part) =>
    part.kind === "lamp" && part.station !== undefined ? [part] : [],
  );
  const wattsOf = (part: (typeof lamps)[number]): number =>
    part.filaments.reduce((sumW, { ratedW }) => sumW + ratedW, 0);
  const brightest = [...lamps].sort((p, q) => wattsOf(q) - wattsOf(p) || (p.id < q.id ? -1 : 1))[0];
  const place = brightest === undefined ? undefined : job.layout.side?.[brightest.station!];
  return place === undefined ? null : { x: place.xMm, y: place.yMm };
}

const jointPlaces = (job: Job): readonly SideJoint[] =>
  job.joints
    .filter(({ status }) => status !== "remove")
    .flatMap(({ id, offset }) => {
      const wholeMm = job.runs.find((one) => one.id === offset?.run)?.lengthMm?.value;
      if (offset === undefined || wholeMm === undefined) return [];
      return [{ joint: id, run: offset.run, shareRatio: offset.mm.value / wholeMm }];
    });
