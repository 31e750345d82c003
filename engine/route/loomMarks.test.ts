import { describe, expect, test } from "vitest";
import type { Job } from "../job/index.ts";
import { conductorsOf } from "./conductorsOf.ts";
import { doubtfulLengths } from "./doubtfulLengths.ts";
import { emptyJob, lampAt, run, wire } from "./loom.fixture.ts";
import { jointMarks } from "./loomMarks.ts";
import { routeJob } from "./routeJob.ts";

const joint = (id: string, runId: string, mm: number): Job["joints"][number] => ({
  id,
  kind: "crimped-splice",
  ways: ["1", "2", "3", "4"],
  offset: { run: runId, mm: { value: mm, basis: "measured" } },
});

const size = (make: string) => ({ size: { make, basis: "chosen" as const } });

/** A - B - C with D off B; the run AB moves. */
const loom = (joints: Job["joints"], wires: Job["wires"]): Job =>
  emptyJob({
    stations: ["A", "B", "C", "D"].map((id) => ({ id, name: id })),
    parts: ["A", "B", "C", "D"].map((id) => lampAt(`P${id}`, id)),
    runs: [
      run("AB", ["A", "B"], 300, { flex: true }),
      run("BC", ["B", "C"], 450),
      run("BD", ["B", "D"], 120),
    ],
    joints,
    wires,
  });

const marksOf = (job: Job) => {
  const routed = routeJob(job);
  return jointMarks(job, routed, conductorsOf(job, routed));
};

describe("joints", () => {
  // The acceptance scenario "joint": 2.0 mm² in, three times 1.0 mm² out, 5.0 mm² together (4.99 counted by strands).
  test("2.0 in and three 1.0 out hold 5.0 mm² of copper, on a fixed run clear of its neighbours", () => {
    const wires = [
      wire("IN", "PC.A", "J.1", size("thin-2.0")),
      wire("O1", "J.2", "PA.A", size("thin-1.0")),
      wire("O2", "J.3", "PB.A", size("thin-1.0")),
      wire("O3", "J.4", "PD.A", size("thin-1.0")),
      wire("GONE", "J.4", "PD.A", { ...size("thin-1.0"), status: "remove" }),
    ];
    const [mark] = marksOf(loom([joint("J", "BC", 60)], wires));
    expect(mark?.copperMm2).toBeCloseTo(5, 1);
    expect(mark).toMatchObject({
      wires: ["IN", "O1", "O2", "O3"],
      inFlex: false,
      nearest: { kind: "branch", id: "B", distanceMm: 60 },
    });
  });

  test("two close together, one of them in the moving run", () => {
    const wires = [wire("W", "PA.A", "PC.A")];
    const marks = marksOf(
      loom([joint("J1", "BC", 200), joint("J2", "BC", 230), joint("J3", "AB", 150)], wires),
    );
    expect(
      marks.map(({ joint: id, inFlex, nearest }) => [id, inFlex, nearest?.distanceMm]),
    ).toEqual([
      ["J1", false, 30],
      ["J2", false, 30],
      ["J3", true, 350],
    ]);
  });
});

describe("doubtful lengths", () => {
  // The acceptance scenario "unit mix-up": 1.6, 160 and 1600 for like distances; a typed path of 1.6 mm.
  test("asks about each with what was perhaps meant, and touches none", () => {
    const runs = [
      run("R1", ["A", "B"], 1.6),
      run("R2", ["B", "C"], 160),
      run("R3", ["C", "D"], 1600),
      run("R4", ["A", "D"], null),
    ];
    const typed = wire("W", "PA.A", "PB.A", { lengthMm: { value: 1.6, basis: "measured" } });
    const job = emptyJob({
      stations: ["A", "B", "C", "D"].map((id) => ({ id, name: id })),
      runs,
      wires: [typed],
    });
    const doubts = doubtfulLengths(job);
    expect(doubts.map(({ subject, reason }) => [subject.id, reason])).toEqual([
      ["R1", "shorter-than-a-connector"],
      ["R3", "unlike-the-others"],
      ["W", "shorter-than-a-connector"],
    ]);
    expect(doubts[0]?.guesses).toEqual([{ unit: "m", lengthMm: 1600 }]);
    expect(routeJob(job).wires.get("W")?.lengthMm).toBe(1.6);
  });

  test("usual lengths raise no question", () => {
    const runs = [80, 250, 300, 420, 720].map((mm, i) => run(`R${i}`, ["A", "B"], mm));
    expect(doubtfulLengths(emptyJob({ runs }))).toEqual([]);
  });
});
