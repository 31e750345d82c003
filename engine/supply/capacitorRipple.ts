import { presentParts } from "../job/index.ts";
import { chargeBalance } from "./chargeBalance.ts";
import { stateFor } from "./rideSteps.ts";
import type { SupplyModel } from "./supplyModel.ts";
import { supplyRule } from "./supplyRule.ts";

/** Ripple of the capacitor at the slowest speed at which the source carries the lights, where it is worst. */
export interface CapacitorRipple {
  readonly capacitanceUf: number;
  /** Its own, or the least the table asks for. */
  readonly isFitted: boolean;
  readonly currentA: number;
  readonly speedRpm: number;
  /** Nobody writes down how many magnets a flywheel has: two to a pole pair, so it is counted. */
  readonly rows: readonly {
    readonly polePairCount: number;
    readonly pulseHz: number;
    readonly rippleV: number;
  }[];
}

/** Pole pairs of flywheels and rotors as they are found; our own list. */
const POLE_PAIR_COUNTS = [2, 3, 4, 6] as const;
/** Pulses a pole pair and turn, by the leads' rms over the output's mean: half-wave, full-wave, three-phase. */
const HALF_WAVE_OVER_RATIO = 1.3;
const FULL_WAVE_OVER_RATIO = 0.9;
/** Smaller ones lie across contacts or radios, microfarad. */
const LEAST_UF = 500;

/** Null where no source's output is known, or none carries the lights at any speed. */
export function capacitorRipple(model: SupplyModel): CapacitorRipple | null {
  if (model.states.length === 0) return null;
  const state = stateFor(model.states, "lit");
  const { balanceRpm, demandA } = chargeBalance(model, state);
  const phaseRatio = state.sources.find(({ line }) => line !== null)?.phaseRatio ?? null;
  if (balanceRpm === null || phaseRatio === null) return null;
  const pulseCount =
    phaseRatio > HALF_WAVE_OVER_RATIO ? 1 : phaseRatio > FULL_WAVE_OVER_RATIO ? 2 : 6;
  const fitted = presentParts(model.job).find(
    (part) => part.kind === "capacitor" && part.capacitanceUf.value >= LEAST_UF,
  );
  const capacitanceUf =
    fitted?.kind === "capacitor" ? fitted.capacitanceUf.value : supplyRule("capacitor-least");
  const rows = POLE_PAIR_COUNTS.map((polePairCount) => {
    const pulseHz = (pulseCount * polePairCount * balanceRpm) / 60;
    return { polePairCount, pulseHz, rippleV: rippleV(demandA, capacitanceUf, pulseHz) };
  });
  return {
    capacitanceUf,
    isFitted: fitted !== undefined,
    currentA: demandA,
    speedRpm: balanceRpm,
    rows,
  };
}

/**
 * Between two pulses the capacitor gives the current alone: ΔV = I / (C f), an upper bound since pulses last some of the time.
 *
 * @param pulseHz  pulses a second: pulses a pole pair × pole pairs × speed / 60.
 */
export const rippleV = (currentA: number, capacitanceUf: number, pulseHz: number): number =>
  currentA / ((capacitanceUf / 1e6) * pulseHz);
