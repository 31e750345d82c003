import fc from "fast-check";
import { expect, test } from "vitest";
import { axisOf, linePath, plotPaper, spreadApart, tickDecimals, ticksOf } from "./linePlot.ts";

test("an axis holds both ends, on rules of 1, 2 or 5", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 5000, noNaN: true }),
      fc.double({ min: 0.01, max: 9000, noNaN: true }),
      (from, span) => {
        const axis = axisOf(from, from + span);
        expect(axis.from).toBeLessThanOrEqual(from + 1e-6);
        expect(axis.to).toBeGreaterThanOrEqual(from + span - 1e-6);
        const lead = axis.tick / 10 ** Math.floor(Math.log10(axis.tick) + 1e-9);
        expect([1, 2, 5]).toContain(Math.round(lead));
        expect(ticksOf(axis).length).toBeLessThanOrEqual(10);
      },
    ),
  );
});

test("amps up to 16.3 have rules five apart, and tenths are told where they differ", () => {
  expect(axisOf(0, 16.3, 4)).toEqual({ from: 0, to: 20, tick: 5 });
  expect(tickDecimals({ from: 0, to: 1, tick: 0.2 })).toBe(1);
  expect(tickDecimals({ from: 0, to: 10, tick: 2 })).toBe(0);
});

test("more lies further right and further up", () => {
  const paper = plotPaper(axisOf(0, 10), axisOf(0, 5), 600, 300);
  expect(paper.x(10)).toBe(paper.right);
  expect(paper.y(5)).toBe(paper.top);
  expect(linePath(paper, [[0, 0]])).toBe(`M${paper.left.toFixed(1)} ${paper.bottom.toFixed(1)}`);
  expect(linePath(paper, [])).toBe("");
});

test("names keep their order and their distance inside the paper", () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 30, max: 270, noNaN: true }), { minLength: 1, maxLength: 5 }),
      (heights) => {
        const placed = spreadApart(heights, 20, [30, 270]);
        const sorted = [...placed].sort((a, b) => a - b);
        sorted.slice(1).forEach((y, k) => {
          expect(y - sorted[k]!).toBeGreaterThanOrEqual(20 - 1e-9);
        });
        expect(Math.min(...placed)).toBeGreaterThanOrEqual(30 - 1e-9);
        expect(Math.max(...placed)).toBeLessThanOrEqual(270 + 1e-9);
      },
    ),
  );
});
