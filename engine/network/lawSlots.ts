import type { KernelArrays } from "./kernelMemory.ts";
import { lawPoint } from "./lawPoint.ts";
import type { FilamentLaw, Law } from "./network.ts";

/** Error of a line, A, that a Newton step does not notice; acceptance is measured on the laws themselves all the same. */
const STILL_A = 1e-12;

/** Laws of the branches that are solved by repetition, and the arrays the loops know them by. */
export interface LawSlots {
  readonly law: Law[];
  readonly arrays: KernelArrays;
}

/** Puts a law into slot s, with what the inner loop would otherwise compute again and again. */
export function loadSlot({ law: laws, arrays }: LawSlots, s: number, law: Law): void {
  laws[s] = law;
  arrays.slotAtV[s] = Number.NaN;
  arrays.stillV[s] = 0;
  arrays.isFilament[s] = law.kind === "filament" ? 1 : 0;
  if (law.kind !== "filament") return;
  const { ratedV, ratedA, eps, exponent } = law;
  arrays.perRatedV[s] = 1 / ratedV;
  arrays.ratedA[s] = ratedA;
  arrays.epsSquared[s] = eps * eps;
  arrays.halfExponent[s] = (exponent - 1) / 2;
  arrays.chordS[s] = ratedA / ratedV;
  arrays.coldS[s] = (ratedA / ratedV) * eps ** (exponent - 1);
  if (exponent < 1) arrays.stillV[s] = stillV(law);
}

/**
 * A tangent errs by ½·|i″|·Δ². Of a filament below exponent 1, |i″| ≤ 3·(1 − exponent)·(ratedA/ratedV²)·eps^(exponent − 2), so
 * within this many volts the error stays under STILL_A.
 */
function stillV({ ratedV, ratedA, eps, exponent }: FilamentLaw): number {
  const steepest = 3 * (1 - exponent) * (ratedA / ratedV ** 2) * eps ** (exponent - 2);
  return Math.sqrt((2 * STILL_A) / steepest);
}

/** Evaluates slot s at slotV by its law, whatever it is. */
export function evaluateOther({ law, arrays }: LawSlots, s: number): void {
  const { currentA, slopeS } = lawPoint(law[s]!, arrays.slotV[s]!);
  arrays.slotA[s] = currentA;
  arrays.slotS[s] = slopeS;
}

/**
 * A junction without resistance climbs by the logarithm of the step wanted (the limiting of SPICE 2, Nagel 1975, *memory*).
 * With resistance its current is solved exactly and needs no limit; nor does any other law.
 */
export function limitOther(slots: LawSlots, s: number): void {
  const law = slots.law[s]!;
  if (law.kind !== "diode" || law.seriesOhm > 0) return;
  const { slotV, slotAtV, lineV } = slots.arrays;
  const v = slotV[s]!;
  const before = lineV[s]!;
  const scaleV = law.n * law.thermalV;
  const kneeV = scaleV * Math.log(scaleV / (Math.SQRT2 * law.isA));
  if (v <= kneeV || Math.abs(v - before) <= 2 * scaleV) return;
  const ratio = 1 + (v - before) / scaleV;
  if (before <= 0) slotV[s] = scaleV * Math.log(v / scaleV);
  else slotV[s] = ratio > 0 ? before + scaleV * Math.log(ratio) : kneeV;
  slotAtV[s] = slotV[s]!;
  evaluateOther(slots, s);
}
