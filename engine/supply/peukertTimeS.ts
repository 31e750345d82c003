import { figure } from "../tables/index.ts";
import type { ChargedBattery } from "./batteryCharge.ts";
import { SECONDS_AN_HOUR } from "./secondsAnHour.ts";
import { supplyRule } from "./supplyRule.ts";

/** Peukert's law with its own words: t = H (C / (I H))^k. */
export interface PeukertLaw {
  readonly capacityAh: number;
  /** H, the time the capacity is stated for; on a 1 A basis it is the capacity itself in hours. */
  readonly ratingTimeS: number;
  readonly exponent: number;
  readonly currentA: number;
}

/**
 * Time a constant current lasts, s; never more than C / I, since below the rated current nothing is gained.
 *
 * @throws where the current is not above 0.
 */
export function peukertTimeS({ capacityAh, ratingTimeS, exponent, currentA }: PeukertLaw): number {
  if (!(currentA > 0)) throw new Error("a battery that gives nothing lasts for ever");
  const plainS = (capacityAh * SECONDS_AN_HOUR) / currentA;
  return Math.min(plainS, ratingTimeS * (plainS / ratingTimeS) ** exponent);
}

/** The law of a battery of a kind at its usual rating. */
export function batteryTimeS(
  { capacityAh, chemistry }: Pick<ChargedBattery, "capacityAh" | "chemistry">,
  currentA: number,
): number {
  const row = chemistry === "flooded" ? "peukert-flooded" : "peukert-agm";
  const exponent = chemistry === "lifepo4" ? 1 : figure("batteryRules", row, "value").value;
  const ratingTimeS = supplyRule("rating-hours") * SECONDS_AN_HOUR;
  return peukertTimeS({ capacityAh, ratingTimeS, exponent, currentA });
}
