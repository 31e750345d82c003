import { expect, test } from "vitest";
import { withLedLamps } from "./changedLoads.ts";
import { demandList, lampCurrentA } from "./demandList.ts";
import { jobAt, modelOf } from "./sampleModel.fixture.ts";

test("a lamp is no fixed resistance: 4 A at 14 V is 3.67 A at 12 V, not 3.43", () => {
  // A question page's wrong answer (documen.tv 17576536) and the power law of a standard handbook.
  const lamp = { ratedV: 14, ratedW: 56 };
  expect(lampCurrentA(lamp, 12, 1)).toBeCloseTo(3.4286, 3);
  expect(lampCurrentA(lamp, 12, 0.55)).toBeCloseTo(3.675, 3);
  expect(lampCurrentA(lamp, 12, -1)).toBeCloseTo(56 / 12, 9);
});

test("currents of whole machines by watts: 25 W at 12 V, 72 W at 12 V, 24 + 3 + 1.3 W at 6 V", () => {
  // European chandler's page 2.1 A; motorcycle battery leaflet 6 A; lamp load a dynamo supplier advises, 28.3 W.
  expect(lampCurrentA({ ratedV: 12, ratedW: 25 }, 12, 0.55)).toBeCloseTo(2.083, 3);
  expect(lampCurrentA({ ratedV: 12, ratedW: 72 }, 12, 0.55)).toBeCloseTo(6, 9);
  const advisedW = [24, 3, 1.3].reduce(
    (sumW, ratedW) => sumW + 6 * lampCurrentA({ ratedV: 6, ratedW }, 6, 0.55),
    0,
  );
  expect(advisedW).toBeCloseTo(28.3, 9);
});

test("part-time loads are in the list with their share and nothing is in it twice", () => {
  const model = modelOf(jobAt("demos/minazuru-four.json"));
  const state = model.states.find(({ id }) => id === "dip-riding")!;
  const rows = demandList(model, state, 13.8, 0.55);
  const shareOf = (load: string) => rows.find((row) => row.load === load)!.dutyRatio;
  expect(shareOf("REAR:STOP-E")).toBe(0.15);
  expect(shareOf("FLI:L-E")).toBe(0.05);
  expect(shareOf("CL1:SW-CB")).toBe(0.5);
  expect(shareOf("HEAD:LO-E")).toBe(1);
  expect(new Set(rows.map(({ load }) => load)).size).toBe(rows.length);
});

test("a lamp swapped for light-emitting diodes keeps the proportion of its filaments", () => {
  const job = withLedLamps(jobAt("demos/minazuru-four.json"), [
    { kind: "led", part: "REAR", powerW: 2.1 },
  ]);
  const rear = job.parts.find(({ id }) => id === "REAR");
  if (rear?.kind !== "lamp") throw new Error("the demo has a rear lamp");
  expect(rear.source).toBe("led");
  expect(rear.filaments.map(({ ratedW }) => ratedW)).toEqual([0.5, 2.1]);
});
