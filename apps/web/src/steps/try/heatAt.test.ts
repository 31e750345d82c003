import type { FaultStory } from "@copperwright/engine";
import { expect, test } from "vitest";
import { heatAt } from "./heatAt.ts";
import type { TryView } from "./worker/tryView.ts";

const temperature = (wire: string, temperatureC: number) => ({
  wire,
  temperatureC,
  ambientC: 20,
  stretch: null,
  limitC: 130,
});
const view = {
  wires: [
    { wire: "A", temperature: temperature("A", 30) },
    { wire: "B", temperature: temperature("B", 35) },
  ],
  runs: [{ run: "R", wires: ["A", "B"], temperatureC: 35 }],
} as unknown as TryView;
const story = {
  wires: [
    {
      wire: "A",
      startC: 30,
      points: [
        { timeS: 0.1, temperatureC: 40 },
        { timeS: 1, temperatureC: 90 },
      ],
    },
  ],
} as unknown as FaultStory;

test.each([
  [0.05, 30, 35],
  [0.5, 40, 40],
  [10, 90, 90],
])("at %d s", (atS, wireC, runC) => {
  const then = heatAt(view, story, atS);
  expect(then.wires[0]!.temperature!.temperatureC).toBe(wireC);
  expect(then.wires[1]!.temperature!.temperatureC).toBe(35);
  expect(then.runs[0]!.temperatureC).toBe(runC);
});

test("nothing broken: the view itself", () => {
  expect(heatAt(view, null, 1)).toBe(view);
});
