import type { WorkingStep } from "../messages/index.ts";
import { figure } from "../tables/index.ts";
import type { WireQuestion } from "./wireAnswer.ts";

export interface WireDrop {
  readonly oneWay: boolean;
  /** One way, mm, as asked. */
  readonly lengthMm: number;
  readonly v: number;
  /** Of the supply volts; null where nobody gave them. */
  readonly percent: number | null;
  /** Null where neither limit nor volts were given. */
  readonly limitV: number | null;
  readonly ok: boolean | null;
}

/**
 * Volt drop of one wire: V = R · L · I, twice the length where the current comes back through a like wire.
 *
 * @param ohmPerM20  Ω/m at 20 °C: the answer holds for copper at 20 °C.
 * @returns null where amps or length were not given.
 */
export function wireDropOf(
  ohmPerM20: number,
  question: WireQuestion,
): { readonly drop: WireDrop; readonly working: readonly WorkingStep[] } | null {
  const { ampsA, lengthM, volts } = question;
  if (ampsA === undefined || lengthM === undefined) return null;
  const oneWay = question.oneWay ?? false;
  const v = ohmPerM20 * lengthM * (oneWay ? 1 : 2) * ampsA;
  const limitV = limitOf(question);
  const step: WorkingStep = {
    name: oneWay ? "volt drop, one way" : "volt drop, there and back",
    equation: oneWay ? "V = R x L x I" : "V = R x 2 x L x I",
    inputs: [
      { name: "R", value: ohmPerM20, unit: "ohm/m", from: "at 20 C" },
      { name: "L", value: lengthM, unit: "m", from: "asked" },
      { name: "I", value: ampsA, unit: "A", from: "asked" },
    ],
    value: v,
    unit: "V",
  };
  return {
    drop: {
      oneWay,
      lengthMm: lengthM * 1000,
      v,
      percent: volts === undefined ? null : (100 * v) / volts,
      limitV,
      ok: limitV === null ? null : v <= limitV,
    },
    working: [step],
  };
}

/** As asked; else the wires' share of the usual limit, in proportion to the supply volts. */
function limitOf({ drop, volts }: WireQuestion): number | null {
  if (drop !== undefined) {
    if ("limitV" in drop) return drop.limitV;
    return volts === undefined ? null : (drop.limitPercent / 100) * volts;
  }
  if (volts === undefined) return null;
  return (figure("voltDropLimits", "other", "wireShare12V").value * volts) / 12;
}
