import type { TimeCurrent } from "@copperwright/engine";
import { logScale } from "../try/logScale.ts";

type Point = TimeCurrent["danger"][number]["lower"][number];

/** The sheet of logarithmic paper: where a current and a time lie on it, px. */
export interface PlotFrame {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (currentA: number) => number;
  readonly y: (timeS: number) => number;
}

const LEFT_PX = 70;
const RIGHT_PX = 14;
const TOP_PX = 12;
const BOTTOM_PX = 30;

export function plotFrame(
  { currentFromA, currentToA, timeFromS, timeToS }: TimeCurrent["axes"],
  widthPx: number,
  heightPx: number,
): PlotFrame {
  const amps = logScale(currentFromA, currentToA);
  const seconds = logScale(timeFromS, timeToS);
  const [left, right] = [LEFT_PX, widthPx - RIGHT_PX];
  const [top, bottom] = [TOP_PX, heightPx - BOTTOM_PX];
  return {
    widthPx,
    heightPx,
    left,
    right,
    top,
    bottom,
    x: (currentA) => left + (right - left) * amps.ratioOf(currentA),
    y: (timeS) => bottom - (bottom - top) * seconds.ratioOf(timeS),
  };
}

const at = ({ x, y }: PlotFrame, { currentA, timeS }: Point): string =>
  `${x(currentA).toFixed(1)} ${y(timeS).toFixed(1)}`;

export const linePath = (frame: PlotFrame, points: readonly Point[]): string =>
  points.length === 0 ? "" : `M${points.map((point) => at(frame, point)).join("L")}`;

/** Between two edges that run the same way. */
export function areaPath(
  frame: PlotFrame,
  lower: readonly Point[],
  upper: readonly Point[],
): string {
  if (lower.length === 0 || upper.length === 0) return "";
  return `${linePath(frame, lower)}L${[...upper]
    .reverse()
    .map((point) => at(frame, point))
    .join("L")}Z`;
}

/**
 * The fuse's band: from its fastest to its slowest, closed at the top where it need never open. Without a published fastest it reaches down to
 * the foot: it may open at once.
 */
export function bandPath(frame: PlotFrame, { band, axes }: TimeCurrent): string {
  const { fastest, slowest, carriesA, opensFromA } = band;
  const last = slowest.at(-1);
  if (last === undefined || opensFromA === null) return "";
  const top = axes.timeToS;
  const fromA = fastest[0]?.currentA ?? carriesA ?? axes.currentFromA;
  const lower =
    fastest.length > 0
      ? fastest
      : [
          { currentA: fromA, timeS: axes.timeFromS },
          { currentA: last.currentA, timeS: axes.timeFromS },
        ];
  return areaPath(
    frame,
    [{ currentA: fromA, timeS: top }, ...lower],
    [{ currentA: opensFromA, timeS: top }, ...slowest],
  );
}

/** Where a name is written along a curve, and how far it leans, degrees; null where the curve has no room on the paper. */
export function nameOnCurve(
  frame: PlotFrame,
  points: readonly Point[],
  share: number,
): { readonly x: number; readonly y: number; readonly turnDeg: number } | null {
  const inside = points
    .map(({ currentA, timeS }) => ({ x: frame.x(currentA), y: frame.y(timeS) }))
    .filter(({ x, y }) => x > frame.left && x < frame.right && y > frame.top && y < frame.bottom);
  if (inside.length < 3) return null;
  const k = Math.min(inside.length - 2, Math.max(1, Math.round(share * (inside.length - 1))));
  const [before, here, after] = [inside[k - 1]!, inside[k]!, inside[k + 1]!];
  const turnDeg = (Math.atan2(after.y - before.y, after.x - before.x) * 180) / Math.PI;
  return { ...here, turnDeg };
}

/** 1, 2 and 5 of every decade on the axis of current; where room is short the decades alone. */
export function currentTicks(
  { currentFromA, currentToA }: TimeCurrent["axes"],
  widthPx: number,
): readonly number[] {
  const ticks: number[] = [];
  const first = Math.floor(Math.log10(currentFromA));
  const steps = widthPx < 520 ? [1, 3] : [1, 2, 5];
  for (let power = first; 10 ** power <= currentToA * 1.001; power++) {
    for (const step of steps) {
      const tick = Number((step * 10 ** power).toPrecision(2));
      if (tick >= currentFromA * 0.999 && tick <= currentToA * 1.001) ticks.push(tick);
    }
  }
  return ticks;
}
