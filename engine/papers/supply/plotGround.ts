import {
  type AreaMm,
  CAP_MM,
  LINE_MM,
  type Mark,
  type PointMm,
  point,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import { printNumber } from "../../units/index.ts";

/** One axis: what it counts, from where to where, a line every so much. */
export interface PlotAxis {
  readonly name: string;
  readonly min: number;
  readonly max: number;
  readonly tickRatio: number;
}

/** A ruled ground with the way from figures to paper. */
export interface PlotGround {
  readonly marks: readonly Mark[];
  readonly at: (x: number, y: number) => PointMm;
  readonly inner: AreaMm;
}

const LEFT_MM = 14;
const BOTTOM_MM = 12;
const TOP_MM = 7;
const RIGHT_MM = 4;

/** Rules, figures and axis names of a plot laid into an area. */
export function plotGround(whole: AreaMm, across: PlotAxis, up: PlotAxis): PlotGround {
  const inner: AreaMm = {
    xMm: whole.xMm + LEFT_MM,
    yMm: whole.yMm + TOP_MM,
    widthMm: whole.widthMm - LEFT_MM - RIGHT_MM,
    heightMm: whole.heightMm - TOP_MM - BOTTOM_MM,
  };
  const at = (x: number, y: number): PointMm =>
    point(
      inner.xMm + (inner.widthMm * (x - across.min)) / (across.max - across.min),
      inner.yMm + inner.heightMm - (inner.heightMm * (y - up.min)) / (up.max - up.min),
    );
  const marks: Mark[] = [];
  for (const value of ticksOf(across)) {
    const foot = at(value, up.min);
    marks.push(ruled(foot, at(value, up.max), value === across.min));
    marks.push(
      textMark(
        printNumber(value, decimalsOf(across)),
        foot.xMm,
        foot.yMm + 4,
        TEXT_STYLE.fine,
        "middle",
      ),
    );
  }
  for (const value of ticksOf(up)) {
    const side = at(across.min, value);
    marks.push(ruled(side, at(across.max, value), value === 0 || value === up.min));
    const label = printNumber(value, decimalsOf(up));
    marks.push(textMark(label, side.xMm - 1.5, side.yMm + CAP_MM.fine / 2, TEXT_STYLE.fine, "end"));
  }
  const middleMm = inner.xMm + inner.widthMm / 2;
  const footMm = inner.yMm + inner.heightMm + 9;
  marks.push(textMark(across.name, middleMm, footMm, TEXT_STYLE.text, "middle"));
  marks.push(textMark(up.name, whole.xMm, whole.yMm + CAP_MM.text, TEXT_STYLE.text));
  return { marks, at, inner };
}

/** Whole figures where the rules stand whole units apart. */
const decimalsOf = ({ tickRatio }: PlotAxis): number =>
  Math.max(0, -Math.floor(Math.log10(tickRatio)));

function ticksOf({ min, max, tickRatio }: PlotAxis): readonly number[] {
  const first = Math.ceil(min / tickRatio - 1e-9);
  const last = Math.floor(max / tickRatio + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, k) => (first + k) * tickRatio);
}

const ruled = (from: PointMm, to: PointMm, isAxis: boolean): Mark => ({
  kind: "line",
  from,
  to,
  stroke: isAxis
    ? { widthMm: LINE_MM.symbol, colour: "ink" }
    : { widthMm: LINE_MM.leader, colour: "rule" },
});

/** A step that leaves between four and eight rules over a span: 1, 2 or 5 times a power of ten. */
export function tickFor(total: number): number {
  const rough = total / 6;
  const power = 10 ** Math.floor(Math.log10(rough));
  const steps = [1, 2, 5, 10].map((one) => one * power);
  return steps.find((step) => total / step <= 8) ?? 10 * power;
}

/** The next rule above a value. */
export const upTo = (value: number, tickRatio: number): number =>
  Math.max(tickRatio, Math.ceil(value / tickRatio - 1e-9) * tickRatio);
