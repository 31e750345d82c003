import type { TimeCurrent } from "@copperwright/engine";
import { expect, test } from "vitest";
import { areaPath, bandPath, currentTicks, nameOnCurve, plotFrame } from "./plotShapes.ts";

const axes = { currentFromA: 1, currentToA: 100, timeFromS: 0.01, timeToS: 100 };
const frame = plotFrame(axes, 476, 242);

test("more current lies further right, more time further up, decades at equal steps", () => {
  const steps = [1, 10, 100].map(frame.x);
  expect(steps[1]! - steps[0]!).toBeCloseTo(steps[2]! - steps[1]!, 9);
  expect(frame.y(100)).toBeCloseTo(frame.top, 9);
  expect(frame.y(0.01)).toBeCloseTo(frame.bottom, 9);
});

test("a band without a published fastest reaches down to the foot of the paper", () => {
  const slowest = [
    { currentA: 20, timeS: 50, published: true },
    { currentA: 80, timeS: 0.5, published: true },
  ];
  const band = {
    fastest: [],
    slowest,
    carriesA: 11,
    opensFromA: 20,
    publishedToA: 80,
    family: "f",
  };
  const path = bandPath(frame, { band, axes } as unknown as TimeCurrent);
  expect(path).toContain(`${frame.x(80).toFixed(1)} ${frame.bottom.toFixed(1)}`);
  expect(path).toContain(`${frame.x(20).toFixed(1)} ${frame.top.toFixed(1)}`);
  expect(bandPath(frame, { band: { ...band, slowest: [] }, axes } as unknown as TimeCurrent)).toBe(
    "",
  );
});

test("an area runs along one edge and back along the other", () => {
  const low = [
    { currentA: 2, timeS: 1 },
    { currentA: 5, timeS: 0.1 },
  ];
  const high = [
    { currentA: 2, timeS: 10 },
    { currentA: 5, timeS: 2 },
  ];
  expect(areaPath(frame, low, high).match(/[ML]/g)).toHaveLength(4);
  expect(areaPath(frame, low, [])).toBe("");
});

test("a name leans with its curve, and needs a curve on the paper", () => {
  const points = [2, 4, 8, 16].map((currentA) => ({ currentA, timeS: 50 / currentA }));
  const name = nameOnCurve(frame, points, 0.5)!;
  expect(name.turnDeg).toBeGreaterThan(0);
  expect(name.turnDeg).toBeLessThan(90);
  expect(nameOnCurve(frame, points.slice(0, 2), 0.5)).toBeNull();
});

test("ticks stay on the axis", () => {
  expect(currentTicks(axes, 900)).toEqual([1, 2, 5, 10, 20, 50, 100]);
});
