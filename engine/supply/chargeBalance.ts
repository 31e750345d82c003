import { chargeVolts } from "./chargeVolts.ts";
import { availableA, type ChargingSource, givenA } from "./chargingSource.ts";
import { demandAt } from "./demandCurve.ts";
import { settledVolts } from "./settledVolts.ts";
import type { ModelState, SupplyModel } from "./supplyModel.ts";

/** One speed of a balance. */
export interface BalanceRow {
  readonly speedRpm: number;
  /** What the sources could give at the balance volts, with the ends of their band. */
  readonly availableA: number;
  readonly availableLowA: number;
  readonly availableHighA: number;
  /** Available less demand at the same volts: what is left over, or what the battery has to give (negative). */
  readonly surplusA: number;
  /** Volts the posts settle at with a battery three quarters full. */
  readonly settledV: number;
  /** Into the battery there, A. */
  readonly batteryA: number;
}

/** Output against demand of one lighting state. */
export interface Balance {
  readonly state: string;
  readonly name: string;
  readonly atV: number;
  readonly demandA: number;
  readonly demandW: number;
  readonly rows: readonly BalanceRow[];
  /** What the sources could give, close enough together to be drawn. */
  readonly curve: readonly Pick<BalanceRow, "speedRpm" | "availableA">[];
  readonly bandRatio: number;
  /** Least speed at which the source gives what is drawn; null: none up to the fastest looked at, or output not known. */
  readonly balanceRpm: number | null;
  /** The same with the source at the strong and the weak end of its band. */
  readonly balanceLowRpm: number | null;
  readonly balanceHighRpm: number | null;
  /** Why there is no source to compare with. */
  readonly why: string | null;
}

/** Charge the settled volts are told for. */
const TOLD_CHARGE_RATIO = 0.75;
/** Speeds of the rows, as shares of the fastest output point, and how far above it is looked. */
const ROW_RATIOS = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.2] as const;
const MOST_RATIO = 2;

/**
 * Balance of one lighting state at steady volts.
 *
 * @param atV  volts at the battery posts; absent: the table's charging volts.
 */
export function chargeBalance(
  model: SupplyModel,
  state: ModelState,
  atV = chargeVolts(model.job),
): Balance {
  const known = state.sources.filter(({ line }) => line !== null);
  const demandA = demandAt(state.demand, atV);
  const fastestRpm = Math.max(0, ...known.map((source) => source.fastestRpm ?? 0));
  const why = known.length > 0 ? null : (state.sources[0]?.why ?? "nothing charges the battery");
  const speeds = why === null ? ROW_RATIOS.map((ratio) => Math.round(ratio * fastestRpm)) : [];
  const balance = (shareRatio: number): number | null =>
    why === null
      ? balanceSpeedRpm(known, {
          v: atV,
          demandA,
          mostRpm: MOST_RATIO * fastestRpm,
          shareRatio,
        })
      : null;
  const bandRatio = Math.max(0, ...known.map((one) => one.bandRatio));
  return {
    state: state.id,
    name: state.name,
    atV,
    demandA,
    demandW: demandA * atV,
    rows: speeds.map((speedRpm) => balanceRow(model, state, { speedRpm, atV, demandA, bandRatio })),
    curve: why === null ? curveOf(known, fastestRpm, atV) : [],
    bandRatio,
    balanceRpm: balance(1),
    balanceLowRpm: balance(1 + bandRatio),
    balanceHighRpm: balance(1 - bandRatio),
    why,
  };
}

const CURVE_POINTS_COUNT = 96;

function curveOf(
  sources: readonly ChargingSource[],
  fastestRpm: number,
  v: number,
): Balance["curve"] {
  return Array.from({ length: CURVE_POINTS_COUNT + 1 }, (_, k) => {
    const speedRpm = (ROW_RATIOS.at(-1)! * fastestRpm * k) / CURVE_POINTS_COUNT;
    return { speedRpm, availableA: sumOf(sources, speedRpm, v) };
  });
}

function balanceRow(
  model: SupplyModel,
  state: ModelState,
  at: {
    readonly speedRpm: number;
    readonly atV: number;
    readonly demandA: number;
    readonly bandRatio: number;
  },
): BalanceRow {
  const sumA = sumOf(state.sources, at.speedRpm, at.atV);
  const settledV = settledVolts(model.battery, state, at.speedRpm, TOLD_CHARGE_RATIO);
  const givesA = state.sources.reduce((sum, one) => sum + givenA(one, at.speedRpm, settledV), 0);
  return {
    speedRpm: at.speedRpm,
    availableA: sumA,
    availableLowA: sumA * (1 - at.bandRatio),
    availableHighA: sumA * (1 + at.bandRatio),
    surplusA: sumA - at.demandA,
    settledV,
    batteryA: givesA - demandAt(state.demand, settledV),
  };
}

const sumOf = (sources: readonly ChargingSource[], speedRpm: number, v: number): number =>
  sources.reduce((sum, one) => sum + availableA(one, speedRpm, v), 0);

/** Least speed at which the sources give the demand, by halving: output rises with speed. */
function balanceSpeedRpm(
  sources: readonly ChargingSource[],
  at: {
    readonly v: number;
    readonly demandA: number;
    readonly mostRpm: number;
    readonly shareRatio: number;
  },
): number | null {
  const gives = (speedRpm: number): boolean =>
    at.shareRatio * sumOf(sources, speedRpm, at.v) >= at.demandA;
  if (!gives(at.mostRpm)) return null;
  let [low, high] = [0, at.mostRpm];
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (low + high) / 2;
    if (gives(middle)) high = middle;
    else low = middle;
  }
  return high;
}

const HALVINGS = 40;
