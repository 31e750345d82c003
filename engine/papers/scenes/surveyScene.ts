import { area, CAP_MM, type Mark, measureTextMm, type PointMm } from "../../drawing/index.ts";
import type { Point, Segment } from "../../geometry/index.ts";
import type { Basis, Job } from "../../job/index.ts";
import {
  isSpread,
  placeBlocks,
  referenceSideView,
  type SideView,
  sideView,
} from "../../layout/index.ts";
import { inkOutline } from "../location/inkOutline.ts";
import { locationPlaces } from "../location/locationPlaces.ts";
import { stationThings } from "../location/stationThings.ts";

/** The machine as it is surveyed: what is measured, what is guessed, what stands where. */
export interface SurveyScene {
  readonly widthMm: number;
  readonly heightMm: number;
  /** The machine, pale. */
  readonly outline: readonly Mark[];
  readonly stations: readonly SurveyStation[];
  readonly runs: readonly SurveyRun[];
  /** Stations nobody has put anywhere in the side view. */
  readonly unplaced: readonly string[];
  /** A place of the scene is `(jobMm − originMm) × scaleRatio + (leftMm, topMm)`. */
  readonly leftMm: number;
  readonly topMm: number;
  readonly scaleRatio: number;
  readonly originMm: PointMm;
  readonly photograph: {
    readonly id: string;
    readonly xMm: number;
    readonly yMm: number;
    readonly widthMm: number;
    readonly heightMm: number;
  } | null;
}

export interface SurveyStation {
  readonly id: string;
  readonly name: string;
  /** Names of what sits there, as many as a line holds. */
  readonly holds: string;
  readonly at: PointMm;
  /** Upper left corner of its words; null where there is no room for them. */
  readonly label: PointMm | null;
  readonly leader: Segment | null;
}

export interface SurveyRun {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly lengthMm: number | null;
  readonly basis: Basis | null;
  readonly flex: boolean;
  /** Middle of the box its length stands in; null where there is no room for one near it. */
  readonly box: PointMm | null;
}

const RING_MM = 3;
/** A box further from the middle of its run would be taken for another's. */
const BOX_REACH_MM = 7;
const BOX = { widthMm: 13, heightMm: 5.4 } as const;
const LINE_PITCH_MM = 4.2;
const HOLDS_MM = 34;
/** On a page narrower than this a station has its name alone. */
const NARROW_MM = 150;

/**
 * The side view of a job for surveying. Where nothing is placed yet it is the body alone.
 *
 * @param room page it is drawn on, mm; text stands at its own size whatever the machine is scaled to
 */
export function surveyScene(
  job: Job,
  { widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number },
): SurveyScene {
  const view = (isSpread(job) ? sideView(job) : null) ?? referenceSideView(job);
  const room = area(4, 6, widthMm - 8, heightMm - 12);
  const edgeMm = Math.min(24, widthMm / 12);
  const { leftMm, topMm, scaleRatio, to, spots } = locationPlaces(view, room, edgeMm);
  const words = labelsOf(job, view, spots, { widthMm, heightMm });
  const onPage = (xMm: number, yMm: number): PointMm =>
    to({ x: xMm - view.originMm.x, y: yMm - view.originMm.y });
  const { photograph } = job.layout;
  const corner = photograph && onPage(photograph.xMm, photograph.yMm);
  return {
    widthMm,
    heightMm,
    outline: view.shapes.map((shape) => inkOutline(shape, to)),
    stations: words.stations,
    runs: words.runs,
    unplaced: view.unplaced,
    leftMm,
    topMm,
    scaleRatio,
    originMm: { xMm: view.originMm.x, yMm: view.originMm.y },
    photograph:
      photograph === undefined || corner === undefined
        ? null
        : {
            id: photograph.id,
            ...corner,
            widthMm: photograph.widthMm * scaleRatio,
            heightMm: (photograph.widthMm * scaleRatio * photograph.heightPx) / photograph.widthPx,
          },
  };
}

type Spots = ReadonlyMap<string, Point>;

/** Words and boxes where they cover neither each other nor a ring. */
function labelsOf(
  job: Job,
  view: SideView,
  spots: Spots,
  page: { readonly widthMm: number; readonly heightMm: number },
): Pick<SurveyScene, "stations" | "runs"> {
  const things = new Map(stationThings(job, view).map((one) => [one.id, one]));
  const said = view.stations.map(({ station }) => {
    const { name, parts } = things.get(station)!;
    const isNarrow = page.widthMm < NARROW_MM;
    const holds = isNarrow ? "" : listed(parts.map((part) => part.name || part.id));
    return { id: station, name, holds };
  });
  const placed = placedWords(view, said, spots, page);
  const blockOf = new Map(placed.map((block) => [block.id, block]));
  return {
    stations: said.map(({ id, name, holds }) => {
      const { x, y, width, height, leader, isFree } = blockOf.get(id)!;
      const isInside = x >= 0 && y > 0 && x + width <= page.widthMm && y + height <= page.heightMm;
      const isOnPage = isFree && isInside;
      const label = isOnPage ? { xMm: x, yMm: y } : null;
      const { x: xMm, y: yMm } = spots.get(id)!;
      return { id, name, holds, at: { xMm, yMm }, label, leader: isOnPage ? leader : null };
    }),
    runs: view.runs.map(({ run, fromStation, toStation, flex }) => {
      const { lengthMm } = job.runs.find(({ id }) => id === run)!;
      const box = blockOf.get(`run ${run}`);
      return {
        id: run,
        from: fromStation,
        to: toStation,
        lengthMm: lengthMm?.value ?? null,
        basis: lengthMm?.basis ?? null,
        flex,
        box: box === undefined ? null : { xMm: box.x + box.width / 2, yMm: box.y + box.height / 2 },
      };
    }),
  };
}

interface Said {
  readonly id: string;
  readonly name: string;
  readonly holds: string;
}

function placedWords(
  view: SideView,
  said: readonly Said[],
  spots: Spots,
  page: { readonly widthMm: number; readonly heightMm: number },
) {
  const middle = { x: page.widthMm / 2, y: page.heightMm / 2 };
  const lines = view.runs.map(({ fromStation, toStation }) => ({
    line: { a: spots.get(fromStation)!, b: spots.get(toStation)! },
    halfMm: 0.6,
    isCrossable: true,
  }));
  const rings = [...spots.values()].map(({ x, y }) => ({
    x: x - RING_MM,
    y: y - RING_MM,
    width: 2 * RING_MM,
    height: 2 * RING_MM,
  }));
  const boxes = placeBlocks(
    view.runs.map(({ run, fromStation, toStation }) => ({
      id: `run ${run}`,
      anchor: between(spots.get(fromStation)!, spots.get(toStation)!),
      towardsDeg: -90,
      offMm: 0,
      hasLeader: false,
      ...BOX,
    })),
    { lines: [], rectangles: rings },
    { leftMm: 1, rightMm: page.widthMm - 1, reachMm: BOX_REACH_MM },
  ).filter(({ isFree, y }) => isFree && y > 0);
  const names = placeBlocks(
    said.map(({ id, name, holds }) => {
      const anchor = spots.get(id)!;
      const away = Math.atan2(anchor.y - middle.y, anchor.x - middle.x);
      return {
        id,
        anchor,
        towardsDeg: (away * 180) / Math.PI,
        offMm: RING_MM + 0.8,
        widthMm: Math.max(measureTextMm(name, CAP_MM.text, 700), measureTextMm(holds, 2.2, 400)),
        heightMm: holds === "" ? LINE_PITCH_MM : 2 * LINE_PITCH_MM,
      };
    }),
    { lines, rectangles: [...rings, ...boxes] },
    { leftMm: 1, rightMm: page.widthMm - 1, reachMm: 40 },
  );
  return [...boxes, ...names];
}

const between = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });

/** As many names as a line holds; how many more there are. */
function listed(names: readonly string[]): string {
  let text = "";
  for (const [i, name] of names.entries()) {
    const next = text === "" ? name : `${text}, ${name}`;
    if (i > 0 && measureTextMm(next, 2.2, 400) > HOLDS_MM) return `${text} +${names.length - i}`;
    text = next;
  }
  return text;
}
