import { wrightOmega } from "./diodeCurrent.ts";
import type { CurveLaw, DiodeLaw, FilamentLaw, Law } from "./network.ts";

/** Current, A, and slope di/dv, S, of a law at some volts. */
export interface LawPoint {
  readonly currentA: number;
  readonly slopeS: number;
}

/** Beyond this exponent a junction goes on along its tangent, so that no intermediate step overflows. */
const LARGEST_EXPONENT = 300;

/** Where a law stands at v volts across it (from a to b). */
export function lawPoint(law: Law, v: number): LawPoint {
  switch (law.kind) {
    case "ohm":
      return { currentA: v / law.ohm, slopeS: 1 / law.ohm };
    case "emf":
      return { currentA: (v - law.emfV) / law.internalOhm, slopeS: 1 / law.internalOhm };
    case "filament":
      return filamentPoint(law, v);
    case "diode":
      return law.seriesOhm > 0 ? diodePoint(law, v) : junctionPoint(law, v);
    case "curve":
      return curvePoint(law, v);
  }
}

/** Current, A, of a law at v volts across it. */
export function lawCurrentA(law: Law, v: number): number {
  return lawPoint(law, v).currentA;
}

/** Slope di/dv, S, of a law at v volts across it. */
export function lawSlopeS(law: Law, v: number): number {
  return lawPoint(law, v).slopeS;
}

/** i = ratedA·u·(u² + eps²)^h, h = (exponent − 1)/2; the loops of the kernel hold the same equation. */
function filamentPoint({ ratedV, ratedA, exponent, eps }: FilamentLaw, v: number): LawPoint {
  const u = v / ratedV;
  const sum = u * u + eps * eps;
  const factor = sum ** ((exponent - 1) / 2);
  return {
    currentA: ratedA * u * factor,
    slopeS: (ratedA / ratedV) * factor * (1 + ((exponent - 1) * u * u) / sum),
  };
}

/**
 * Junction behind a series resistance R, exactly: with a = n·Vt, w = R(i + Is)/a obeys w + ln w = ln(R·Is/a) + (v + R·Is)/a.
 */
function diodePoint({ isA, n, thermalV, seriesOhm }: DiodeLaw, v: number): LawPoint {
  const scaleV = n * thermalV;
  const w = wrightOmega(Math.log((seriesOhm * isA) / scaleV) + (v + seriesOhm * isA) / scaleV);
  return { currentA: w * (scaleV / seriesOhm) - isA, slopeS: w / (1 + w) / seriesOhm };
}

/** i = Is(exp(v/a) − 1). */
function junctionPoint({ isA, n, thermalV }: DiodeLaw, v: number): LawPoint {
  const scaleV = n * thermalV;
  const exponent = v / scaleV;
  const inside = Math.min(exponent, LARGEST_EXPONENT);
  const slopeS = (isA / scaleV) * Math.exp(inside);
  return {
    slopeS,
    currentA: isA * Math.expm1(inside) + slopeS * scaleV * (exponent - inside),
  };
}

function curvePoint({ points }: CurveLaw, v: number): LawPoint {
  let low = 0;
  let high = points.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (points[middle]![0] <= v) low = middle;
    else high = middle;
  }
  const [v0, i0] = points[low]!;
  const [v1, i1] = points[low + 1]!;
  const slopeS = (i1 - i0) / (v1 - v0);
  return { slopeS, currentA: i0 + slopeS * (v - v0) };
}
