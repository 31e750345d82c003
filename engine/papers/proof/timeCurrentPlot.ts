import {
  type AreaMm,
  CAP_MM,
  LINE_MM,
  type Mark,
  measureTextMm,
  type PointMm,
  type Stroke,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { TimeCurrent, WireLimitCurve } from "../../prove/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";
import { clipCurve } from "./clipCurve.ts";
import { type CurveLabel, curveLabels, placesAlong } from "./curveLabels.ts";
import { hatch } from "./hatch.ts";
import { type LogGround, logGround } from "./logGround.ts";

/** Makes of wire drawn, the lowest first: the others lie above and are listed. */
const MOST_FED = 4;
const MOST_TOUCHED = 1;

/** Time against current on logarithmic paper: the band of a fuse, how long its wires may carry how much, and where a fault could burn one. */
export function timeCurrentPlot(one: TimeCurrent, whole: AreaMm): readonly Mark[] {
  const { axes } = one;
  const ground = logGround(
    whole,
    {
      name: "current through the fuse, A",
      from: axes.currentFromA,
      to: axes.currentToA,
      told: plain,
    },
    { name: "time", from: axes.timeFromS, to: axes.timeToS, told: spell },
  );
  const band = bandMarks(one, ground);
  const wires = wireMarks(one, ground);
  const currents = currentMarks(one, ground);
  const labels = [...band.labels, ...wires.labels, ...dangerLabels(one, ground)];
  return [
    ...band.fill,
    ...ground.marks,
    ...dangerMarks(one, ground),
    ...currents.lines,
    ...band.lines,
    ...wires.lines,
    ...currents.words,
    ...curveLabels(labels, ground.inner, currents.taken),
  ];
}

const plain = (value: number): string => printNumber(value, value < 1 ? 1 : 0);

const MINUTE_S = 60;
const HOUR_S = 3600;

/** A time as it is said: "0.1 s", "2 min", "3 h". */
export function spell(timeS: number): string {
  const hours = timeS / HOUR_S;
  if (hours >= 1) return `${printNumber(hours, hours < 10 && hours % 1 !== 0 ? 1 : 0)} h`;
  if (timeS >= 2 * MINUTE_S) return `${printNumber(timeS / MINUTE_S, 0)} min`;
  return `${printNumber(timeS, timeS < 0.1 ? 2 : timeS < 1 ? 1 : 0)} s`;
}

interface Drawn {
  readonly fill: readonly Mark[];
  readonly lines: readonly Mark[];
  readonly labels: readonly CurveLabel[];
}

interface Timed {
  readonly currentA: number;
  readonly timeS: number;
}

const curveOf = ({ at }: LogGround, points: readonly Timed[]): PointMm[] =>
  points.map(({ currentA, timeS }) => at(currentA, timeS));

const line = (points: readonly PointMm[], stroke: Stroke): Mark => ({
  kind: "polyline",
  points,
  stroke,
});

function bandMarks({ band, axes, name }: TimeCurrent, ground: LogGround): Drawn {
  const { inner } = ground;
  const top = (currentA: number): Timed => ({ currentA, timeS: 10 * axes.timeToS });
  const foot = (currentA: number): Timed => ({ currentA, timeS: axes.timeFromS / 10 });
  const stroke: Stroke = { widthMm: LINE_MM.frame, colour: "verdigris" };
  const edges = [band.slowest, band.fastest].map((points) => {
    const [first, last] = [points[0], points.at(-1)];
    if (first === undefined || last === undefined) return [];
    const ends = last.currentA < axes.currentToA * (1 - 1e-9) ? [foot(last.currentA)] : [];
    return clipCurve(curveOf(ground, [top(first.currentA), ...points, ...ends]), inner);
  });
  const [slowest, fastest] = edges as [readonly PointMm[], readonly PointMm[]];
  const usual = band.slowest.filter(({ published }) => !published);
  const sure = band.slowest.filter(({ published }) => published);
  const isGuessed = usual.length > 0 && sure.length > 0;
  const solid = isGuessed
    ? clipCurve(curveOf(ground, [top(sure[0]!.currentA), ...sure]), inner)
    : slowest;
  const beyond = isGuessed ? clipCurve(curveOf(ground, [sure.at(-1)!, ...usual]), inner) : [];
  const labels: CurveLabel[] = [
    { text: `${name}: open by now`, at: placesAlong(slowest, 0.55), colour: "verdigris" },
  ];
  if (fastest.length > 0) {
    labels.push({ text: "may open from here", at: placesAlong(fastest, 0.6), colour: "verdigris" });
  }
  const fill: Mark[] =
    fastest.length === 0 || slowest.length === 0
      ? []
      : [
          {
            kind: "polyline",
            points: [...fastest, ...[...slowest].reverse()],
            closed: true,
            fill: "pale",
          },
        ];
  return {
    fill,
    lines: [
      ...(solid.length > 1 ? [line(solid, stroke)] : []),
      ...(beyond.length > 1 ? [line(beyond, { ...stroke, dashMm: [2, 1] })] : []),
      ...(fastest.length > 1 ? [line(fastest, { ...stroke, widthMm: LINE_MM.detail })] : []),
    ],
    labels,
  };
}

/** Makes worth a curve: the lowest of those the fuse feeds, and the lowest of those a touch would feed. */
export function drawnWires({ wires }: TimeCurrent): readonly WireLimitCurve[] {
  const hasCurve = wires.filter(({ startC }) => startC !== null);
  return [
    ...hasCurve.filter(({ onlyTouched }) => !onlyTouched).slice(0, MOST_FED),
    ...hasCurve.filter(({ onlyTouched }) => onlyTouched).slice(0, MOST_TOUCHED),
  ];
}

function wireMarks(one: TimeCurrent, ground: LogGround): Omit<Drawn, "fill"> {
  const wires = drawnWires(one);
  const curves = wires.map(({ foreverA, points }) =>
    clipCurve(
      curveOf(ground, [{ currentA: foreverA, timeS: 10 * one.axes.timeToS }, ...points]).filter(
        ({ xMm }) => xMm >= ground.inner.xMm,
      ),
      ground.inner,
    ),
  );
  return {
    lines: curves
      .filter((curve) => curve.length > 1)
      .map((curve, k) =>
        line(curve, {
          widthMm: LINE_MM.symbol,
          colour: "copper",
          ...(wires[k]!.onlyTouched ? { dashMm: [2.5, 1.2] } : {}),
        }),
      ),
    labels: curves.map((curve, k) => ({
      text: wireLabel(wires[k]!),
      at: placesAlong(curve, 0.25 + 0.12 * k),
      colour: "copper" as const,
    })),
  };
}

export const wireLabel = ({ areaMm2, insulation, wire, onlyTouched }: WireLimitCurve): string =>
  `${printNumber(areaMm2, areaMm2 < 10 ? 1 : 0)} mm² ${insulation.toUpperCase()}, ${onlyTouched ? "if touched, " : ""}${wire}`;

const DANGER: Stroke = { widthMm: LINE_MM.detail, colour: "stop" };

function dangerMarks({ danger }: TimeCurrent, ground: LogGround): readonly Mark[] {
  return danger.flatMap(({ lower, upper }) => {
    const [low, high] = [curveOf(ground, lower), curveOf(ground, upper)];
    if (low.length < 2) return [];
    return [
      ...hatch(high, low, DANGER),
      line([...high, ...[...low].reverse(), high[0]!], { ...DANGER, dashMm: [1.5, 1] }),
    ];
  });
}

function dangerLabels({ danger }: TimeCurrent, ground: LogGround): readonly CurveLabel[] {
  const [first] = danger;
  if (first === undefined) return [];
  const text = "danger: the fuse may outlast the wire";
  return [{ text, at: placesAlong(curveOf(ground, first.lower), 0.5), colour: "stop" }];
}

interface NamedLines {
  readonly lines: readonly Mark[];
  readonly words: readonly Mark[];
  readonly taken: readonly AreaMm[];
}

/** Two upright lines nearer than this are named apart, one at the foot and one at the top, mm. */
const NEAR_MM = 5;

/** Currents that can really flow, each an upright line with its name along it. */
function currentMarks({ currents, axes }: TimeCurrent, ground: LogGround): NamedLines {
  const { inner } = ground;
  const footMm = inner.yMm + inner.heightMm;
  const shown = currents.filter(
    ({ currentA }) => currentA >= axes.currentFromA && currentA <= axes.currentToA,
  );
  let lastXMm = Number.NEGATIVE_INFINITY;
  let isLow = false;
  const named = shown.map(({ kind, currentA, pin }) => {
    const { xMm } = ground.at(currentA, axes.timeFromS);
    isLow = !(xMm - lastXMm < NEAR_MM && isLow);
    lastXMm = xMm;
    const where = pin === null ? "" : ` at ${pin}`;
    const text = `${kind}${where}: ${printQuantity(currentA, "A")}`;
    const longMm = measureTextMm(text, CAP_MM.fine, TEXT_STYLE.fine.weight);
    const startMm = isLow ? footMm - 2 : inner.yMm + 2 + longMm;
    const line: Mark = {
      kind: "line",
      from: { xMm, yMm: inner.yMm },
      to: { xMm, yMm: footMm },
      stroke: { widthMm: LINE_MM.detail, colour: "ink", dashMm: [4, 1, 1, 1] },
    };
    const word: Mark = {
      ...textMark(text, xMm - 0.9, startMm, TEXT_STYLE.fine),
      turnDeg: -90,
      onGround: true,
    };
    const heightMm = longMm + 1;
    const box = { xMm: xMm - 3.2, yMm: startMm - longMm - 0.5, widthMm: 3.2, heightMm };
    return { line, word, box };
  });
  return {
    lines: named.map(({ line }) => line),
    words: named.map(({ word }) => word),
    taken: named.map(({ box }) => box),
  };
}
