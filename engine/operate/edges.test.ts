import { describe, expect, test } from "vitest";
import type { Job } from "../job/index.ts";
import { benchConductors, benchJob } from "./benchForTests.ts";
import { operateJob } from "./operateJob.ts";

function solved(job: Job, request = {}) {
  const answer = operateJob(job, benchConductors(job), request);
  if (!answer.ok) throw new Error(answer.refusals[0]?.message);
  return answer.solution;
}

describe("machines that lack something", () => {
  const base = benchJob();

  test("no battery: volts are to the main body, and nothing flows", () => {
    const job: Job = {
      ...base,
      parts: base.parts.filter(({ id }) => id !== "BAT"),
      wires: base.wires.filter(({ from }) => !from.startsWith("BAT")),
    };
    const { reference, wires, batteries, state } = solved(job, { set: { SW: "ON" } });
    expect(reference).toEqual({ pin: "FR.hub" });
    expect(batteries).toEqual([]);
    expect(state.battery.label).toBe("none");
    expect(wires.every(({ currentA }) => Math.abs(currentA) < 1e-9)).toBe(true);
  });

  test("no body: a short to earth is refused, not guessed", () => {
    const job: Job = {
      ...base,
      bodies: [],
      wires: base.wires.filter(({ to }) => !to.startsWith("FR")),
    };
    expect(solved(job).converged).toBe(true);
    const answer = operateJob(job, benchConductors(job), { short: [{ a: "J.1" }] });
    expect(answer.ok ? [] : answer.refusals.map(({ code }) => code)).toEqual(["state-no-body"]);
  });

  test("what is to be removed keeps its pins and carries nothing", () => {
    const job: Job = {
      ...base,
      parts: base.parts.map((part) => (part.id === "LED" ? { ...part, status: "remove" } : part)),
      wires: base.wires.map((wire) => (wire.to === "LED.A" ? { ...wire, status: "remove" } : wire)),
    };
    const { pins, lamps, wires } = solved(job, { set: { SW: "ON" } });
    expect(pins.some(({ pin }) => pin === "LED.A")).toBe(true);
    expect(lamps.some(({ part }) => part === "LED")).toBe(false);
    expect(wires.some(({ wire }) => wire === "W7")).toBe(false);
  });

  test("a fly lead stands between pin and part, and opening its pin opens it", () => {
    const flyLead = {
      colour: { main: "red" },
      make: "bench",
      lengthMm: { value: 100, basis: "stated" as const },
    };
    const job: Job = {
      ...base,
      parts: base.parts.map((part) =>
        part.id === "LED"
          ? ({ ...part, pins: [{ id: "A", flyLead }, { id: "E" }] } as Job["parts"][number])
          : part,
      ),
    };
    const intact = solved(job, { set: { SW: "ON" } });
    const row = intact.wires.find(({ wire }) => wire === "LED.A")!;
    expect([row.from, row.to]).toEqual(["LED.A", "LED.A~"]);
    expect(row.currentA).toBeGreaterThan(0.3);
    const open = solved(job, { set: { SW: "ON" }, open: ["LED.A"] });
    expect(open.wires.find(({ wire }) => wire === "LED.A")!.currentA).toBeLessThan(1e-6);
    expect(open.pins.find(({ pin }) => pin === "LED.A")!.v).toBeGreaterThan(11);
  });

  test("aged contacts are never better than new ones", () => {
    const lossW = (aged: boolean): number =>
      solved(base, { set: { SW: "ON" }, aged })
        .elements.filter(({ kind }) => kind === "contact" || kind === "joint" || kind === "fuse")
        .reduce(
          (sum, { powerW, currentA }) => sum + (currentA === 0 ? 0 : powerW / currentA ** 2),
          0,
        );
    expect(lossW(true)).toBeGreaterThan(lossW(false));
  });

  test("a relay fed through its own resting contact buzzes, and the answer says it did not come to rest", () => {
    const job: Job = {
      ...base,
      parts: base.parts.map((part) =>
        part.kind === "relay"
          ? { ...part, made: [], rest: [["30", "87"] as [string, string]] }
          : part,
      ),
      wires: [
        ...base.wires.filter(({ id }) => id !== "W5"),
        { id: "B1", from: "REL.87", to: "REL.85", circuit: "C", status: "new" },
      ],
    };
    const { converged, relays } = solved(job);
    expect(converged).toBe(false);
    expect(relays[0]!.buzzing).toBe(true);
  });
});
