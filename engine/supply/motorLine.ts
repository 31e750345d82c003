import type { PartOf } from "../job/index.ts";

/**
 * A starter as V = E + R I: R is what it stalls at, and E is 0 there. What the engine asks of it warm is stated as the resistance it
 * then looks like, volts over amps.
 */
export interface MotorLine {
  /** R, Ω. */
  readonly windingOhm: number;
  /** V over I while it turns a warm engine, Ω. */
  readonly runOhm: number;
  readonly freeA: number | null;
  readonly freeV: number | null;
}

/** Null where no stall is stated: then only the warm engine can be answered for. */
export function motorLine(motor: PartOf<"motor">): MotorLine | null {
  const { stallA, stallV, runOhm, freeA, freeV } = motor;
  if (stallA === undefined || stallV === undefined || stallA.value <= 0) return null;
  const windingOhm = stallV.value / stallA.value;
  if (windingOhm >= runOhm.value) return null;
  return {
    windingOhm,
    runOhm: runOhm.value,
    freeA: freeA?.value ?? null,
    freeV: freeV?.value ?? null,
  };
}

/** How torque follows current: with the field in series it goes with the square, with magnets with the current itself. */
export type FieldKind = "series" | "magnet";

/** Amperes at which the motor gives `demandRatio` times the torque it gives at warmA: T ~ I (magnets) or I² (series). */
export const loadedA = (warmA: number, demandRatio: number, field: FieldKind): number =>
  warmA * (field === "series" ? Math.sqrt(demandRatio) : demandRatio);

/**
 * Speed over the speed with a warm engine: back-EMF over flux, E = V − R I, flux as the current (series) or constant (magnets). 0: it does
 * not turn.
 */
export function speedRatio(
  line: MotorLine,
  warm: { readonly v: number; readonly currentA: number },
  now: { readonly v: number; readonly currentA: number },
  field: FieldKind,
): number {
  const warmEmfV = warm.v - line.windingOhm * warm.currentA;
  const emfV = now.v - line.windingOhm * now.currentA;
  const fluxRatio = field === "series" ? now.currentA / warm.currentA : 1;
  return Math.max(0, emfV / warmEmfV / fluxRatio);
}
