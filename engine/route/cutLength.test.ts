import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Job } from "../job/index.ts";
import { conductorsOf } from "./conductorsOf.ts";
import { allowance, allowancesOf, cutLength, cutLengthsOf } from "./cutLength.ts";
import { cutTotals } from "./cutTotals.ts";
import { emptyJob, lampAt, run, wire } from "./loom.fixture.ts";
import { routeJob } from "./routeJob.ts";

const blue = { main: "blue" };

/** 1370 mm of path over a moving run. */
const job = (filled: Partial<Job> = {}): Job =>
  emptyJob({
    stations: ["A", "B", "C"].map((id) => ({ id, name: id })),
    parts: ["A", "B", "C"].map((id) => lampAt(`P${id}`, id)),
    runs: [run("AB", ["A", "B"], 300, { flex: true }), run("BC", ["B", "C"], 1070)],
    wires: [wire("W1", "PA.A", "PC.A", { colour: blue })],
    ...filled,
  });

describe("cut length of a 1370 mm path through the headstock", () => {
  // The acceptance scenario "cut length": 6 mm strip each end, 2 x 12 mm a end, 40 mm flex slack, up to the next 10.
  const allowances = {
    stripMm: 6,
    reterminationMm: 12,
    reterminationCount: 2,
    flexSlackMm: 40,
    roundUpMm: 10,
    wastePercent: 5,
  };

  test("is 1370 + 12 + 48 + 40 = 1470 mm, with its parts", () => {
    const stated = job({ decisions: { allowances } });
    expect(cutLengthsOf(stated, routeJob(stated)).get("W1")).toEqual({
      path: 1370,
      strip: 12,
      retermination: 48,
      flex: 40,
      trim: 0,
      rounding: 0,
      total: 1470,
    });
  });

  test("comes out the same from the tables alone", () => {
    expect(cutLengthsOf(job(), routeJob(job())).get("W1")?.total).toBe(1470);
  });

  test("to buy: 5 % more", () => {
    const [total] = cutTotals(job(), routeJob(job()), conductorsOf(job(), routeJob(job())));
    expect(total).toMatchObject({ makeId: "thin-1.0", colour: blue, cutMm: 1470 });
    expect(total?.buyM).toBeCloseTo(1.5435, 12);
  });
});

test("no flex slack where nothing moves", () => {
  const still = job({ wires: [wire("W1", "PB.A", "PC.A")] });
  expect(cutLengthsOf(still, routeJob(still)).get("W1")).toMatchObject({
    flex: 0,
    rounding: 0,
    total: 1130,
  });
});

test("the first loom of its kind is left long at both ends, a repeat is not", () => {
  const trimMm = allowance("trim").value;
  const first = allowancesOf(job({ decisions: { lengthMode: "first-off" } }));
  const repeat = allowancesOf(job({ decisions: { lengthMode: "repeat" } }));
  const route = routeJob(job()).wires.get("W1")!;
  expect(cutLength(route, first)?.trim).toBe(2 * trimMm);
  expect(cutLength(route, repeat)?.trim).toBe(0);
});

test("an unknown length is not cut and leaves its total incomplete", () => {
  const unmeasured = job({
    runs: [run("AB", ["A", "B"], 300), run("BC", ["B", "C"], null)],
    wires: [
      wire("W1", "PA.A", "PC.A", { colour: blue }),
      wire("W2", "PA.A", "PB.A", { colour: blue }),
    ],
  });
  const routed = routeJob(unmeasured);
  expect(cutLengthsOf(unmeasured, routed).get("W1")).toBeNull();
  expect(cutTotals(unmeasured, routed, conductorsOf(unmeasured, routed))).toMatchObject([
    { wireCount: 2, cutMm: 360, unknownWires: ["W1"], basis: "incomplete" },
  ]);
});

test("kept and removed wires are in no total; makes and colours are kept apart", () => {
  const mixed = job({
    wires: [
      wire("W1", "PA.A", "PC.A", { colour: blue }),
      wire("W2", "PA.A", "PC.A", { colour: blue, status: "keep" }),
      wire("W3", "PA.A", "PC.A", { colour: blue, status: "remove" }),
      wire("W4", "PA.A", "PC.A", { colour: { main: "blue", tracer: "white" } }),
      wire("W5", "PA.A", "PC.A", {
        colour: blue,
        size: { make: "thin-2.0", basis: "chosen" },
      }),
    ],
  });
  const routed = routeJob(mixed);
  const totals = cutTotals(mixed, routed, conductorsOf(mixed, routed));
  expect(totals.map((one) => [one.makeId, one.colour?.tracer ?? "-", one.wireCount])).toEqual([
    ["thin-1.0", "-", 1],
    ["thin-1.0", "white", 1],
    ["thin-2.0", "-", 1],
  ]);
});

test("law: the parts add up, the total is a whole step and less than a step over the sum", () => {
  const pathMm = fc.double({ min: 0.001, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(pathMm, fc.integer({ min: 1, max: 100 }), (lengthMm, roundUpMm) => {
      const route = { ...routeJob(job()).wires.get("W1")!, lengthMm };
      const cut = cutLength(route, { ...allowancesOf(job()), roundUpMm })!;
      const parts = cut.path + cut.strip + cut.retermination + cut.flex + cut.trim;
      expect(cut.total).toBeCloseTo(parts + cut.rounding, 6);
      expect(cut.total % roundUpMm).toBe(0);
      expect(cut.rounding).toBeGreaterThan(-1e-6);
      expect(cut.rounding).toBeLessThan(roundUpMm);
    }),
  );
});
