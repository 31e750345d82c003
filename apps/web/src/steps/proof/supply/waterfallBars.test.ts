import { expect, test } from "vitest";
import { waterfallBars } from "./waterfallBars.ts";

const step = (of: string, side: "battery" | "live" | "load" | "earth", dropV: number) => ({
  of,
  kind: "wire",
  currentA: 10,
  dropV,
  side,
});
const fall = [
  step("BAT", "battery", 2),
  step("W1", "live", 1),
  step("P1", "live", 0.001),
  step("P2", "live", 0.002),
  step("HEAD", "load", 9),
  step("E1", "earth", 0.5),
];
const bars = waterfallBars(fall, { W1: "wire 1", HEAD: "headlamp" });

test("each bar begins where the one before ended, and the last ends at the whole", () => {
  const lost = bars.filter(({ side }) => side !== "load");
  lost.slice(1).forEach((bar, k) => {
    expect(bar.fromRatio).toBeCloseTo(lost[k]!.fromRatio + lost[k]!.lengthRatio, 12);
  });
  expect(lost.at(-1)!.fromRatio + lost.at(-1)!.lengthRatio).toBeCloseTo(1, 12);
});

test("the load stands between its two sides, by its name, with no length", () => {
  expect(bars.map(({ side }) => side)).toEqual(["battery", "live", "live", "load", "earth"]);
  expect(bars[3]).toMatchObject({ name: "headlamp", dropV: 9, lengthRatio: 0 });
});

test("small steps of a side stand as one and lose none of their volts", () => {
  const small = bars.find(({ name }) => name === "2 small steps")!;
  expect(small.dropV).toBeCloseTo(0.003, 12);
  expect(small.of).toEqual(["P1", "P2"]);
});

test("two steps of one part are told apart by their pins", () => {
  const [a, b] = waterfallBars([step("HBR.30", "live", 1), step("HBR.87", "live", 2)], {
    "HBR.30": "relay",
    "HBR.87": "relay",
  });
  expect([a!.name, b!.name]).toEqual(["relay, HBR.30", "relay, HBR.87"]);
});

test("one small step alone keeps its name; nothing lost draws nothing", () => {
  expect(waterfallBars([step("A", "live", 5), step("B", "live", 0.001)], {})).toHaveLength(2);
  expect(waterfallBars([step("H", "load", 12)], {})[0]!.lengthRatio).toBe(0);
});
