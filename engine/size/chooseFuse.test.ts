import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { wires } from "../tables/index.ts";
import { chooseFuse } from "./chooseFuse.ts";
import { lampInrush } from "./lampInrush.ts";

const standardA = [5, 7.5, 10, 15, 20, 25, 30];

// The acceptance scenario "fuse window": stop + horn + flasher on 1.0 mm² thin wall, then on 0.5 mm².
describe("1.75 + 2.5 + 3.75 A of stop, horn and flasher", () => {
  const loadA = 1.75 + 2.5 + 3.75;
  const listed = (id: string): number => wires.find((row) => row.id === id)?.ratedA ?? Number.NaN;

  test("on 1.0 mm² thin wall: 10 or 15 A, 10 suggested", () => {
    const wireA = listed("thin-1.0");
    expect(wireA).toBe(16.5);
    const choice = chooseFuse({ loadA, loadRatio: 0.8, standardA, wireA });
    expect(choice).toMatchObject({ windowMaxA: 16.5, allowedA: [10, 15], suggestedA: 10 });
    expect(choice.windowMinA).toBeCloseTo(10, 12);
  });

  test("on 0.5 mm²: 10 A only", () => {
    const choice = chooseFuse({ loadA, loadRatio: 0.8, standardA, wireA: listed("thin-0.5") });
    expect(choice.allowedA).toEqual([10]);
  });

  test("the tables alone say the same", () => {
    const choice = chooseFuse({ loadA, wireA: 16.5 });
    expect(choice).toMatchObject({ allowedA: [10, 15], suggestedA: 10, remedies: null });
  });
});

// A fuse guide's rule worked through: a 60/55 W halogen (5 A at 12 V) peaks at 70 A and ages a 7.5 A blade but not a
// 10 A one; a 21 W lamp is happy on 5 A.
describe("cold filaments", () => {
  test("a 60 W headlamp wants 10 A although it draws 5", () => {
    const inrush = lampInrush({ runningA: 5 });
    expect(inrush.peakA).toBeCloseTo(70, 9);
    expect(inrush.i2tA2s).toBeCloseTo(9.8, 9);
    const choice = chooseFuse({ loadA: 5, wireA: 16.5, inrush });
    expect(choice).toMatchObject({ allowedA: [7.5, 10, 15], suggestedA: 10 });
    expect(choice.agedByInrushA).toEqual([7.5]);
  });

  test("a 21 W lamp stays on 5 A", () => {
    const inrush = lampInrush({ runningA: 21 / 12 });
    expect(chooseFuse({ loadA: 21 / 12, wireA: 11, inrush }).suggestedA).toBe(3);
    expect(chooseFuse({ loadA: 21 / 12, wireA: 11, inrush, standardA: [5, 10] }).suggestedA).toBe(
      5,
    );
  });

  test("a long loop holds the surge down", () => {
    expect(lampInrush({ runningA: 5, supplyV: 12.6, loopOhm: 0.3 }).peakA).toBeCloseTo(42, 9);
  });
});

describe("an empty window", () => {
  test("offers a larger wire or more circuits, never a larger fuse", () => {
    const choice = chooseFuse({ loadA: 16, wireA: 16.5 });
    expect(choice).toMatchObject({ allowedA: [], suggestedA: null });
    expect(choice.remedies).toEqual({ largerWireA: 20, circuitCount: 2, loadEachA: 8 });
  });

  test("says where nothing standard helps", () => {
    expect(chooseFuse({ loadA: 60, wireA: 0.5 }).remedies).toEqual({
      largerWireA: null,
      circuitCount: null,
      loadEachA: null,
    });
  });
});

test("law: what is allowed is inside the window, and each remedy opens it", () => {
  const amps = fc.double({ min: 0.1, max: 40, noNaN: true });
  fc.assert(
    fc.property(amps, amps, (loadA, wireA) => {
      const choice = chooseFuse({ loadA, wireA });
      for (const ratedA of choice.allowedA) {
        expect(ratedA).toBeGreaterThanOrEqual(choice.windowMinA * (1 - 1e-8));
        expect(ratedA).toBeLessThanOrEqual(choice.windowMaxA * (1 + 1e-8));
      }
      if (choice.remedies === null) return;
      const { largerWireA, loadEachA } = choice.remedies;
      if (largerWireA !== null) {
        expect(chooseFuse({ loadA, wireA: largerWireA }).suggestedA).toBe(largerWireA);
      }
      if (loadEachA !== null) {
        const each = chooseFuse({ loadA: loadEachA, wireA });
        expect(each.suggestedA).not.toBeNull();
      }
    }),
  );
});
