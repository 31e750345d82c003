import { type Job, presentParts } from "../job/index.ts";
import { type CapacitorRipple, capacitorRipple } from "./capacitorRipple.ts";
import type { SupplyModel } from "./supplyModel.ts";
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
  /** How far its volts fall between two pulses; null: nothing is known of what feeds it. */
  readonly ripple: CapacitorRipple | null;
}

/** Answers from what the machine has: starter, ignition, what makes its current. */
export function withoutBattery(model: SupplyModel): WithoutBattery {
  const { job } = model;
  const against = reasonsAgainst(job);
  return {
    allowed: against.length === 0,
    reasons: against.length === 0 ? ["kick start, magnets and no box that minds"] : against,
    leastUf: supplyRule("capacitor-least"),
    mostUf: supplyRule("capacitor-most"),
    leastV: supplyRule("capacitor-volts"),
    earthed: job.supply.earthPolarity,
    ripple: capacitorRipple(model),
  };
}

function reasonsAgainst(job: Job): readonly string[] {
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
  return against;
}

/** From here a lamp is a headlamp, W. */
const LARGE_W = 20;
