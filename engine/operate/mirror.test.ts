import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Job } from "../job/index.ts";
import { conductorsOf, routeJob } from "../route/index.ts";
import { mirrored } from "./mirrorJobForTests.ts";
import { operateJob } from "./operateJob.ts";
import type { OperateRequest, OperateSolution } from "./operateResult.ts";

/** Far over what a blocking junction passes, far under what any load takes. */
const LEAST_A = 1e-3;
const DEMOS = ["brenzach-twin", "minazuru-four", "orivesta-enduro"];
const demo = (name: string): Job =>
  JSON.parse(readFileSync(new URL(`../../demos/${name}.json`, import.meta.url), "utf8"));

function solved(job: Job, request: OperateRequest): OperateSolution {
  const answer = operateJob(job, conductorsOf(job, routeJob(job)), request);
  if (!answer.ok) throw new Error(answer.refusals[0]?.message);
  return answer.solution;
}

describe.each(DEMOS)("%s turned to the other earth", (name) => {
  const job = demo(name);
  const turned = mirrored(job, { polarised: true });
  const requests = job.states.flatMap(({ positions, flash }): OperateRequest[] => [
    { set: positions, ...(flash && { flash }) },
    { set: positions, flash: "on", engine: { mode: "running", speedRpm: 4000 } },
  ]);

  test("every volt and ampere turns round and none changes its size", () => {
    for (const request of requests) {
      const [one, other] = [solved(job, request), solved(turned, request)];
      one.pins.forEach((pin, k) => {
        const mirror = other.pins[k]!;
        expect([mirror.pin, mirror.floating, mirror.net]).toEqual([pin.pin, pin.floating, pin.net]);
        const sign = pin.net === "dc" || one.state.engine.mode !== "running" ? -1 : 1;
        // Newton stops within the solver's bound, not on the same digits: 1e-6 V is the contract's agreement.
        if (pin.v !== null) expect(Math.abs(mirror.v! - sign * pin.v)).toBeLessThan(1e-6);
      });
      one.wires.forEach((wire, k) => {
        const sign = wire.kind === "ac" ? 1 : -1;
        const awayA = Math.abs(other.wires[k]!.currentA - sign * wire.currentA);
        expect(awayA).toBeLessThan(1e-5 + 1e-6 * Math.abs(wire.currentA));
      });
      expect(other.lamps.map(({ lit }) => lit)).toEqual(one.lamps.map(({ lit }) => lit));
      expect(other.relays.map(({ pulled }) => pulled)).toEqual(
        one.relays.map(({ pulled }) => pulled),
      );
    }
  });
});

describe("only the EMFs turned", () => {
  // A law that ignored the poles would give the mirror's currents here too.
  test.each(["brenzach-twin", "orivesta-enduro"])(
    "%s: each part with poles is found wrong",
    (name) => {
      const job = demo(name);
      const wrong = mirrored(job, { polarised: false });
      const conducting = new Set<string>();
      const foundWrong = new Set<string>();
      for (const { positions, flash } of job.states) {
        const request = { set: positions, ...(flash && { flash }) };
        const [one, other] = [solved(job, request), solved(wrong, request)];
        one.elements.forEach(({ kind, of, currentA }, k) => {
          if (kind !== "diode") return;
          if (Math.abs(currentA) > LEAST_A) conducting.add(of);
          if (Math.abs(other.elements[k]!.currentA + currentA) > LEAST_A) foundWrong.add(of);
        });
      }
      // A diode that blocks in the right machine and conducts in the wrong one is found too.
      expect(foundWrong.size).toBeGreaterThan(0);
      expect([...conducting].filter((of) => !foundWrong.has(of))).toEqual([]);
    },
  );
});
