import {
  type AreaMm,
  CAP_MM,
  LINE_MM,
  type Mark,
  type PointMm,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { Balance } from "../../supply/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";
import { plotGround, tickFor, upTo } from "./plotGround.ts";

/** Amps against speed: what the source can give with its band, what is drawn, and where the two meet. */
export function balancePlot(balance: Balance, whole: AreaMm): readonly Mark[] {
  const { curve: line, bandRatio, demandA, balanceRpm } = balance;
  const speedMax = Math.max(...line.map(({ speedRpm }) => speedRpm));
  const currentMax = Math.max(
    demandA,
    ...line.map(({ availableA }) => availableA * (1 + bandRatio)),
  );
  const xTick = tickFor(speedMax);
  const yTick = tickFor(currentMax);
  const ground = plotGround(
    whole,
    { name: "engine speed, rpm", min: 0, max: upTo(speedMax, xTick), tickRatio: xTick },
    {
      name: `A at ${printQuantity(balance.atV, "V")}`,
      min: 0,
      max: upTo(currentMax, yTick),
      tickRatio: yTick,
    },
  );
  const { at } = ground;
  const curve = (ratio: number): PointMm[] =>
    line.map(({ speedRpm, availableA }) => at(speedRpm, ratio * availableA));
  const band: Mark = {
    kind: "polyline",
    points: [...curve(1 + bandRatio), ...curve(1 - bandRatio).reverse()],
    closed: true,
    fill: "pale",
    stroke: { widthMm: LINE_MM.leader, colour: "verdigris", dashMm: [1.5, 1] },
  };
  const given: Mark = {
    kind: "polyline",
    points: curve(1),
    stroke: { widthMm: LINE_MM.frame, colour: "verdigris" },
  };
  const [left, right] = [at(0, demandA), at(upTo(speedMax, xTick), demandA)];
  const drawn: Mark = {
    kind: "line",
    from: left,
    to: right,
    stroke: { widthMm: LINE_MM.frame, colour: "copper" },
  };
  const last = at(line.at(-1)!.speedRpm, line.at(-1)!.availableA);
  const marks: Mark[] = [
    band,
    ...ground.marks,
    given,
    drawn,
    named("it can give", last.xMm, last.yMm - 2, "end"),
    named(`is drawn ${printQuantity(demandA, "A")}`, left.xMm + 2, left.yMm - 1.5, "start"),
  ];
  return balanceRpm === null
    ? marks
    : [...marks, ...meeting(at(balanceRpm, demandA), at(balanceRpm, 0), balanceRpm)];
}

const named = (text: string, xMm: number, yMm: number, anchor: "start" | "end"): Mark => ({
  ...textMark(text, xMm, yMm, TEXT_STYLE.text, anchor),
  onGround: true,
});

/** Speeds are told to ten: nothing here is known better. */
const TOLD_RPM = 10;

function meeting(here: PointMm, foot: PointMm, speedRpm: number): readonly Mark[] {
  const told = Math.ceil(speedRpm / TOLD_RPM) * TOLD_RPM;
  // Under the point where there is room above the axis and its figures, else over it.
  const isLow = foot.yMm - here.yMm < 2 * CAP_MM.text + 3;
  return [
    {
      kind: "line",
      from: here,
      to: foot,
      stroke: { widthMm: LINE_MM.detail, colour: "ink", dashMm: [4, 1, 1, 1] },
    },
    {
      kind: "circle",
      centre: here,
      radiusMm: 1.5,
      fill: "ground",
      stroke: { widthMm: LINE_MM.symbol, colour: "ink" },
    },
    {
      ...textMark(
        `balance ${printNumber(told, 0)} rpm`,
        here.xMm + 3,
        isLow ? here.yMm - 2.5 : here.yMm + CAP_MM.text + 2.5,
        TEXT_STYLE.strong,
      ),
      onGround: true,
    },
  ];
}
