import { type Job, presentParts } from "../job/index.ts";
import { supplyRule } from "./supplyRule.ts";

/** Whether the machine may run on a capacitor in place of its battery. */
export interface WithoutBattery {
  readonly allowed: boolean;
  readonly reasons: readonly string[];
  readonly leastUf: number;
  readonly mostUf: number;
  readonly leastV: number;
  /** Which of its terminals lies on the frame. */
  readonly earthed: "positive" | "negative";
}

/** Answers from what the machine has: starter, ignition, what makes its current. */
export function withoutBattery(job: Job): WithoutBattery {
  const parts = presentParts(job);
  const against: string[] = [];
  if (parts.some((part) => part.kind === "motor" && part.use === "starter"))
    against.push("an electric start needs a battery");
  if (job.supply.ignition === "electronic")
    against.push("an ignition box may not stand the pulses: only its maker can say");
  const generators = parts.filter((part) => part.kind === "generator");
  if (!generators.some(({ type }) => type === "alternator-pm" || type === "flywheel-magneto"))
    against.push("only magnets give current without a battery");
  if (
    parts.some(
      (part) => part.kind === "lamp" && part.filaments.some(({ ratedW }) => ratedW >= LARGE_W),
    ) &&
    job.supply.ignition === "battery-coil"
  )
    against.push("lights and spark share one pulse: at idle with the headlamp on it may stall");
  return {
    allowed: against.length === 0,
    reasons: against.length === 0 ? ["kick start, magnets and no box that minds"] : against,
    leastUf: supplyRule("capacitor-least"),
    mostUf: supplyRule("capacitor-most"),
    leastV: supplyRule("capacitor-volts"),
    earthed: job.supply.earthPolarity,
  };
}

/** From here a lamp is a headlamp, W. */
const LARGE_W = 20;

/**
 * Ripple of a capacitor fed by full-wave pulses: between two pulses it gives the current alone, V.
 *
 * @param pulseHz  pulses a second: 2 × pole pairs × speed / 60 for one phase.
 */
export const rippleV = (currentA: number, capacitanceUf: number, pulseHz: number): number =>
  currentA / ((capacitanceUf / 1e6) * pulseHz);
