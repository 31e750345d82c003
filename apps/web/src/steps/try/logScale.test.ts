import { expect, test } from "vitest";
import { logScale } from "./logScale.ts";

test("there and back again; decades on the axis, ends included", () => {
  const axis = logScale(0.01, 100);
  expect(axis.decades.map((one) => Number(one.toPrecision(3)))).toEqual([0.01, 0.1, 1, 10, 100]);
  expect(axis.ratioOf(1)).toBeCloseTo(0.5, 12);
  for (const value of [0.02, 0.7, 33]) {
    expect(axis.valueAt(axis.ratioOf(value))).toBeCloseTo(value, 10);
  }
  expect([axis.ratioOf(1e-9), axis.ratioOf(1e9)]).toEqual([0, 1]);
});
