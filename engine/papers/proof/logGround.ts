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

/** An axis on logarithmic paper. */
export interface LogAxis {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** How a figure on it is written. */
  readonly told: (value: number) => string;
}

/** Ruled logarithmic paper with the way from figures to millimetres. */
export interface LogGround {
  readonly marks: readonly Mark[];
  readonly at: (x: number, y: number) => PointMm;
  readonly inner: AreaMm;
}

const LEFT_MM = 15;
const BOTTOM_MM = 12;
const TOP_MM = 7;
const RIGHT_MM = 4;
/** Rules nearer than this to the one before get no figure, mm. */
const FIGURE_GAP_MM = 9;

export function logGround(whole: AreaMm, across: LogAxis, up: LogAxis): LogGround {
  const inner: AreaMm = {
    xMm: whole.xMm + LEFT_MM,
    yMm: whole.yMm + TOP_MM,
    widthMm: whole.widthMm - LEFT_MM - RIGHT_MM,
    heightMm: whole.heightMm - TOP_MM - BOTTOM_MM,
  };
  const share = ({ from, to }: LogAxis, value: number): number =>
    Math.log(value / from) / Math.log(to / from);
  const at = (x: number, y: number): PointMm =>
    point(
      inner.xMm + inner.widthMm * share(across, x),
      inner.yMm + inner.heightMm * (1 - share(up, y)),
    );
  const marks: Mark[] = [];
  let lastXMm = Number.NEGATIVE_INFINITY;
  for (const { value, isWhole } of rulesOf(across)) {
    const foot = at(value, up.from);
    marks.push(ruled(foot, at(value, up.to), isWhole));
    if (foot.xMm - lastXMm < FIGURE_GAP_MM) continue;
    lastXMm = foot.xMm;
    const text = across.told(value);
    marks.push(textMark(text, foot.xMm, foot.yMm + 4, TEXT_STYLE.fine, "middle"));
  }
  for (const { value, isWhole } of rulesOf(up)) {
    const side = at(across.from, value);
    marks.push(ruled(side, at(across.to, value), isWhole));
    if (!isWhole) continue;
    const baseMm = side.yMm + CAP_MM.fine / 2;
    marks.push(textMark(up.told(value), side.xMm - 1.5, baseMm, TEXT_STYLE.fine, "end"));
  }
  const middleMm = inner.xMm + inner.widthMm / 2;
  const footMm = inner.yMm + inner.heightMm + 9;
  marks.push(
    { kind: "rect", area: inner, stroke: { widthMm: LINE_MM.symbol, colour: "ink" } },
    textMark(across.name, middleMm, footMm, TEXT_STYLE.text, "middle"),
    textMark(up.name, whole.xMm, whole.yMm + CAP_MM.text, TEXT_STYLE.text),
  );
  return { marks, at, inner };
}

interface Rule {
  readonly value: number;
  /** A whole decade. */
  readonly isWhole: boolean;
}

/** 1, 2 and 5 of every decade between the ends. */
function rulesOf({ from, to }: LogAxis): readonly Rule[] {
  const rules: Rule[] = [];
  for (let k = Math.floor(Math.log10(from)); k <= Math.ceil(Math.log10(to)); k++) {
    for (const step of [1, 2, 5]) {
      const value = Number(`${step}e${k}`);
      if (value < from * (1 - 1e-9) || value > to * (1 + 1e-9)) continue;
      rules.push({ value, isWhole: step === 1 });
    }
  }
  return rules;
}

const ruled = (from: PointMm, to: PointMm, isWhole: boolean): Mark => ({
  kind: "line",
  from,
  to,
  stroke: {
    widthMm: LINE_MM.leader,
    colour: "rule",
    ...(isWhole ? {} : { dashMm: [0.3, 1.4] }),
  },
});
