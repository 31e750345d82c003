import type { LossTable } from "./lossTable.ts";
import { REFERENCE_C } from "./physicalConstants.ts";
import type { HeatSource } from "./steadyOnPath.ts";

/** One lump with a heat source and a way out: C · dT/dt = I² · R20 · (1 + α · (T − 20)) − loss(T). */
export interface Lump extends HeatSource {
  readonly capacityJPerMK: number;
  readonly loss: LossTable;
}

export interface Moment {
  readonly timeS: number;
  readonly temperatureC: number;
  /**
   * What stopped the clock: the time asked for, the temperature asked for, `steady` (it settles at `temperatureC`
   * without ever meeting the temperature asked for; `timeS` is infinite), or `ceiling`, the end of the loss table,
   * beyond which the model was not asked.
   */
  readonly stoppedBy: "time" | "temperature" | "steady" | "ceiling";
}

/** A stretch of time within one cell of the loss table; net heat, W/m, is a straight line of temperature there. */
interface Leg {
  readonly fromC: number;
  readonly fromNetWPerM: number;
  readonly toC: number;
  readonly toNetWPerM: number;
  readonly capacityJPerMK: number;
}

/**
 * Follows a lump under one constant current until a time or a temperature, whichever comes first.
 *
 * Between two knots of the loss table the net heat n(T) is a straight line of slope s, so the passage is exact:
 * t = C/s · ln(n1/n0), T(t) = T0 + n0/s · (e^(s·t/C) − 1). Every knot is passed at most once: the table bounds the work.
 *
 * @param from.startC    °C, inside the table.
 * @param from.currentA  A.
 * @param until.timeS    s; Infinity to ask only where it settles, or when `reachC` is met.
 * @param until.reachC   °C; optional. Not met when the lump is moving away from it.
 */
export function follow(
  lump: Lump,
  from: { readonly startC: number; readonly currentA: number },
  until: { readonly timeS: number; readonly reachC?: number },
): Moment {
  const { temperaturesC: knots } = lump.loss;
  let cell = cellOf(knots, from.startC);
  let fromC = from.startC;
  let fromNetWPerM = netAt(lump, from.currentA, { cellIndex: cell, temperatureC: fromC });
  if (until.reachC === fromC) return { timeS: 0, temperatureC: fromC, stoppedBy: "temperature" };
  const rising = fromNetWPerM >= 0;
  if (!rising && fromC === knots[cell]) cell--;
  let spentS = 0;
  for (; cell >= 0 && cell + 1 < knots.length; cell += rising ? 1 : -1) {
    const toC = knots[rising ? cell + 1 : cell] as number;
    const toNetWPerM = netAt(lump, from.currentA, { cellIndex: cell, temperatureC: toC });
    const leg = { fromC, fromNetWPerM, toC, toNetWPerM, capacityJPerMK: lump.capacityJPerMK };
    const leftS = until.timeS - spentS;
    const reachC = until.reachC;
    if (reachC !== undefined && isBetween(reachC, fromC, toC)) {
      const reachS = passageS(leg, reachC);
      if (reachS <= leftS && reachS < Number.POSITIVE_INFINITY) {
        return { timeS: spentS + reachS, temperatureC: reachC, stoppedBy: "temperature" };
      }
    }
    const wholeS = passageS(leg, toC);
    if (wholeS >= leftS) return endOfTime(leg, leftS, until.timeS);
    spentS += wholeS;
    fromC = toC;
    fromNetWPerM = toNetWPerM;
  }
  return { timeS: spentS, temperatureC: fromC, stoppedBy: "ceiling" };
}

function netAt(
  lump: Lump,
  currentA: number,
  at: { readonly cellIndex: number; readonly temperatureC: number },
): number {
  const { temperaturesC, lossesWPerM } = lump.loss;
  const lowC = temperaturesC[at.cellIndex] as number;
  const highC = temperaturesC[at.cellIndex + 1] as number;
  const share = (at.temperatureC - lowC) / (highC - lowC);
  const lossWPerM =
    (lossesWPerM[at.cellIndex] as number) * (1 - share) +
    (lossesWPerM[at.cellIndex + 1] as number) * share;
  const ohmPerM = lump.ohmPerM20 * (1 + lump.alphaPerK * (at.temperatureC - REFERENCE_C));
  return currentA * currentA * ohmPerM - lossWPerM;
}

/** Time from the start of a leg to a temperature on it; infinite where the net heat dies out on the way. */
function passageS(leg: Leg, toC: number): number {
  const riseK = toC - leg.fromC;
  if (riseK === 0) return 0;
  const slope = (leg.toNetWPerM - leg.fromNetWPerM) / (leg.toC - leg.fromC);
  const toNetWPerM = leg.fromNetWPerM + slope * riseK;
  if (leg.fromNetWPerM === 0 || toNetWPerM / leg.fromNetWPerM <= 0) return Number.POSITIVE_INFINITY;
  const growth = (slope * riseK) / leg.fromNetWPerM;
  // ln(1 + g)/g → 1 as the net heat becomes constant.
  const mean = growth === 0 ? 1 : Math.log1p(growth) / growth;
  return ((leg.capacityJPerMK * riseK) / leg.fromNetWPerM) * mean;
}

function endOfTime(leg: Leg, leftS: number, timeS: number): Moment {
  const slope = (leg.toNetWPerM - leg.fromNetWPerM) / (leg.toC - leg.fromC);
  if (leftS === Number.POSITIVE_INFINITY) {
    const temperatureC = leg.fromNetWPerM === 0 ? leg.fromC : leg.fromC - leg.fromNetWPerM / slope;
    return { timeS: leftS, temperatureC, stoppedBy: "steady" };
  }
  const growth = (slope * leftS) / leg.capacityJPerMK;
  const mean = growth === 0 ? 1 : Math.expm1(growth) / growth;
  const riseK = ((leg.fromNetWPerM * leftS) / leg.capacityJPerMK) * mean;
  return { timeS, temperatureC: leg.fromC + riseK, stoppedBy: "time" };
}

function isBetween(x: number, a: number, b: number): boolean {
  return x >= Math.min(a, b) && x <= Math.max(a, b);
}

/** The last cell that begins at or below a temperature. */
function cellOf(knots: readonly number[], temperatureC: number): number {
  const last = knots.length - 1;
  if (!(temperatureC >= (knots[0] as number) && temperatureC <= (knots[last] as number))) {
    throw new Error(`${temperatureC} °C is outside the loss table`);
  }
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((knots[middle] as number) <= temperatureC) low = middle;
    else high = middle;
  }
  return low;
}
