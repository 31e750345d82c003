import { wrightOmega } from "./diodeCurrent.ts";
import type { Law } from "./network.ts";

/** Laws laid out in typed arrays, so that the inner loop of a solve touches no object. One slot a branch. */
export interface LawSlots {
  readonly count: number;
  readonly kind: Uint8Array;
  /** PARAMETER_COUNT numbers a slot; their meaning is in `parameters`. */
  readonly parameter: Float64Array;
  /** Curve points v0, i0, v1, i1 …; null for other kinds. */
  readonly curve: (Float64Array | null)[];
  /** Volts wanted next of each slot; volts at which it was last evaluated (NaN: never), with current, A, and slope, S, there. */
  readonly v: Float64Array;
  readonly atV: Float64Array;
  readonly currentA: Float64Array;
  readonly slopeS: Float64Array;
}

const LINEAR = 0;
export const FILAMENT = 1;
export const DIODE = 2;
const CURVE = 3;
const KIND = { ohm: LINEAR, emf: LINEAR, filament: FILAMENT, diode: DIODE, curve: CURVE } as const;
export const PARAMETER_COUNT = 5;
/** Beyond this exponent a junction goes on along its tangent, so that no intermediate step overflows. */
const LARGEST_EXPONENT = 300;

export function lawSlots(laws: readonly Law[]): LawSlots {
  const slots: LawSlots = {
    count: laws.length,
    kind: new Uint8Array(laws.length),
    parameter: new Float64Array(laws.length * PARAMETER_COUNT),
    curve: laws.map(() => null),
    v: new Float64Array(laws.length),
    atV: new Float64Array(laws.length).fill(Number.NaN),
    currentA: new Float64Array(laws.length),
    slopeS: new Float64Array(laws.length),
  };
  laws.forEach((law, s) => {
    loadSlot(slots, s, law);
  });
  return slots;
}

/** Writes a law into a slot, with what the inner loop would otherwise compute again and again. */
export function loadSlot(slots: LawSlots, s: number, law: Law): void {
  slots.atV[s] = Number.NaN;
  slots.kind[s] = KIND[law.kind];
  slots.parameter.set(parameters(law), s * PARAMETER_COUNT);
  slots.curve[s] = law.kind === "curve" ? Float64Array.from(law.points.flat()) : null;
}

function parameters(law: Law): number[] {
  switch (law.kind) {
    case "ohm":
      return [1 / law.ohm, 0];
    case "emf":
      return [1 / law.internalOhm, law.emfV];
    case "filament": {
      const { ratedV, ratedA, eps, exponent } = law;
      return [1 / ratedV, ratedA, eps * eps, (exponent - 1) / 2, ratedA / ratedV];
    }
    case "diode": {
      const { isA, seriesOhm } = law;
      const scaleV = law.n * law.thermalV;
      const kneeV = scaleV * Math.log(scaleV / (Math.SQRT2 * isA));
      const offset = seriesOhm > 0 ? Math.log((seriesOhm * isA) / scaleV) : 0;
      return [isA, scaleV, seriesOhm, kneeV, offset];
    }
    case "curve":
      return [];
  }
}

/**
 * Current and slope of every slot at slots.v, left in slots.currentA and slots.slopeS; slots already evaluated there are
 * skipped. In one loop, and with numbers handed over in arrays, because a call with a fraction in it costs more than the law.
 */
export function evaluateSlots(slots: LawSlots): void {
  const { count, kind, parameter, v, atV, currentA, slopeS } = slots;
  for (let s = 0; s < count; s++) {
    const volts = v[s]!;
    if (atV[s] === volts) continue;
    atV[s] = volts;
    const p = s * PARAMETER_COUNT;
    if (kind[s] === FILAMENT) {
      const u = volts * parameter[p]!;
      const square = u * u;
      const sum = square + parameter[p + 2]!;
      const half = parameter[p + 3]!;
      const factor = Math.exp(half * Math.log(sum));
      currentA[s] = parameter[p + 1]! * u * factor;
      slopeS[s] = parameter[p + 4]! * factor * (1 + (2 * half * square) / sum);
    } else if (kind[s] === LINEAR) {
      slopeS[s] = parameter[p]!;
      currentA[s] = parameter[p]! * (volts - parameter[p + 1]!);
    } else if (kind[s] === DIODE) evaluateDiode(slots, s);
    else evaluateCurve(slots, s);
  }
}

/**
 * Junction behind a series resistance R, exactly: with a = n·Vt, w = R(i + Is)/a obeys w + ln w = ln(R·Is/a) + (v + R·Is)/a.
 * Without resistance i = Is(exp(v/a) − 1).
 */
function evaluateDiode(slots: LawSlots, s: number): void {
  const { parameter } = slots;
  const v = slots.v[s]!;
  const p = s * PARAMETER_COUNT;
  const isA = parameter[p]!;
  const scaleV = parameter[p + 1]!;
  const seriesOhm = parameter[p + 2]!;
  if (seriesOhm > 0) {
    const w = wrightOmega(parameter[p + 4]! + (v + seriesOhm * isA) / scaleV);
    slots.currentA[s] = w * (scaleV / seriesOhm) - isA;
    slots.slopeS[s] = w / (1 + w) / seriesOhm;
    return;
  }
  const exponent = v / scaleV;
  const inside = Math.min(exponent, LARGEST_EXPONENT);
  const slopeS = (isA / scaleV) * Math.exp(inside);
  slots.slopeS[s] = slopeS;
  slots.currentA[s] = isA * Math.expm1(inside) + slopeS * scaleV * (exponent - inside);
}

function evaluateCurve(slots: LawSlots, s: number): void {
  const v = slots.v[s]!;
  const points = slots.curve[s]!;
  let low = 0;
  let high = points.length / 2 - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (points[2 * middle]! <= v) low = middle;
    else high = middle;
  }
  const v0 = points[2 * low]!;
  const i0 = points[2 * low + 1]!;
  const slopeS = (points[2 * low + 3]! - i0) / (points[2 * low + 2]! - v0);
  slots.slopeS[s] = slopeS;
  slots.currentA[s] = i0 + slopeS * (v - v0);
}

/** Current, A, of a law at v volts across it (from a to b). */
export function lawCurrentA(law: Law, v: number): number {
  const slots = lawSlots([law]);
  slots.v[0] = v;
  evaluateSlots(slots);
  return slots.currentA[0]!;
}

/** Slope di/dv, S, of a law at v volts across it. */
export function lawSlopeS(law: Law, v: number): number {
  const slots = lawSlots([law]);
  slots.v[0] = v;
  evaluateSlots(slots);
  return slots.slopeS[0]!;
}
