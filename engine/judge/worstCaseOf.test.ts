import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Job, presentParts, readJob } from "../job/index.ts";
import { circuits } from "../operate/circuits.fixture.ts";
import { type CompiledJob, compileJob, conditionsOf } from "../operate/index.ts";
import { conductorsOf, routeJob } from "../route/index.ts";
import { worstCaseOf } from "./worstCaseOf.ts";

function jobAt(name: string): Job {
  const path = new URL(`../../cases/reference-machines/${name}/job.json`, import.meta.url);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error("refused");
  return read.job;
}

/** Every position of every switch, flasher on and off. */
function* everyState(job: Job) {
  const switches = presentParts(job).flatMap((part) => (part.kind === "switch" ? [part] : []));
  const count = switches.reduce((product, { positions }) => product * positions.length, 1);
  for (let n = 0; n < count; n++) {
    let rest = n;
    const positions: Record<string, string> = {};
    for (const part of switches) {
      positions[part.id] = part.positions[rest % part.positions.length]!.id;
      rest = Math.floor(rest / part.positions.length);
    }
    yield { positions, engine: { mode: "stopped" }, flash: "on" } as const;
    yield { positions, engine: { mode: "stopped" }, flash: "off" } as const;
  }
}

function bruteForce(job: Job, { solve, jobNetwork }: CompiledJob): Map<string, number> {
  const mostA = new Map<string, number>();
  for (const state of everyState(job)) {
    const { elementA, converged } = solve(state);
    if (!converged) continue;
    jobNetwork.elements.forEach(({ kind, of }, k) => {
      if (kind === "wire") mostA.set(of, Math.max(mostA.get(of) ?? 0, Math.abs(elementA[k]!)));
    });
  }
  return mostA;
}

/** The tally passes over a current that is larger by less than a millionth and a microampere. */
const allowedA = (currentA: number): number => 2e-6 * (1 + currentA);

describe("the search by single switches against every state there is", () => {
  test("enduro, 1536 states: every wire's largest current is found", () => {
    const job = jobAt("d");
    const conductors = conductorsOf(job, routeJob(job));
    const compiled = compileJob(job, conductors, { conditions: conditionsOf(job, {}) });
    const all = bruteForce(job, compiled);
    const { conductors: found, complete, shorted } = worstCaseOf(job, conductors, compiled);
    expect(complete).toBe(true);
    expect(shorted).toEqual([]);
    for (const [wire, currentA] of all) {
      expect(Math.abs(found.get(wire)!.currentA - currentA), wire).toBeLessThan(allowedA(currentA));
    }
  });

  test("6 V single, 96 states: found, and with the regulator's volts never less", () => {
    const job = jobAt("a");
    const conductors = conductorsOf(job, routeJob(job));
    const compiled = compileJob(job, conductors, { conditions: conditionsOf(job, {}) });
    const all = bruteForce(job, compiled);
    const { conductors: found } = worstCaseOf(job, conductors, compiled);
    for (const [wire, currentA] of all) {
      expect(found.get(wire)!.currentA, wire).toBeGreaterThan(currentA - allowedA(currentA));
    }
  });

  test("circuits that only the battery joins, 64 states: found though each is searched by itself", () => {
    const job = circuits([21, 5, 10]);
    const conductors = conductorsOf(job, routeJob(job));
    const compiled = compileJob(job, conductors, { conditions: conditionsOf(job, {}) });
    const all = bruteForce(job, compiled);
    const { conductors: found, loads, complete } = worstCaseOf(job, conductors, compiled);
    expect(complete).toBe(true);
    for (const [wire, currentA] of all) {
      expect(Math.abs(found.get(wire)!.currentA - currentA), wire).toBeLessThan(allowedA(currentA));
    }
    // A drop is worst with everything on, because all come home through one lead.
    for (const { load, drop, dropState } of loads.values()) {
      expect(Object.values(dropState!.positions!), load.ref).toEqual(Array(6).fill("ON"));
      const names = drop!.back.map((k) => compiled.jobNetwork.elements[k]!.of);
      expect(names, load.ref).toContain("E");
    }
  });
});
