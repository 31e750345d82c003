import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bundleFactor, heatMaterials, loomMaterials } from "../heat/index.ts";
import { makeFields } from "../route/index.ts";
import { wires } from "../tables/index.ts";
import { bundleTableRatio } from "./bundleTableRatio.ts";
import { modelCurrentA } from "./modelCurrentA.ts";
import { ratingOf } from "./ratingOf.ts";

const alone = { wireCount: 1, loadedCount: 1 };

describe("published bundle curve", () => {
  // Two check points of the curve printed elsewhere: an aircraft handbook's examples (12 wires all loaded 0.43, 8 wires
  // at 60 % 0.60 against 0.595 read off the curve). Tolerance: half the last printed figure.
  test.each([
    [12, 12, 0.43],
    [8, 8 * 0.6, 0.6],
  ])("%i wires, %f of them loaded: %f", (wireCount, loadedCount, expectedRatio) => {
    const { ratio } = bundleTableRatio({ wireCount, loadedCount });
    expect(Math.abs(ratio - expectedRatio)).toBeLessThanOrEqual(0.0055);
  });

  test("says where it stops short of so many wires", () => {
    expect(bundleTableRatio({ wireCount: 19, loadedCount: 19 }).beyondTable).toBe(false);
    expect(bundleTableRatio({ wireCount: 25, loadedCount: 20 }).beyondTable).toBe(true);
    expect(bundleTableRatio({ wireCount: 30, loadedCount: 2 }).beyondTable).toBe(false);
    expect(bundleTableRatio({ wireCount: 36, loadedCount: 2 }).beyondTable).toBe(true);
  });

  test("law: more wires or more of them loaded never raises it", () => {
    const count = fc.integer({ min: 1, max: 40 });
    fc.assert(
      fc.property(count, count, (a, b) => {
        const wireCount = Math.max(a, b);
        const loadedCount = Math.min(a, b);
        const { ratio } = bundleTableRatio({ wireCount, loadedCount });
        const fuller = bundleTableRatio({ wireCount: wireCount + 1, loadedCount: loadedCount + 1 });
        expect(fuller.ratio).toBeLessThanOrEqual(ratio + 1e-12);
        expect(ratio).toBeGreaterThan(0);
        expect(ratio).toBeLessThanOrEqual(1);
      }),
    );
  });
});

// The short form (one path for the heat of all) against the long one (every wire's own balance, bisected).
test.each([
  [2, 2],
  [7, 3],
  [12, 12],
  [19, 4],
])("heat model of %i wires, %i loaded, agrees with the balance of every wire", (n, loaded) => {
  const wire = makeFields("thin-1.0");
  const round = {
    ohmPerM20: wire.ohmPerM20Max,
    conductorDiameterMm: wire.conductorDiameterMm,
    outerDiameterMm: wire.odMm,
  };
  const loom = loomMaterials();
  const factor = bundleFactor({
    wire: round,
    wireCount: n,
    loadedCount: loaded,
    limitC: wire.classC,
    ambientC: 40,
    materials: heatMaterials(wire.insulation),
    bundleDiameterMm: null,
    packingRatio: loom.packingRatio,
    conductivityWPerMK: loom.conductivityWPerMK,
    sleeve: null,
    ceilingC: 1000,
  });
  const aloneA = modelCurrentA(wire, 40, alone);
  const togetherA = modelCurrentA(wire, 40, { wireCount: n, loadedCount: loaded });
  expect(togetherA / aloneA / factor).toBeCloseTo(1, 6);
});

describe("rating", () => {
  // A British catalogue's list for one wire in still air at 60 °C, as printed.
  test.each([
    ["thin-0.5", 11],
    ["thin-1.0", 16.5],
    ["thin-2.0", 25],
  ])(
    "%s alone at 60 degrees: the list's %f A, or the model a few per cent under it",
    (id, listA) => {
      const rating = ratingOf({ makeId: id, ambientC: 60, bundle: alone });
      expect(rating.deratedTableA).toBe(listA);
      expect(rating.currentA).toBeLessThanOrEqual(listA);
      expect(rating.currentA).toBeGreaterThan(0.97 * listA);
    },
  );

  test("a thermal list loses with heat and company, and is never raised", () => {
    const cool = ratingOf({ makeId: "thin-1.0", ambientC: 20, bundle: alone });
    expect(cool).toMatchObject({ currentA: 16.5, ambientRatio: 1, governedBy: "table" });
    const shell = ratingOf({ makeId: "thin-1.0", ambientC: 90, bundle: alone });
    expect(shell.ambientRatio).toBeCloseTo(0.5, 12);
    const loom = ratingOf({
      makeId: "thin-1.0",
      ambientC: 40,
      bundle: { wireCount: 12, loadedCount: 12 },
    });
    expect(loom.deratedTableA).toBeCloseTo(16.5 * 0.43, 12);
  });

  test("the volt-drop list holds as it stands; heat is the model's business", () => {
    const loom = { wireCount: 3, loadedCount: 2 };
    const rating = ratingOf({ makeId: "thick-1.0", ambientC: 40, bundle: loom });
    expect(rating).toMatchObject({ tableA: 8.75, deratedTableA: 8.75, governedBy: "table" });
    const hot = ratingOf({ makeId: "thick-1.0", ambientC: 65, bundle: loom });
    expect(hot.deratedTableA).toBe(8.75);
    expect(hot.governedBy).toBe("model");
  });

  test("a figure for cranking is no rating", () => {
    const rating = ratingOf({ makeId: "battery-40", ambientC: 25, bundle: alone });
    expect(rating).toMatchObject({ tableA: null, governedBy: "model" });
    // Reference check: 70 °C PVC of 40 mm² carries about 199 A in air at 25 °C by the same equations, worked apart.
    // 3 %: the check's cable has another outside diameter.
    expect(Math.abs(rating.currentA / 199 - 1)).toBeLessThan(0.03);
  });

  test("nothing may flow where the air is as hot as the class", () => {
    for (const { id, tempClassC } of wires) {
      expect(ratingOf({ makeId: id, ambientC: tempClassC, bundle: alone }).currentA).toBe(0);
    }
  });

  test("inside a sleeve no loom factor is above the largest allowed", () => {
    const pair = { wireCount: 2, loadedCount: 1 };
    const open = ratingOf({ makeId: "thin-1.0", ambientC: 40, bundle: pair });
    const sleeved = ratingOf({ makeId: "thin-1.0", ambientC: 40, bundle: pair, sleeved: true });
    expect(open.bundleRatio).toBeGreaterThan(0.8);
    expect(sleeved.bundleRatio).toBe(0.8);
  });

  test("law: hotter air or a fuller bundle never raises it, and the working ends with it", () => {
    const makes = fc.constantFrom("thin-0.5", "thin-2.0", "thick-1.0", "isothick-2.5", "av-0.85");
    const counts = fc.integer({ min: 1, max: 18 });
    fc.assert(
      fc.property(makes, fc.double({ min: 0, max: 75, noNaN: true }), counts, (makeId, airC, n) => {
        const bundle = { wireCount: n, loadedCount: n };
        const rating = ratingOf({ makeId, ambientC: airC, bundle });
        const hotter = ratingOf({ makeId, ambientC: airC + 3, bundle });
        const fuller = ratingOf({
          makeId,
          ambientC: airC,
          bundle: { wireCount: n + 1, loadedCount: n + 1 },
        });
        expect(hotter.currentA).toBeLessThanOrEqual(rating.currentA);
        expect(fuller.currentA).toBeLessThanOrEqual(rating.currentA * (1 + 1e-9));
        expect(rating.working.at(-1)?.value).toBe(rating.currentA);
      }),
      { numRuns: 60 },
    );
  });
});
