import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { type Job, readJob, writeJob } from "../../engine/job/index.ts";
import { checkJob } from "../../engine/judge/index.ts";
import {
  type OperateRequest,
  type OperateSolution,
  operateJob,
} from "../../engine/operate/index.ts";
import { conductorsOf, routeJob } from "../../engine/route/index.ts";

const LARGEST_BYTES = 100_000;
const RANDOM_STATES = 150;
/** Figures of the loom rules the demos were drawn by (tables/loomRules: splice-gap). */
const SPLICE_GAP_MM = 40;
const MOST_IN_A_SPLICE = 4;

const textOf = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`../../demos/${name}.json`, import.meta.url)), "utf8");

function demo(name: string): Job {
  const read = readJob(textOf(name));
  if (!read.ok) throw new Error(read.refusals.map(({ message }) => message).join("\n"));
  return read.job;
}

/** A small generator of the same numbers every time (Numerical Recipes' quick congruence). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

function solver(job: Job): (request: OperateRequest) => OperateSolution {
  const conductors = conductorsOf(job, routeJob(job));
  return (request) => {
    const operated = operateJob(job, conductors, request);
    if (!operated.ok) throw new Error(operated.refusals.map(({ message }) => message).join("\n"));
    return operated.solution;
  };
}

function loadsOf(solution: OperateSolution) {
  return [
    ...solution.lamps.map((lamp) => ({
      ref: `${lamp.part}:${lamp.filament}`,
      works: lamp.lit,
      expected: lamp.expected,
    })),
    ...solution.loads.map((load) => ({
      ref: `${load.part}:${load.element}`,
      works: load.works,
      expected: load.expected,
    })),
  ];
}

describe.each(["aldreth-single", "minazuru-four", "orivesta-enduro", "brenzach-twin"])(
  "%s",
  (name) => {
    const job = demo(name);
    const solve = solver(job);

    test("is canonical, small, and named as its file", () => {
      expect(writeJob(job)).toBe(textOf(name));
      expect(Buffer.byteLength(textOf(name))).toBeLessThan(LARGEST_BYTES);
      expect(job.id).toBe(name);
    });

    test("every length is known", () => {
      expect(routeJob(job).lengthsComplete).toBe(true);
    });

    test.each(job.states.map((state) => [state.id, state] as const))("%s", (_, state) => {
      const { positions: set, flash = "off", engine } = state;
      const solution = solve({ set, flash, ...(engine && { engine: { ...engine } as never }) });
      const working = loadsOf(solution).filter(({ works }) => works);
      expect(solution.converged).toBe(true);
      expect(working.map(({ ref }) => ref).sort()).toEqual([...state.on!].sort());
      expect(solution.afterFuses).toEqual([]);
    });

    test("in any position of the switches, what works is what is meant to", () => {
      const random = seeded(20251125);
      const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
      const switches = job.parts.filter((part) => part.kind === "switch");
      for (let i = 0; i < RANDOM_STATES; i++) {
        const set = Object.fromEntries(switches.map((part) => [part.id, pick(part.positions).id]));
        const flash = pick(["on", "off"] as const);
        const wrong = loadsOf(solve({ set, flash })).filter(
          ({ works, expected }) => expected !== null && works !== expected,
        );
        expect(wrong, JSON.stringify({ set, flash })).toEqual([]);
      }
    });

    test("every load says when it should work", () => {
      const solution = solve({});
      const intended = new Set(job.intents.map(({ load }) => load));
      expect(loadsOf(solution).filter(({ ref }) => !intended.has(ref))).toEqual([]);
    });

    test("splices: four conductors at most, on fixed runs, apart from each other and from the ends", () => {
      const runs = new Map(job.runs.map((run) => [run.id, run]));
      const splices = job.joints.filter(({ kind }) => kind === "crimped-splice");
      for (const { id, ways, offset } of splices) {
        expect(ways.length, id).toBeLessThanOrEqual(MOST_IN_A_SPLICE);
        const run = runs.get(offset!.run)!;
        expect(run.flex ?? false, id).toBe(false);
        expect(offset!.mm.value, id).toBeGreaterThanOrEqual(SPLICE_GAP_MM);
        expect(run.lengthMm!.value - offset!.mm.value, id).toBeGreaterThanOrEqual(SPLICE_GAP_MM);
        const others = splices.filter((one) => one.id !== id && one.offset!.run === offset!.run);
        for (const other of others) {
          const apartMm = Math.abs(other.offset!.mm.value - offset!.mm.value);
          expect(apartMm, `${id} ${other.id}`).toBeGreaterThanOrEqual(SPLICE_GAP_MM);
        }
      }
    });
  },
);

test("positive earth: with the lights on every live pin of the single is below the earthed post", () => {
  const { pins, batteries } = solver(demo("aldreth-single"))({ set: { LSW: "H" } });
  const ofPin = (pin: string) => pins.find((one) => one.pin === pin)!.v!;
  expect(ofPin("BAT.+")).toBe(0);
  expect(ofPin("HEAD.MAIN")).toBeLessThan(-5);
  expect(batteries[0]!.currentA).toBeGreaterThan(0);
});

describe("a demo is an example: nothing in it has to be put right", () => {
  test.each([
    "accessory-five-wires",
    "aldreth-single",
    "minazuru-four",
    "orivesta-enduro",
    "brenzach-twin",
  ])("%s", (name) => {
    const job = demo(name);
    const { verdict, findings } = checkJob(job);
    const grave = findings.filter(({ severity }) => severity !== "advise");
    expect(grave.map(({ message }) => message)).toEqual([]);
    expect(verdict).toBe("fit");
    // What somebody answered for must still be what is found.
    const answered = findings.filter(({ accepted }) => accepted !== null);
    expect(answered.length).toBe((job.decisions.accepted ?? []).length);
  });
});
