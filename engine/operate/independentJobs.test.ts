import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Job } from "../job/index.ts";
import { circuits } from "./circuits.fixture.ts";
import { independentJobs } from "./independentJobs.ts";

const switchesOf = ({ parts }: Job): readonly string[] =>
  parts.filter(({ kind }) => kind === "switch").map(({ id }) => id);

describe("circuits that only the battery and the frame join", () => {
  const job = circuits([21, 5, 10]);
  const { jobs, common } = independentJobs(job);

  test("each is a job of its own, with the battery and its earth lead", () => {
    expect(jobs.map(switchesOf)).toEqual([
      ["S1a", "S1b"],
      ["S2a", "S2b"],
      ["S3a", "S3b"],
    ]);
    for (const { parts, wires } of jobs) {
      expect(parts.some(({ id }) => id === "BAT")).toBe(true);
      expect(wires.some(({ id }) => id === "E")).toBe(true);
    }
    expect([...common]).toEqual(["E"]);
  });

  test("every other wire is in exactly one of them", () => {
    for (const { id } of job.wires) {
      const holders = jobs.filter(({ wires }) => wires.some((one) => one.id === id));
      expect(holders.length, id).toBe(id === "E" ? jobs.length : 1);
    }
  });

  test("a wire between two circuits makes them one", () => {
    const tie = { ...job.wires[0]!, id: "TIE", from: "S1a.2", to: "L2a.L" };
    expect(independentJobs({ ...job, wires: [...job.wires, tie] }).jobs.map(switchesOf)).toEqual([
      ["S1a", "S1b", "S2a", "S2b"],
      ["S3a", "S3b"],
    ]);
  });

  test("what an exclusion or an intent names together stays together", () => {
    const exclusions = [{ id: "X", positions: { S1a: ["ON"], S3b: ["ON"] } }];
    const intents = [{ load: "L2a:L-E", when: [{ positions: { S3a: ["ON"] } }] }];
    const excluded = independentJobs({ ...job, exclusions } as unknown as Job).jobs;
    expect(excluded.map(({ parts }) => parts.length)).toHaveLength(2);
    const meant = independentJobs({ ...job, intents } as unknown as Job).jobs;
    expect(meant).toHaveLength(2);
    const holder = meant.find((one) => one.intents.length > 0);
    expect(switchesOf(holder!)).toEqual(expect.arrayContaining(["S2a", "S3a"]));
  });

  test("the place a generator's case is fastened to goes with the generator", () => {
    const point = { id: "MAG" };
    const bodies = [...job.bodies, { id: "ENG", name: "engine", kind: "engine", points: [point] }];
    const generator = {
      id: "GEN",
      name: "magneto",
      kind: "generator",
      type: "magneto",
      case: "ENG.MAG",
      pins: [{ id: "K" }],
      windings: [{ pins: ["K"], use: "ignition" }],
    };
    const parts = [...job.parts, generator];
    // The engine is part of another circuit, which would take the place away with it.
    const wires = [...job.wires, { ...job.wires[0]!, id: "TIE", from: "S1a.2", to: "ENG.MAG" }];
    const whole = independentJobs({ ...job, bodies, parts, wires } as unknown as Job);
    const holder = whole.jobs.find((one) => one.parts.some(({ id }) => id === "GEN"))!;
    const engine = holder.bodies.find(({ id }) => id === "ENG")!;
    expect(engine.points).toEqual([point]);
  });

  test("one circuit alone, and a machine behind one main fuse, are not divided", () => {
    const one = circuits([21]);
    expect(independentJobs(one).jobs).toEqual([one]);
    const path = new URL("../../cases/reference-machines/c/job.json", import.meta.url);
    const machine = JSON.parse(readFileSync(path, "utf8")) as Job;
    expect(independentJobs(machine).jobs).toEqual([machine]);
  });
});
