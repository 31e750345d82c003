import { type ChargedBattery, restV, storedJ } from "./batteryCharge.ts";
import { givenA } from "./chargingSource.ts";
import { demandAt } from "./demandCurve.ts";
import { chargeFallA } from "./peukertTimeS.ts";
import type { RideStep } from "./rideSteps.ts";
import { SECONDS_AN_HOUR } from "./secondsAnHour.ts";
import { settledVolts } from "./settledVolts.ts";
import type { ModelState, SupplyModel } from "./supplyModel.ts";
import { supplyRule } from "./supplyRule.ts";

/** One moment of a ride. */
export interface RideRow {
  readonly timeS: number;
  readonly speedRpm: number;
  readonly chargePercent: number;
  readonly v: number;
  readonly sourceA: number;
  readonly demandA: number;
  /** Into the battery, A. */
  readonly batteryA: number;
}

/** Where the energy of a ride went, J: source = loads + stored + loss, to `residualRatio` of the larger side. */
export interface RideEnergy {
  readonly sourceJ: number;
  readonly loadsJ: number;
  readonly storedJ: number;
  readonly batteryLossJ: number;
  readonly residualRatio: number;
}

export interface Ride {
  readonly rows: readonly RideRow[];
  readonly durationS: number;
  readonly startPercent: number;
  readonly endPercent: number;
  readonly leastPercent: number;
  readonly leastV: number;
  /** When the battery was empty, which ends the ride; null: never. */
  readonly emptyAtS: number | null;
  /** Pushed into it when it was full, which boils it dry. */
  readonly overchargeAh: number;
  readonly energy: RideEnergy;
}

/** Longest time over which volts and currents are held, s: the charge of the smallest battery hardly moves. */
const STEP_S = 10;
/** Parked, nothing happens but a drain: a step moves the charge by this share at most. */
const PARKED_STEP_S = 600;
const PARKED_SHARE_RATIO = 0.005;

/**
 * Charge of the battery over a ride. Over each step, volts and currents stand; the charge moves by I t, times the ampere-hour
 * efficiency while it rises and by Peukert's law while it falls. Losses are those of each step, the stored energy is the integral of the rest volts between first and last
 * charge: that they meet is a check of the steps and not a definition.
 *
 * @param parkedA  drawn while parked, A.
 * @throws where a step names a state the model does not have.
 */
export function simulateRide(
  model: SupplyModel,
  battery: ChargedBattery,
  steps: readonly RideStep[],
  { startRatio, parkedA }: { readonly startRatio: number; readonly parkedA: number },
): Ride {
  const states = new Map(model.states.map((state) => [state.id, state]));
  const efficiencyRatio = supplyRule("ah-efficiency");
  const capacityAs = battery.capacityAh * SECONDS_AN_HOUR;
  const rows: RideRow[] = [];
  let [timeS, charge, emptyAtS] = [0, startRatio, null as number | null];
  let [sourceJ, loadsJ, lossJ, least, leastV] = [0, 0, 0, startRatio, Number.POSITIVE_INFINITY];
  let overchargeAs = 0;
  ride: for (const step of steps) {
    const state = step.state === null ? null : stateOf(states, step.state);
    for (let leftS = step.durationS; leftS > 1e-9; ) {
      const now = momentOf(battery, state, step.speedRpm, charge, parkedA);
      const offeredA =
        now.batteryA > 0 ? efficiencyRatio * now.batteryA : -chargeFallA(battery, -now.batteryA);
      const longestS = Math.min(
        leftS,
        state === null ? parkedStepS(battery.capacityAh, offeredA) : STEP_S,
      );
      // A step ends where the battery is empty; a full one takes current all the same and gasses.
      const forS = offeredA < 0 ? Math.min(longestS, (charge * capacityAs) / -offeredA) : longestS;
      const storesA = Math.min(offeredA, ((1 - charge) * capacityAs) / longestS);
      overchargeAs += (offeredA - storesA) * forS;
      rows.push({ timeS, speedRpm: step.speedRpm, chargePercent: 100 * charge, ...now });
      sourceJ += now.v * now.sourceA * forS;
      loadsJ += now.v * now.demandA * forS;
      lossJ += (now.v * now.batteryA - restV(battery, charge) * storesA) * forS;
      charge = forS < longestS ? 0 : charge + (storesA * forS) / capacityAs;
      least = Math.min(least, charge);
      leastV = Math.min(leastV, now.v);
      timeS += forS;
      leftS -= forS;
      if (forS < longestS) {
        emptyAtS = timeS;
        break ride;
      }
    }
  }
  const gainedJ = storedJ(battery, charge) - storedJ(battery, startRatio);
  const residualJ = sourceJ - loadsJ - gainedJ - lossJ;
  const turnoverJ = Math.max(sourceJ, loadsJ, 1);
  return {
    rows,
    durationS: timeS,
    startPercent: 100 * startRatio,
    endPercent: 100 * charge,
    leastPercent: 100 * least,
    leastV,
    emptyAtS,
    overchargeAh: overchargeAs / SECONDS_AN_HOUR,
    energy: {
      sourceJ,
      loadsJ,
      storedJ: gainedJ,
      batteryLossJ: lossJ,
      residualRatio: Math.abs(residualJ) / turnoverJ,
    },
  };
}

const parkedStepS = (capacityAh: number, offeredA: number): number =>
  Math.min(
    PARKED_STEP_S,
    (PARKED_SHARE_RATIO * capacityAh * SECONDS_AN_HOUR) / Math.max(-offeredA, LEAST_DRAIN_A),
  );

/** A smaller drain hardly moves anything, A. */
const LEAST_DRAIN_A = 1e-3;

function stateOf(states: ReadonlyMap<string, ModelState>, id: string): ModelState {
  const state = states.get(id);
  if (state === undefined) throw new Error(`the machine has no lighting state ${id}`);
  return state;
}

type Moment = Pick<RideRow, "v" | "sourceA" | "demandA" | "batteryA">;

function momentOf(
  battery: ChargedBattery,
  state: ModelState | null,
  speedRpm: number,
  chargeRatio: number,
  parkedA: number,
): Moment {
  if (state === null) {
    const v = restV(battery, chargeRatio);
    return { v, sourceA: 0, demandA: parkedA, batteryA: -parkedA };
  }
  const v = settledVolts(battery, state, speedRpm, chargeRatio);
  const demandA = demandAt(state.demand, v);
  const sourceA = state.sources.reduce((sumA, one) => sumA + givenA(one, speedRpm, v), 0);
  return { v, sourceA, demandA, batteryA: sourceA - demandA };
}
