import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Job } from "../job/index.ts";
import { figure } from "../tables/index.ts";
import { emptyJob, lampAt, run, wire } from "./loom.fixture.ts";
import { routeJob } from "./routeJob.ts";

const stations = ["A", "B", "C", "D"].map((id) => ({ id, name: id }));
const parts = ["A", "B", "C", "D"].map((id) => lampAt(`P${id}`, id));

/** A - B - C in line, D off B. */
const tree = (filled: Partial<Job> = {}): Job =>
  emptyJob({
    stations,
    parts,
    runs: [run("AB", ["A", "B"], 300), run("BC", ["B", "C"], 450), run("BD", ["B", "D"], 120)],
    ...filled,
  });

describe("a wire's length", () => {
  test("is the sum of the runs it lies in, whichever way it is written", () => {
    const wires = [wire("W1", "PA.A", "PC.A"), wire("W2", "PC.E", "PA.E")];
    const routed = routeJob(tree({ wires }));
    expect(routed.wires.get("W1")).toMatchObject({ lengthMm: 750, how: "routed" });
    expect(routed.wires.get("W2")?.lengthMm).toBe(750);
    expect(routed.wires.get("W2")?.stations).toEqual(["C", "B", "A"]);
    expect(routed.lengthsComplete).toBe(true);
  });

  test("as typed stands before the runs", () => {
    const typed = { value: 900, basis: "measured" } as const;
    const routed = routeJob(tree({ wires: [wire("W1", "PA.A", "PC.A", { lengthMm: typed })] }));
    expect(routed.wires.get("W1")).toMatchObject({ lengthMm: 900, how: "typed" });
    expect(routed.stretches.map((one) => one.run)).toEqual(["AB", "BC"]);
  });

  test("honours via", () => {
    const wires = [wire("W1", "PA.A", "PC.A", { via: ["D"] })];
    expect(routeJob(tree({ wires })).wires.get("W1")?.lengthMm).toBe(300 + 120 + 120 + 450);
  });

  test("of two ends at one station is the stub, marked estimated", () => {
    const routed = routeJob(tree({ wires: [wire("W1", "PA.A", "PA.E")] }));
    const stubMm = figure("routeRules", "stub", "value").value;
    expect(routed.wires.get("W1")).toMatchObject({
      how: "stub",
      basis: "estimated",
      lengthMm: stubMm,
    });
  });

  test("is as good as its weakest run", () => {
    const estimated = run("BC", ["B", "C"], null, { lengthMm: { value: 400, basis: "estimated" } });
    const runs = [run("AB", ["A", "B"], 300), estimated];
    const wires = [wire("W1", "PA.A", "PB.A"), wire("W2", "PA.A", "PC.A")];
    const routed = routeJob(tree({ runs, wires }));
    expect(routed.wires.get("W1")?.basis).toBe("measured");
    expect(routed.wires.get("W2")?.basis).toBe("estimated");
  });

  test("over a run nobody measured is unknown, never zero", () => {
    const runs = [run("AB", ["A", "B"], 300), run("BC", ["B", "C"], null)];
    const wires = [wire("W1", "PA.A", "PC.A"), wire("W2", "PA.A", "PB.A")];
    const routed = routeJob(tree({ runs, wires }));
    expect(routed.wires.get("W1")).toMatchObject({
      how: "unknown",
      lengthMm: null,
      unknown: { reason: "run-not-measured", runs: ["BC"] },
    });
    expect(routed.wires.get("W2")?.lengthMm).toBe(300);
    expect(routed.lengthsComplete).toBe(false);
  });

  test("without a station or a way names what is missing", () => {
    const wires = [wire("W1", "PA.A", "PX.A"), wire("W2", "PA.A", "PD.A")];
    const runs = [run("AB", ["A", "B"], 300)];
    const routed = routeJob(tree({ runs, wires, parts: [...parts, lampAt("PX")] }));
    expect(routed.wires.get("W1")?.unknown).toEqual({ reason: "no-station", pins: ["PX.A"] });
    expect(routed.wires.get("W2")?.unknown).toEqual({ reason: "no-way", stations: ["A", "D"] });
  });
});

describe("loops", () => {
  const loop = (throughDMm: number): Job =>
    tree({
      runs: [
        run("AB", ["A", "B"], 300),
        run("BC", ["B", "C"], 200),
        run("AD", ["A", "D"], throughDMm),
        run("DC", ["D", "C"], 200),
      ],
      wires: [wire("W1", "PA.A", "PC.A")],
    });

  test("another way of nearly the same length is reported", () => {
    const found = routeJob(loop(320)).wires.get("W1");
    expect(found?.lengthMm).toBe(500);
    expect(found?.otherWay).toEqual({ lengthMm: 520, runs: ["AD", "DC"] });
  });

  test("a much longer one is not", () => {
    expect(routeJob(loop(900)).wires.get("W1")?.otherWay).toBeNull();
  });

  test("an unmeasured way round leaves a shorter measured one in doubt", () => {
    const job = loop(320);
    const runs = job.runs.map((one) => (one.id === "AD" ? run("AD", ["A", "D"], null) : one));
    expect(routeJob({ ...job, runs }).wires.get("W1")?.unknown).toEqual({
      reason: "run-not-measured",
      runs: ["AD"],
    });
  });
});

test("a joint along a run counts from where it lies, and cuts the bundle there", () => {
  const joints: Job["joints"] = [
    {
      id: "J1",
      kind: "crimped-splice",
      ways: ["1", "2", "3"],
      offset: { run: "BC", mm: { value: 100, basis: "measured" } },
    },
  ];
  const wires = [
    wire("W1", "PA.A", "J1.1"),
    wire("W2", "J1.2", "PC.A"),
    wire("W3", "J1.3", "PD.A"),
    wire("W4", "PA.E", "PC.E"),
  ];
  const routed = routeJob(tree({ joints, wires }));
  const lengths = ["W1", "W2", "W3", "W4"].map((id) => routed.wires.get(id)?.lengthMm);
  expect(lengths).toEqual([400, 350, 220, 750]);
  const bundles = routed.stretches.map(({ id, wires: ids, lengthMm }) => [id, ids, lengthMm]);
  expect(bundles).toEqual([
    ["L/AB", ["W1", "W4"], 300],
    ["L/BC", ["W1", "W3", "W4"], 100],
    ["L/BC#2", ["W2", "W4"], 350],
    ["L/BD", ["W3"], 120],
  ]);
  expect(routed.stretchesOfWire.get("W4")?.map(({ id }) => id)).toEqual(["L/AB", "L/BC", "L/BC#2"]);
});

test("the hottest place on the way is the wire's ambient", () => {
  const job = tree({
    stations: stations.map((one) =>
      one.id === "C" ? { ...one, surroundings: "headlamp-shell" as const } : one,
    ),
    wires: [wire("W1", "PA.A", "PB.A"), wire("W2", "PA.A", "PC.A")],
    decisions: { ambientC: { value: 35, basis: "chosen" } },
  });
  const routed = routeJob(job);
  expect(routed.ambients.get("W1")).toEqual({ ambientC: 35, at: "AB" });
  expect(routed.ambients.get("W2")).toEqual({
    ambientC: figure("designAmbients", "headlamp-shell", "value").value,
    at: "C",
  });
});

// Path lengths of the reference machines as summed by another program, printed to 0.1 m. The jobs state them wire by
// wire too; here they are taken away and found again over the runs.
test.each([
  ["a", 18.7],
  ["c", 48.7],
  ["d", 33.1],
  ["e", 76.3],
])("reference machine %s: %f m of path", (machine, totalM) => {
  const path = `../../cases/reference-machines/${machine}/job.json`;
  const job = JSON.parse(
    readFileSync(fileURLToPath(new URL(path, import.meta.url)), "utf8"),
  ) as Job;
  const stated = new Map(job.wires.map(({ id, lengthMm }) => [id, lengthMm?.value]));
  const wires = job.wires.map(({ lengthMm: _, ...rest }) => rest);
  const routed = routeJob({ ...job, wires });
  for (const [id, { lengthMm }] of routed.wires) expect(lengthMm, id).toBe(stated.get(id));
  const sumMm = [...routed.wires.values()].reduce((sum, { lengthMm }) => sum + lengthMm!, 0);
  expect(routed.lengthsComplete).toBe(true);
  expect(Math.abs(sumMm / 1000 - totalM)).toBeLessThanOrEqual(0.05);
});

test("a removed wire lies in no bundle and leaves lengths complete", () => {
  const wires = [wire("W1", "PA.A", "PC.A"), wire("W2", "PA.A", "PX.A", { status: "remove" })];
  const routed = routeJob(tree({ wires, parts: [...parts, lampAt("PX")] }));
  expect(routed.stretches.every((one) => !one.wires.includes("W2"))).toBe(true);
  expect(routed.lengthsComplete).toBe(true);
});

test("law: on any tree the way between two stations is as long as the way back, and no longer than by a third", () => {
  const lengths = fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(lengths, fc.infiniteStream(fc.nat()), (lengthsMm, picks) => {
      const names = ["S0", ...lengthsMm.map((_, i) => `S${i + 1}`)];
      const pick = (below: number): number => (picks.next().value as number) % below;
      const runs = lengthsMm.map((mm, i) => run(`R${i}`, [`S${pick(i + 1)}`, `S${i + 1}`], mm));
      const [a, b, c] = [pick(names.length), pick(names.length), pick(names.length)];
      const ends = (from: number, to: number, rest = {}) =>
        wire(`W${from}-${to}`, `P${from}.A`, `P${to}.A`, rest);
      const job = emptyJob({
        stations: names.map((id) => ({ id, name: id })),
        parts: names.map((id, i) => lampAt(`P${i}`, id)),
        runs,
        wires: [
          { ...ends(a, b), id: "OUT" },
          { ...ends(b, a), id: "BACK" },
          { ...ends(a, b, { via: [`S${c}`] }), id: "BY" },
        ],
      });
      const routed = routeJob(job).wires;
      const lengthMm = (id: string): number => {
        const route = routed.get(id);
        return route?.how === "stub" ? 0 : (route?.lengthMm ?? Number.NaN);
      };
      expect(lengthMm("OUT")).toBe(lengthMm("BACK"));
      expect(lengthMm("BY")).toBeGreaterThanOrEqual(lengthMm("OUT"));
    }),
  );
});
