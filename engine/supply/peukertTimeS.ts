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

type Rated = Pick<ChargedBattery, "capacityAh" | "chemistry">;

/** The law of a battery of a kind at its usual rating. */
export function batteryTimeS({ capacityAh, chemistry }: Rated, currentA: number): number {
  const { ratingTimeS, exponent } = lawOf(chemistry);
  return peukertTimeS({ capacityAh, ratingTimeS, exponent, currentA });
}

/**
 * Amperes by which its charge falls while it gives some: I (I H / C)^(k − 1), so that a steady current empties it just when Peukert's law
 * says; never less than I.
 */
export function chargeFallA({ capacityAh, chemistry }: Rated, currentA: number): number {
  const { ratingTimeS, exponent } = lawOf(chemistry);
  const ratedA = (capacityAh * SECONDS_AN_HOUR) / ratingTimeS;
  return currentA * Math.max(1, (currentA / ratedA) ** (exponent - 1));
}

function lawOf(chemistry: ChargedBattery["chemistry"]) {
  const row = chemistry === "flooded" ? "peukert-flooded" : "peukert-agm";
  const exponent = chemistry === "lifepo4" ? 1 : figure("batteryRules", row, "value").value;
  return { exponent, ratingTimeS: supplyRule("rating-hours") * SECONDS_AN_HOUR };
}
