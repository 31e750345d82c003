import type { CurveLaw } from "../network/index.ts";
import { figure } from "../tables/index.ts";
import { type GeneratorLine, generatorCurrentA, openCircuitV } from "./generatorLine.ts";

/** Straight pieces the ellipse is drawn with. */
const PIECES_COUNT = 32;
/** What a source that holds back takes from the machine per volt, S, and what its current still rises by below 0 V, S. */
const REVERSE_S = 1e-6;
const BELOW_ZERO_S = 1e-3;

/**
 * A generator at one speed with its regulator as a two-terminal curve, current counted into its positive terminal (negative
 * while it gives). From the band below the set volts the current falls on a straight line to none at the set volts; a diode
 * lets nothing back. Null where it cannot give anything.
 *
 * @param setV  volts at these terminals where it stops giving; null: unregulated.
 */
export function regulatedCurve(
  line: GeneratorLine,
  speedRpm: number,
  setV: number | null,
): CurveLaw | null {
  const openV = openCircuitV(line, speedRpm);
  const endV = Math.min(openV, setV ?? openV);
  if (endV <= 0) return null;
  const lastFullV = setV === null ? openV : Math.min(openV, kneeV(setV));
  const points: [number, number][] = [];
  for (let k = 0; k <= PIECES_COUNT; k++) {
    const v = (lastFullV * k) / PIECES_COUNT;
    points.push([v, -generatorCurrentA(line, speedRpm, v)]);
  }
  points.unshift([-1, points[0]![1] - BELOW_ZERO_S]);
  // Where the knee is the end the generator has run out of volts there; rounding must not leave it a current.
  if (lastFullV === endV) points.pop();
  points.push([endV, 0], [endV + 1, REVERSE_S]);
  return { kind: "curve", points };
}

/** Volts at which a regulator set to `setV` begins to hold back, V. */
export function kneeV(setV: number): number {
  return setV * (1 - figure("elementRules", "regulator-band", "value").value);
}
