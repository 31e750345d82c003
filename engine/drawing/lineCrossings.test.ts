import { expect, it } from "vitest";
import { lineCrossings } from "./lineCrossings.fixture.ts";
import { type Mark, point } from "./scene.ts";

const level: Mark = {
  kind: "line",
  from: point(0, 10),
  to: point(40, 10),
  stroke: { widthMm: 0.5, colour: "ink" },
};
const wire = (fromMm: number, toMm: number): Mark => ({
  kind: "wire",
  points: [point(20, fromMm), point(20, toMm)],
  areaMm2: 1,
  colours: { main: "red", tracer: "white" },
});

it("counts a wire across a line once, and one that only meets it not at all", () => {
  expect(lineCrossings([level, wire(0, 30)])).toHaveLength(1);
  expect(lineCrossings([level, wire(10, 30)])).toEqual([]);
  expect(lineCrossings([level, wire(12, 30)])).toEqual([]);
});
