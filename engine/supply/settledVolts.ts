import { figure } from "../tables/index.ts";
import { type ChargedBattery, givingOhm, restV, takingS } from "./batteryCharge.ts";
import { givenA } from "./chargingSource.ts";
import { demandAt } from "./demandCurve.ts";
import type { ModelState } from "./supplyModel.ts";

/** Volts are known to this, V. */
const NEAR_V = 1e-6;
const MOST_STEPS = 60;
const TABLE_V = 12;

/**
 * Volts at the posts where sources, loads and battery agree: f(V) = given − drawn − taken = 0, which falls as V rises. False
 * position that halves the weight of an end that stays (the Illinois rule), inside the span of the demand curve: the answer at an
 * end of the span means that the machine leaves it.
 *
 * @param chargeRatio  charge of the battery, 0 to 1.
 */
export function settledVolts(
  battery: ChargedBattery | null,
  { sources, demand }: Pick<ModelState, "sources" | "demand">,
  speedRpm: number,
  chargeRatio: number,
): number {
  const takes = battery === null ? 0 : takingS(battery, chargeRatio, acceptedAtV(battery, sources));
  const emfV = battery === null ? 0 : restV(battery, chargeRatio);
  const gives = battery === null ? 0 : 1 / givingOhm(battery, chargeRatio);
  const leftA = (v: number): number => {
    let sumA = -demandAt(demand, v) - (v - emfV) * (v > emfV ? takes : gives);
    for (const source of sources) sumA += givenA(source, speedRpm, v);
    return sumA;
  };
  let [low, high] = [demand.v[0]!, demand.v.at(-1)!];
  let [lowA, highA] = [leftA(low), leftA(high)];
  if (lowA <= 0) return low;
  if (highA >= 0) return high;
  // The battery's rest volts are a corner of f: on its side of it the rest is nearly straight.
  if (emfV > low && emfV < high) {
    const cornerA = leftA(emfV);
    if (cornerA > 0) [low, lowA] = [emfV, cornerA];
    else [high, highA] = [emfV, cornerA];
  }
  let side = 0;
  for (let k = 0; k < MOST_STEPS && high - low > NEAR_V; k++) {
    const v = (low * highA - high * lowA) / (highA - lowA);
    const atA = leftA(v);
    if (Math.abs(atA) < NEAR_V) return v;
    if (atA > 0) {
      [low, lowA] = [v, atA];
      if (side > 0) highA /= 2;
      side = 1;
    } else {
      [high, highA] = [v, atA];
      if (side < 0) lowA /= 2;
      side = -1;
    }
  }
  return (low + high) / 2;
}

/** Volts the battery's acceptance is stated at: where it is held, or where nothing holds it the table's set point. */
function acceptedAtV(battery: ChargedBattery, sources: ModelState["sources"]): number {
  const heldV = Math.max(0, ...sources.map((one) => one.heldV ?? 0));
  const setV = (figure("regulators", "set-point", "value").value * battery.nominalV) / TABLE_V;
  return heldV > 0 ? heldV : setV;
}
