import { describe, expect, test } from "vitest";
import type { Job } from "../job/index.ts";
import { benchConductors, benchJob } from "./benchForTests.ts";
import { compileJob } from "./compileJob.ts";
import { conditionsOf } from "./readState.ts";
import { startingStates } from "./startingStates.ts";
import { worstCurrents } from "./worstCurrents.ts";

describe("largest currents", () => {
  test("are those of brute force over every state of a small machine", () => {
    const job = benchJob();
    const conductors = benchConductors(job);
    const compiled = compileJob(job, conductors, { conditions: conditionsOf(job, {}) });
    const largestA = new Map<string, number>();
    for (const SW of ["OFF", "ON"]) {
      for (const TSW of ["OFF", "ON"]) {
        const solved = compiled.solve({ positions: { SW, TSW } });
        for (const [id, k] of compiled.elementOfConductor) {
          const before = largestA.get(id) ?? 0;
          largestA.set(id, Math.max(before, Math.abs(solved.elementA[k]!)));
        }
      }
    }
    const found = worstCurrents(job, conductors);
    // The search takes a state as better only by more than a millionth.
    for (const [id, currentA] of largestA) {
      const { currentA: foundA, state } = found.conductors.get(id)!;
      expect(foundA).toBeGreaterThan(currentA * (1 - 2e-6));
      const again = compiled.solve(state);
      expect(Math.abs(again.elementA[compiled.elementOfConductor.get(id)!]!)).toBe(foundA);
    }
    expect(found.unsettledCount).toBe(0);
    expect(found.endedEarly).toBe(false);
  });

  test("leave out excluded states, and keep the seconds of a starter apart from what lasts", () => {
    const base = benchJob();
    const starter = {
      id: "STM",
      name: "starter",
      kind: "motor" as const,
      use: "starter" as const,
      pins: [{ id: "1" }, { id: "E" }],
      between: ["1", "E"] as [string, string],
      runOhm: { value: 0.1, basis: "stated" as const },
    };
    const job: Job = {
      ...base,
      parts: [...base.parts, starter],
      wires: [
        ...base.wires,
        { id: "S1", from: "TSW.B", to: "STM.1", circuit: "C", status: "new" },
        { id: "S2", from: "STM.E", to: "FR.2", circuit: "C", status: "new" },
      ],
      exclusions: [{ id: "X", positions: { SW: ["ON"], TSW: ["ON"] }, reason: "one hand" }],
    };
    const states = startingStates(job);
    expect(states.length).toBeGreaterThan(3);
    expect(states.every(({ positions }) => positions.SW === "OFF" || positions.TSW === "OFF")).toBe(
      true,
    );
    const { conductors, crankingConductors } = worstCurrents(job, benchConductors(job));
    expect(crankingConductors.get("S1")!.currentA).toBeGreaterThan(40);
    // What the shared earth of the other lamp drives back through the tail filament.
    expect(conductors.get("S1")!.currentA).toBeLessThan(0.1);
    expect(conductors.get("W1")!.currentA).toBeLessThan(5);
    expect(conductors.get("W1")!.currentA).toBeGreaterThan(2);
  });
});
