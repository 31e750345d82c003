import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { applyOperation, connectorInWires, type Job, readJob } from "../job/index.ts";
import { emptyJob, lampAt, run, wire } from "./loom.fixture.ts";
import { plugSides } from "./plugSides.ts";
import { routeJob } from "./routeJob.ts";
import { stepEnds } from "./stepEnds.ts";
import { viaAround } from "./viaAround.ts";
import { viaOver } from "./viaOver.ts";

const demos = readdirSync("demos")
  .filter((name) => name.endsWith(".json"))
  .map((name): readonly [string, Job] => {
    const read = readJob(readFileSync(`demos/${name}`, "utf8"));
    if (!read.ok) throw new Error(name);
    return [name, read.job];
  });

describe("a connector at a station", () => {
  test.each(demos)("has on one half only what comes from one side: %s", (_, job) => {
    const routed = routeJob(job);
    for (const { id: station } of job.stations) {
      const wires = [...routed.wires.values()]
        .filter(
          ({ stations, steps }) => steps.length > 0 && stations.slice(1, -1).includes(station),
        )
        .map((route) => route.wire)
        .sort();
      const sides = plugSides(job, routed, { station, connector: null }, wires);
      expect([...sides.wires.map((one) => one.wire), ...sides.sameSide].sort()).toEqual(wires);
      if (sides.wires.length === 0) continue;
      const made = connectorInWires(job, {
        wires: sides.wires,
        into: null,
        kind: "block-2.8",
        station,
      });
      const done = applyOperation(job, made.operation);
      if (!done.ok) throw new Error(done.refusals[0]?.message);
      const halves = runsAtHalves(done.job, made.id, station);
      expect([...halves.plug].filter((one) => halves.socket.has(one))).toEqual([]);
      // Nothing is longer for it: what was one wire is two pieces of the same way.
      const now = routeJob(done.job);
      for (const { wire: id } of sides.wires) {
        const other = done.job.wires.find(
          (one) =>
            one.id !== id &&
            one.to === job.wires.find((was) => was.id === id)!.to &&
            one.from.startsWith(`${made.id}.`),
        )!;
        const before = routed.wires.get(id)!;
        const [near, far] = [now.wires.get(id)!, now.wires.get(other.id)!];
        if (before.how !== "routed" || near.how !== "routed" || far.how !== "routed") continue;
        expect(near.lengthMm! + far.lengthMm!).toBeCloseTo(before.lengthMm!, 6);
      }
    }
  });

  function runsAtHalves(job: Job, connector: string, station: string) {
    const routed = routeJob(job);
    const endsOf = stepEnds(job);
    const halves = { plug: new Set<string>(), socket: new Set<string>() };
    for (const { id, from, to } of job.wires) {
      const { steps } = routed.wires.get(id)!;
      for (const pin of [from, to]) {
        if (!pin.startsWith(`${connector}.`)) continue;
        const step = steps.find((one) => {
          const { start, end } = endsOf(one);
          return start === station || end === station;
        });
        if (step) halves[pin.endsWith("p") ? "plug" : "socket"].add(step.run);
      }
    }
    return halves;
  }
});

describe("one more station on the way", () => {
  const stations = ["A", "B", "C", "D", "E"].map((id) => ({ id, name: id }));
  /** A - B - C - D in line, E beyond B and back at D: a second way round. */
  const job = emptyJob({
    stations: [...stations, { id: "X", name: "apart" }],
    parts: ["A", "D"].map((id) => lampAt(`P${id}`, id)),
    runs: [
      run("AB", ["A", "B"], 100),
      run("BC", ["B", "C"], 100),
      run("CD", ["C", "D"], 100),
      run("BE", ["B", "E"], 150),
      run("ED", ["E", "D"], 150),
    ],
    wires: [{ ...wire("W", "PA.A", "PD.A"), via: ["C"] }],
  });

  test("stands where the way over all of them is shortest", () => {
    // A B E B C D is 100 + 150 + 150 + 100 + 100; A B C B E D is 100 + 100 + 100 + 150 + 150: equal, the first is taken.
    expect(viaOver(job, "W", "E")).toEqual(["E", "C"]);
    expect(viaOver(job, "W", "B")).toEqual(["B", "C"]);
    expect(viaOver({ ...job, wires: [wire("W", "PA.A", "PD.A")] }, "W", "E")).toEqual(["E"]);
  });

  test("is refused where no way leads over it", () => {
    expect(viaOver(job, "W", "X")).toBeNull();
    expect(viaOver(job, "NONE", "B")).toBeNull();
  });
});

describe("stations a wire must pass, when it is cut", () => {
  const job = emptyJob({
    stations: ["A", "B", "C", "D"].map((id) => ({ id, name: id })),
    parts: ["A", "B", "C", "D"].map((id) => lampAt(`P${id}`, id)),
    runs: [run("AB", ["A", "B"], 300), run("BC", ["B", "C"], 450), run("CD", ["C", "D"], 120)],
    joints: [
      {
        id: "J",
        kind: "crimped-splice",
        ways: ["1"],
        offset: { run: "BC", mm: { value: 100, basis: "chosen" } },
      },
    ],
    wires: [{ ...wire("W", "PA.A", "PD.A"), via: ["B", "C"] }],
  });
  const route = routeJob(job).wires.get("W")!;

  test("stay with the piece they lie on", () => {
    expect(viaAround(job, route, { kind: "run", run: "BC", offsetMm: 100 })).toEqual({
      near: ["B"],
      far: ["C"],
    });
    expect(viaAround(job, route, { kind: "run", run: "AB", offsetMm: 40 })).toEqual({
      near: [],
      far: ["B", "C"],
    });
    expect(viaAround(job, route, { kind: "station", station: "C" })).toEqual({
      near: ["B"],
      far: [],
    });
  });

  test("are not told where the wire does not pass the place", () => {
    const short = routeJob({ ...job, wires: [wire("W", "PA.A", "PB.A")] }).wires.get("W")!;
    expect(viaAround(job, short, { kind: "station", station: "D" })).toBeNull();
    expect(viaAround(job, short, { kind: "run", run: "CD", offsetMm: 10 })).toBeNull();
  });
});
