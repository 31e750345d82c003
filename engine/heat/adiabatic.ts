import { REFERENCE_C } from "./physicalConstants.ts";
import type { HeatSource } from "./steadyOnPath.ts";

/** The metal as the adiabatic law sees it. */
export interface AdiabaticMetal {
  /** K of the law, A·√s/mm²: √(c · (β + 20) / ρ20); the published rounding for copper is in the tables. */
  readonly constantAS05PerMm2: number;
  /** β, °C: the resistance would be nil at −β. */
  readonly betaC: number;
}

export interface AdiabaticRise extends AdiabaticMetal {
  readonly startC: number;
  readonly endC: number;
}

/**
 * k of a conductor that keeps all its heat: k = K · √( ln( (β + Tend) / (β + Tstart) ) ), A·√s/mm².
 *
 * @param rise  K, β and both temperatures, °C, endC ≥ startC > −β.
 * @source form of IEC 60949.
 */
export function adiabaticK(rise: AdiabaticRise): number {
  if (!(rise.endC >= rise.startC)) throw new Error("adiabatic: the end is colder than the start");
  return (
    rise.constantAS05PerMm2 *
    Math.sqrt(Math.log((rise.betaC + rise.endC) / (rise.betaC + rise.startC)))
  );
}

/** I²t that brings a conductor from start to end temperature: k² · S², A²s. Right below about 5 s, on the safe side above. */
export function adiabaticWithstandA2s(rise: AdiabaticRise & { readonly areaMm2: number }): number {
  return (adiabaticK(rise) * rise.areaMm2) ** 2;
}

/** Time to the end temperature under a constant current: (k · S / I)², s. */
export function adiabaticTimeS(
  rise: AdiabaticRise & { readonly areaMm2: number; readonly currentA: number },
): number {
  return adiabaticWithstandA2s(rise) / rise.currentA ** 2;
}

/** Smallest area that stays at or below the end temperature: I · √t / k, mm². */
export function adiabaticAreaMm2(
  rise: AdiabaticRise & { readonly currentA: number; readonly timeS: number },
): number {
  return (rise.currentA * Math.sqrt(rise.timeS)) / adiabaticK(rise);
}

/**
 * Where a conductor ends that keeps all its heat, from its own resistance and heat capacity:
 *
 *   Tend = T0 + (Tstart − T0) · e^( α · R20 · I²t / C ),   T0 = 20 − 1/α
 *
 * @param burst.i2tA2s          I²t, A²s.
 * @param burst.capacityJPerMK  C, J/mK of the metal alone.
 * @returns °C. The same law as `adiabaticK`, without its rounded constant; α = 0 is the plain rise R20 · I²t / C.
 */
export function adiabaticEndC(
  burst: HeatSource & {
    readonly startC: number;
    readonly i2tA2s: number;
    readonly capacityJPerMK: number;
  },
): number {
  const { alphaPerK } = burst;
  const riseAt20K = (burst.ohmPerM20 * burst.i2tA2s) / burst.capacityJPerMK;
  const startRatio = 1 + alphaPerK * (burst.startC - REFERENCE_C);
  const growth = alphaPerK * riseAt20K;
  const mean = growth === 0 ? 1 : Math.expm1(growth) / growth;
  return burst.startC + riseAt20K * startRatio * mean;
}
