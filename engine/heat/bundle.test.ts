import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  bundleConductorTemperaturesC,
  bundleFactor,
  bundlePaths,
  bundleScaleRatio,
  heatMaterials,
  type LoadedBundle,
  loomMaterials,
  steadyConductorTemperatureC,
  steadyOnPath,
} from "./index.ts";

const pvc = heatMaterials("pvc");
const loom = loomMaterials();
const sizes = [
  { ohmPerM20: 0.0371, conductorDiameterMm: 1.0, outerDiameterMm: 1.6 },
  { ohmPerM20: 0.0185, conductorDiameterMm: 1.3, outerDiameterMm: 2.0 },
  { ohmPerM20: 0.00942, conductorDiameterMm: 1.9, outerDiameterMm: 2.7 },
  { ohmPerM20: 0.00314, conductorDiameterMm: 3.2, outerDiameterMm: 4.3 },
] as const;
const bundleOf = (loads: readonly (readonly [number, number])[]): LoadedBundle => ({
  wires: loads.map(([sizeIndex]) => sizes[sizeIndex]!),
  currentsA: loads.map(([, currentA]) => currentA),
  bundleDiameterMm: null,
  packingRatio: loom.packingRatio,
  conductivityWPerMK: loom.conductivityWPerMK,
  sleeve: null,
  ambientC: 40,
  ceilingC: 1000,
  materials: pvc,
});
const sleeve = {
  airGapMm: 0.3,
  airConductivityWPerMK: loom.sleeveAirConductivityWPerMK,
  wallMm: 0.5,
  wallConductivityWPerMK: loom.sleeveWallConductivityWPerMK,
  emissivityRatio: pvc.insulation.emissivityRatio,
};
const solved = (bundle: LoadedBundle) => {
  const state = bundleConductorTemperaturesC(bundle);
  if (!state.ok) throw new Error(state.reason);
  return state;
};
const load = fc.tuple(fc.integer({ min: 0, max: 3 }), fc.double({ min: 0, max: 6, noNaN: true }));
const loads = fc.array(load, { minLength: 1, maxLength: 14 });

test("a bundle of one wire is that wire", () => {
  const state = solved(bundleOf([[1, 14]]));
  const alone = steadyConductorTemperatureC({
    ...sizes[1],
    currentA: 14,
    ambientC: 40,
    ceilingC: 1000,
    materials: pvc,
  });
  expect(alone.ok && Math.abs(alone.conductorC - state.conductorsC[0]!)).toBeLessThan(1e-6);
});

describe("laws", () => {
  test("the heats add up to what leaves, and each is I²R at its own temperature", () => {
    fc.assert(
      fc.property(loads, (list) => {
        const bundle = bundleOf(list);
        const state = solved(bundle);
        const sum = state.heatsWPerM.reduce((total, heat) => total + heat, 0);
        expect(Math.abs(sum - state.totalHeatWPerM)).toBeLessThan(1e-9 * (1 + sum));
        for (const [i, wire] of bundle.wires.entries()) {
          const rise = pvc.conductor.alphaPerK * (state.conductorsC[i]! - 20);
          const heat = bundle.currentsA[i]! ** 2 * wire.ohmPerM20 * (1 + rise);
          expect(Math.abs(heat - state.heatsWPerM[i]!)).toBeLessThan(1e-9 * (1 + heat));
        }
      }),
    );
  });

  test("the order of the wires does not matter, and more current makes nobody colder", () => {
    fc.assert(
      fc.property(loads, fc.nat(13), (list, pick) => {
        const state = solved(bundleOf(list));
        const turned = solved(bundleOf([...list].reverse()));
        const k = pick % list.length;
        const more = solved(bundleOf(list.map(([s, i], n) => [s, n === k ? i + 1 : i] as const)));
        for (const [i, conductorC] of state.conductorsC.entries()) {
          expect(Math.abs(conductorC - turned.conductorsC.at(-1 - i)!)).toBeLessThan(1e-6);
          expect(more.conductorsC[i]!).toBeGreaterThan(conductorC - 1e-6);
          expect(conductorC).toBeGreaterThanOrEqual(40 - 1e-6);
        }
      }),
    );
  });

  test("a warmer place makes everybody warmer", () => {
    fc.assert(
      fc.property(loads, (list) => {
        const cool = solved(bundleOf(list));
        const warm = solved({ ...bundleOf(list), ambientC: 60 });
        for (const [i, conductorC] of cool.conductorsC.entries()) {
          expect(warm.conductorsC[i]!).toBeGreaterThan(conductorC);
        }
      }),
    );
  });

  test("one wire followed on its path among the others settles where the bundle says", () => {
    const bundle = bundleOf([
      [1, 9],
      [0, 3],
      [2, 12],
      [1, 0],
      [0, 5],
    ]);
    const state = solved(bundle);
    for (const [i, path] of bundlePaths(bundle).entries()) {
      const otherHeatWPerM = state.totalHeatWPerM - state.heatsWPerM[i]!;
      const alone = steadyOnPath(
        { ...path, otherHeatWPerM },
        { ohmPerM20: bundle.wires[i]!.ohmPerM20, alphaPerK: pvc.conductor.alphaPerK },
        { currentA: bundle.currentsA[i]!, ceilingC: 1000 },
      );
      expect(alone.ok && Math.abs(alone.conductorC - state.conductorsC[i]!)).toBeLessThan(1e-6);
    }
  });
});

test("equal wires with equal loads rise Q · (1 − 1/N) / (4πk) over the surface plus their own wall", () => {
  for (const count of [2, 3, 7, 19]) {
    const state = solved(bundleOf(Array.from({ length: count }, () => [1, 5] as const)));
    const wallKMPerW = Math.log(2.0 / 1.3) / (2 * Math.PI * pvc.insulation.conductivityWPerMK);
    const loomK =
      (state.totalHeatWPerM * (1 - 1 / count)) / (4 * Math.PI * loom.conductivityWPerMK);
    const expectedC = state.surfaceC + loomK + state.heatsWPerM[0]! * wallKMPerW;
    expect(Math.abs(state.conductorsC[0]! - expectedC)).toBeLessThan(1e-6);
    expect(Math.abs(state.bundleDiameterMm - 1.15 * Math.sqrt(count) * 2)).toBeLessThan(1e-9);
  }
});

test("in a narrow sleeve a loom is hotter; a given diameter is used as given", () => {
  const bare = bundleOf([
    [1, 6],
    [1, 6],
    [1, 6],
    [2, 9],
  ]);
  const covered = solved({ ...bare, sleeve });
  expect(covered.conductorsC[0]!).toBeGreaterThan(solved(bare).conductorsC[0]!);
  expect(covered.outerDiameterMm).toBeCloseTo(covered.bundleDiameterMm + 1.6, 9);
  expect(solved({ ...bare, bundleDiameterMm: 9 }).outerDiameterMm).toBe(9);
});

test("scaled to its limit, the hottest conductor is at the limit", () => {
  const bundle = {
    ...bundleOf([
      [1, 9],
      [0, 3],
      [2, 12],
      [1, 0],
    ]),
    limitC: 100,
  };
  const scale = bundleScaleRatio(bundle);
  const state = solved({ ...bundle, currentsA: bundle.currentsA.map((i) => i * scale) });
  expect(Math.max(...state.conductorsC)).toBeCloseTo(100, 6);
});

test("the more wires are loaded, the less each may carry", () => {
  const { wires: _, currentsA: __, ...common } = bundleOf([[1, 1]]);
  const factors = Array.from({ length: 12 }, (___, n) =>
    bundleFactor({ ...common, wire: sizes[1], wireCount: 12, loadedCount: n + 1, limitC: 105 }),
  );
  for (const [n, factor] of factors.slice(1).entries()) expect(factor).toBeLessThan(factors[n]!);
});

test("a current no wall can pass has no steady state; a lower one may still be above the ceiling", () => {
  expect(bundleConductorTemperaturesC(bundleOf([[0, 900]]))).toEqual({
    ok: false,
    reason: "no-steady-state",
  });
  expect(bundleConductorTemperaturesC({ ...bundleOf([[0, 30]]), ceilingC: 200 })).toEqual({
    ok: false,
    reason: "above-ceiling",
  });
  const alone = { ...sizes[0], ambientC: 40, materials: pvc };
  expect(steadyConductorTemperatureC({ ...alone, currentA: 900, ceilingC: 1000 }).ok).toBe(false);
  expect(steadyConductorTemperatureC({ ...alone, currentA: 30, ceilingC: 200 })).toEqual({
    ok: false,
    reason: "above-ceiling",
  });
});
