import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wrightOmega } from "./diodeCurrent.ts";
import { lawCurrentA, lawSlopeS } from "./lawPoint.ts";
import type { CurveLaw, DiodeLaw, FilamentLaw, Law } from "./network.ts";

const filament: FilamentLaw = {
  kind: "filament",
  ratedV: 12,
  ratedA: 1.75,
  exponent: 0.55,
  eps: 0.004,
};
const diode: DiodeLaw = {
  kind: "diode",
  isA: 1e-9,
  n: 1.8,
  seriesOhm: 0.02,
  thermalV: 0.025864926,
};
const curve: CurveLaw = {
  kind: "curve",
  points: [
    [-1, -20],
    [13.5, -14],
    [14.4, 0],
  ],
};

describe("filament", () => {
  it("draws its rated current at its rated volts, but for eps²", () => {
    // (1 + 1.6e-5)^-0.225 = 1 − 3.6e-6 by the binomial series.
    expect(lawCurrentA(filament, 12) / 1.75).toBeCloseTo(1 - 3.6e-6, 9);
  });

  it("at half the volts draws 2^-0.55 of the rated current", () => {
    expect(lawCurrentA(filament, 6) / 1.75).toBeCloseTo(2 ** -0.55, 4);
  });

  it("cold, conducts 12 times as well as when rated: eps^(exponent − 1)", () => {
    expect(lawSlopeS(filament, 0) / (1.75 / 12)).toBeCloseTo(0.004 ** -0.45, 10);
    expect(lawSlopeS(filament, 0) / (1.75 / 12)).toBeCloseTo(12.0, 1);
  });

  it("with exponent 1 is a plain resistance", () => {
    const plain: FilamentLaw = { ...filament, exponent: 1 };
    fc.assert(
      fc.property(fc.double({ min: -20, max: 20, noNaN: true }), (v) => {
        expect(lawCurrentA(plain, v)).toBeCloseTo((v * 1.75) / 12, 12);
      }),
    );
  });
});

describe("every law", () => {
  const laws: Law[] = [
    { kind: "ohm", ohm: 3 },
    { kind: "emf", emfV: 12.6, internalOhm: 0.02 },
    filament,
    diode,
    { ...diode, seriesOhm: 0 },
    curve,
  ];

  it("has the slope its currents show, and rises", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...laws),
        fc.double({ min: -1, max: 1.1, noNaN: true }),
        (law, v) => {
          const stepV = 1e-6 * Math.max(0.01, Math.abs(v));
          const rise = lawCurrentA(law, v + stepV) - lawCurrentA(law, v - stepV);
          const slopeS = lawSlopeS(law, v);
          // Central difference: rounding of the two currents, and the third derivative of the filament near 0 V.
          const roundingS = (1e-15 * (Math.abs(lawCurrentA(law, v)) + 1e-9)) / stepV;
          expect(Math.abs(rise / (2 * stepV) - slopeS)).toBeLessThanOrEqual(
            1e-6 * slopeS + 10 * roundingS,
          );
          expect(slopeS).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});

describe("diode", () => {
  it("obeys its own two equations: v = j + R·i, i = Is·(exp(j/nVt) − 1)", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 1e-4, max: 10, noNaN: true }),
        (v, seriesOhm) => {
          const iA = lawCurrentA({ ...diode, seriesOhm }, v);
          const j = v - seriesOhm * iA;
          const expectedA = diode.isA * Math.expm1(j / (diode.n * diode.thermalV));
          // The rounding of j, about 1e-15 · v, is multiplied by the slope of the bare junction.
          const slopeS = (Math.abs(expectedA) + diode.isA) / (diode.n * diode.thermalV);
          expect(Math.abs(iA - expectedA)).toBeLessThanOrEqual(
            1e-12 * Math.abs(iA) + 1e-15 + 4e-15 * Math.abs(v) * slopeS,
          );
        },
      ),
    );
  });

  it("inverts the closed form: volts chosen for a current give that current back", () => {
    for (const iA of [1e-9, 1e-6, 1e-3, 0.1, 1, 10, 300]) {
      const v = diode.n * diode.thermalV * Math.log1p(iA / diode.isA) + diode.seriesOhm * iA;
      expect(Math.abs(lawCurrentA(diode, v) / iA - 1)).toBeLessThan(1e-12);
      const bare = diode.n * diode.thermalV * Math.log1p(iA / diode.isA);
      expect(Math.abs(lawCurrentA({ ...diode, seriesOhm: 0 }, bare) / iA - 1)).toBeLessThan(1e-12);
    }
  });

  it("leaks its saturation current backwards", () => {
    expect(lawCurrentA(diode, -12)).toBeCloseTo(-1e-9, 18);
  });
});

describe("wrightOmega", () => {
  it("solves w + ln w = x", () => {
    fc.assert(
      fc.property(fc.double({ min: -700, max: 1e6, noNaN: true }), (x) => {
        const w = wrightOmega(x);
        expect(w).toBeGreaterThan(0);
        expect(Math.abs(w + Math.log(w) - x)).toBeLessThanOrEqual(1e-14 * Math.max(1, Math.abs(x)));
      }),
      { numRuns: 2000 },
    );
  });

  it("has the values of two known points: ω(1) = 1 and ω(0) = 0.5671432904…", () => {
    expect(wrightOmega(1)).toBeCloseTo(1, 15);
    // The omega constant, Ω·e^Ω = 1 (mathematical constant).
    expect(wrightOmega(0)).toBeCloseTo(0.5671432904097838, 15);
  });
});

describe("curve", () => {
  it("runs through its points and goes on along its end lines", () => {
    for (const [v, iA] of curve.points) expect(lawCurrentA(curve, v)).toBeCloseTo(iA, 12);
    expect(lawCurrentA(curve, 15.4)).toBeCloseTo(14 / 0.9, 10);
    expect(lawCurrentA(curve, -15.5)).toBeCloseTo(-26, 12);
    expect(lawCurrentA(curve, 13.95)).toBeCloseTo(-7, 12);
  });
});
