import type { CurveLaw } from "../network/index.ts";
import { type GeneratorLine, generatorCurrentA, shortedCurrentA } from "./generatorLine.ts";

/** What feeds an alternator's own field, Ω: far under any field winding. */
const EXCITER_OHM = 0.1;
const EXCITER_REVERSE_S = 1e-6;
/** A machine too slow to give anything is still drawn as a curve that rises, A. */
const LEAST_EXCITER_A = 1e-3;
/** A current this near the knee does not change curves, A. */
const KNEE_MARGIN_A = 1e-7;

/** A machine that turns, and the volts it feeds its field with. */
export interface Exciter {
  readonly line: GeneratorLine;
  readonly speedRpm: number;
  readonly emfV: number;
}

/** Where the EMF behind its resistance meets what the machine gives at all: beyond, its windings and not the resistance set the current. */
function kneeOf({ line, speedRpm, emfV }: Exciter) {
  const atA = Math.max(generatorCurrentA(line, speedRpm, Math.max(0, emfV)), LEAST_EXCITER_A);
  const shortA = Math.max(shortedCurrentA(line, speedRpm), atA + LEAST_EXCITER_A);
  return { atV: emfV - EXCITER_OHM * atA, atA, shortA };
}

/**
 * What an exciter gives at its terminals, as a curve. Free: an EMF behind a resistance that lets nothing back. Limited: the machine's own line, from what it
 * gives at the EMF to what it gives into a short. The two meet at the knee. One bend each, and the caller says which holds: on a curve with both bends
 * Newton's method, started from nought, jumps over the corner for ever.
 */
export function exciterCurve(exciter: Exciter, isLimited: boolean): CurveLaw {
  const { emfV } = exciter;
  const knee = kneeOf(exciter);
  const limited = [
    [Math.min(0, knee.atV - 1), -knee.shortA],
    [knee.atV, -knee.atA],
  ] as const;
  const free = [
    [emfV - 1, -1 / EXCITER_OHM],
    [emfV, 0],
    [emfV + 1, EXCITER_REVERSE_S],
  ] as const;
  return { kind: "curve", points: isLimited ? limited : free };
}

/** Whether the limited curve holds for an exciter that gives so much, A; what holds now is kept within a margin of the knee. */
export function isBeyondKnee(exciter: Exciter, givenA: number, isLimitedNow: boolean): boolean {
  const marginA = isLimitedNow ? -KNEE_MARGIN_A : KNEE_MARGIN_A;
  return givenA > kneeOf(exciter).atA + marginA;
}
