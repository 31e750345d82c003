import {
  type AreaMm,
  type ColourToken,
  LINE_MM,
  type Mark,
  type PointMm,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { NamedRide } from "../../supply/index.ts";
import { printNumber } from "../../units/index.ts";
import { plotGround, tickFor, upTo } from "./plotGround.ts";

const MINUTE_S = 60;
const MOST_POINTS = 400;
const COLOURS: readonly ColourToken[] = ["verdigris", "copper", "advise", "ink"];
const DASHES: readonly (readonly number[] | undefined)[] = [
  undefined,
  [5, 1.5],
  [2, 1],
  [6, 1, 1, 1],
];

/** Charge of the battery over rides of about an hour, each curve named where it ends. */
export function ridePlot(rides: readonly NamedRide[], whole: AreaMm): readonly Mark[] {
  const minutes = Math.max(...rides.map(({ durationS }) => durationS)) / MINUTE_S;
  const lowest = Math.min(...rides.map(({ leastPercent }) => leastPercent));
  const highest = Math.max(...rides.flatMap(({ rows }) => rows.map((row) => row.chargePercent)));
  const yTick = tickFor(Math.max(highest - lowest, LEAST_SPAN_PERCENT));
  const xTick = tickFor(minutes);
  const ground = plotGround(
    whole,
    { name: "minutes ridden", min: 0, max: upTo(minutes, xTick), tickRatio: xTick },
    {
      name: "charge, %",
      min: Math.max(0, Math.floor(lowest / yTick) * yTick),
      max: Math.min(100, upTo(highest, yTick)),
      tickRatio: yTick,
    },
  );
  const marks: Mark[] = [...ground.marks];
  const ends: number[] = [];
  // Highest end first.
  const ordered = rides.toSorted((a, b) => b.endPercent - a.endPercent);
  ordered.forEach((ride, k) => {
    const points = pointsOf(ride, ground.at);
    marks.push({
      kind: "polyline",
      points,
      stroke: {
        widthMm: LINE_MM.frame,
        colour: COLOURS[k % COLOURS.length]!,
        dashMm: DASHES[k % DASHES.length],
      },
    });
    const last = points.at(-1)!;
    // A name whose curve ends close under another's goes below its own.
    const hasRoom = last.xMm < whole.xMm + whole.widthMm - NAME_MM;
    const isCrowded = ends.some((yMm) => Math.abs(yMm - last.yMm) < 2 * NAME_PITCH_MM);
    ends.push(last.yMm);
    const text = `${ride.ride} ${printNumber(ride.endPercent, 0)} %`;
    const yMm = isCrowded ? last.yMm + NAME_PITCH_MM : last.yMm - 1.5;
    const [xMm, anchor] = hasRoom
      ? [last.xMm + 1.5, "start" as const]
      : [last.xMm - 1, "end" as const];
    marks.push({ ...textMark(text, xMm, yMm, TEXT_STYLE.text, anchor), onGround: true });
  });
  return marks;
}

const LEAST_SPAN_PERCENT = 10;
const NAME_PITCH_MM = 5;
/** Room a name takes at the right of its curve. */
const NAME_MM = 28;

function pointsOf(
  { rows, durationS, endPercent }: NamedRide,
  at: (x: number, y: number) => PointMm,
): PointMm[] {
  const every = Math.max(1, Math.ceil(rows.length / MOST_POINTS));
  const kept = rows.filter((_, k) => k % every === 0);
  return [
    ...kept.map((row) => at(row.timeS / MINUTE_S, row.chargePercent)),
    at(durationS / MINUTE_S, endPercent),
  ];
}
