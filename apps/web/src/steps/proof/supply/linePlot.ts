/** An axis: from where to where, a rule every so much. */
export interface PlotAxis {
  readonly from: number;
  readonly to: number;
  readonly tick: number;
}

/** Ruled paper: where a figure across and a figure up lie on it, px. */
export interface PlotPaper {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly across: PlotAxis;
  readonly up: PlotAxis;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

const LEFT_PX = 52;
const RIGHT_PX = 24;
const TOP_PX = 30;
const BOTTOM_PX = 46;

export function plotPaper(
  across: PlotAxis,
  up: PlotAxis,
  widthPx: number,
  heightPx: number,
): PlotPaper {
  const [left, right] = [LEFT_PX, widthPx - RIGHT_PX];
  const [top, bottom] = [TOP_PX, heightPx - BOTTOM_PX];
  return {
    widthPx,
    heightPx,
    left,
    right,
    top,
    bottom,
    across,
    up,
    x: (value) => left + ((right - left) * (value - across.from)) / (across.to - across.from),
    y: (value) => bottom - ((bottom - top) * (value - up.from)) / (up.to - up.from),
  };
}

/** An axis that holds both values, with rules 1, 2 or 5 times a power of ten apart, at most `most` of them. */
export function axisOf(from: number, to: number, most = 7): PlotAxis {
  const span = Math.max(to - from, Number.EPSILON);
  const power = 10 ** Math.floor(Math.log10(span / most));
  const tick = [1, 2, 5, 10].map((step) => step * power).find((one) => span / one <= most)!;
  const first = Math.floor(from / tick + 1e-9) * tick;
  return { from: first, to: Math.max(first + tick, Math.ceil(to / tick - 1e-9) * tick), tick };
}

export function ticksOf({ from, to, tick }: PlotAxis): readonly number[] {
  const count = Math.round((to - from) / tick);
  return Array.from({ length: count + 1 }, (_, k) => from + k * tick);
}

/** Decimals that tell one rule from the next. */
export const tickDecimals = ({ tick }: PlotAxis): number =>
  Math.max(0, -Math.floor(Math.log10(tick) + 1e-9));

export type PlotPoint = readonly [across: number, up: number];

export const linePath = ({ x, y }: PlotPaper, points: readonly PlotPoint[]): string =>
  points.length === 0
    ? ""
    : `M${points.map(([a, b]) => `${x(a).toFixed(1)} ${y(b).toFixed(1)}`).join("L")}`;

/** Names at the right ends of curves, moved apart so that none lies on another; the order of heights stays. */
export function spreadApart(
  heights: readonly number[],
  pitchPx: number,
  [topPx, bottomPx]: readonly [number, number],
): readonly number[] {
  const order = heights.map((_, k) => k).sort((a, b) => heights[a]! - heights[b]!);
  const placed = [...heights];
  let last = topPx - pitchPx;
  for (const k of order) {
    placed[k] = Math.max(heights[k]!, last + pitchPx);
    last = placed[k];
  }
  let next = bottomPx + pitchPx;
  for (const k of order.toReversed()) {
    placed[k] = Math.min(placed[k]!, next - pitchPx);
    next = placed[k];
  }
  return placed;
}
