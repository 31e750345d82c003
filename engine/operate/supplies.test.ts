import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Job, Part } from "../job/index.ts";
import { conductorsOf, routeJob } from "../route/index.ts";
import { benchConductors, benchJob } from "./benchForTests.ts";
import { operateJob } from "./operateJob.ts";
import type { OperateRequest, OperateSolution } from "./operateResult.ts";

const stated = (value: number) => ({ value, basis: "stated" as const });
const pins = (...ids: string[]) => ids.map((id) => ({ id }));

function solved(
  job: Job,
  request: OperateRequest,
  conductors = benchConductors(job),
): OperateSolution {
  const answer = operateJob(job, conductors, request);
  if (!answer.ok) throw new Error(answer.refusals[0]?.message);
  return answer.solution;
}

const running = (speedRpm: number): OperateRequest => ({ engine: { mode: "running", speedRpm } });
const supply = ({ supplies }: OperateSolution) => supplies[0]!;
const amps = ({ wires }: OperateSolution, wire: string) =>
  wires.find((row) => row.wire === wire)!.currentA;

function withParts(
  parts: readonly Part[],
  ends: readonly (readonly [string, string, string])[],
  rest: Partial<Job> = {},
): Job {
  const job = benchJob(rest);
  const wires = ends.map(([id, from, to]) => ({
    id,
    from,
    to,
    circuit: "C",
    status: "new" as const,
  }));
  return { ...job, parts: [...job.parts, ...parts], wires: [...job.wires, ...wires] };
}

describe("a dynamo behind a control box, positive earth", () => {
  const point = (speedRpm: number, currentA: number) => ({
    speedRpm,
    currentA,
    atV: 13,
    basis: "stated" as const,
  });
  const base = benchJob();
  const job = withParts(
    [
      {
        id: "DYN",
        name: "dynamo",
        kind: "generator",
        type: "dynamo",
        pins: pins("D", "F"),
        windings: [
          { use: "armature", pins: ["D"], points: [point(1500, 3), point(4000, 8)] },
          { use: "field", pins: ["F"] },
        ],
        case: "FR.2",
      },
      {
        id: "BOX",
        name: "control box",
        kind: "regulator",
        type: "control-box",
        pins: pins("D", "F", "A", "E"),
        inputPins: ["D"],
        positivePin: "E",
        negativePin: "A",
        fieldPin: "F",
        setV: stated(14),
      },
    ],
    [
      ["G1", "DYN.D", "BOX.D"],
      ["G2", "BOX.A", "F.2"],
      ["G3", "BOX.E", "FR.1"],
    ],
    {
      supply: { nominalV: 12, earthPolarity: "positive", ignition: "magneto" },
      parts: base.parts.map((part) =>
        part.kind === "battery" ? { ...part, positivePin: "-", negativePin: "+" } : part,
      ),
    },
  );

  test("charges when it turns fast: its wire carries current away from earth's side, the battery takes it", () => {
    const fast = solved(job, running(4000));
    expect(fast.converged).toBe(true);
    expect(fast.pins.find(({ pin }) => pin === "BOX.A")!.v).toBeLessThan(-12);
    // Conventional current of a positive-earth machine runs into D.
    expect(amps(fast, "G1")).toBeLessThan(-7);
    expect(fast.batteries[0]!.currentA).toBeLessThan(-7);
    expect(supply(fast).currentA).toBeCloseTo(-amps(fast, "G1"), 6);
  });

  test("is cut out standing still and when its volts are too low; the battery does not drive it", () => {
    for (const request of [{}, running(300)]) {
      const slow = solved(job, request);
      expect(Math.abs(amps(slow, "G1"))).toBeLessThan(1e-6);
      expect(slow.elements.find(({ of }) => of === "BOX:D-A")!.law).toEqual({ ohm: 1e9 });
    }
    // Just fast enough for the cut-out to close, not to charge: it opens again.
    const idling = solved(job, running(1260));
    expect(supply(idling).why).toBe("the cut-out is open");
    expect(idling.converged).toBe(true);
  });
});

describe("a sensing regulator", () => {
  const job: Job = JSON.parse(
    readFileSync(new URL("../../demos/minazuru-four.json", import.meta.url), "utf8"),
  );
  const conductors = conductorsOf(job, routeJob(job));
  // A battery standing at the set volts takes little, so the regulator has to hold back.
  const request = (set: Record<string, string>): OperateRequest => ({
    set,
    ...running(5000),
    battery: { emfV: 14.3, internalOhm: 0.02 },
    ambientC: 25,
  });
  const setV = 14.4;

  test("holds the sensed place at its set volts, so the battery stands higher by the drop between", () => {
    const on = solved(job, request({ KEY: "ON" }), conductors);
    const volts = (pin: string): number => on.pins.find((row) => row.pin === pin)!.v!;
    expect(on.converged).toBe(true);
    expect(supply(on).regulating).toBe(true);
    const sensedV = volts("REG.SNS") - volts("REG.E");
    // Inside the band below the set volts in which it holds back: 1 %.
    expect(sensedV).toBeGreaterThan(setV * 0.99);
    expect(sensedV).toBeLessThan(setV);
    expect(supply(on).outputV).toBeGreaterThan(sensedV);
  });

  test("a sense wire that sees nothing leaves the output unregulated, and its leads carry the ceiling in any case", () => {
    const dead = solved(job, request({ KEY: "OFF" }), conductors);
    expect(dead.converged).toBe(true);
    expect(supply(dead).currentA).toBeCloseTo(supply(dead).availableA!, 1);
    const on = solved(job, request({ KEY: "ON" }), conductors);
    expect(supply(on).currentA).toBeLessThan(supply(on).availableA!);
    // Shunt: the leads carry the shorted current whatever the load.
    expect(supply(on).phaseA).toBeCloseTo(supply(dead).phaseA!, 9);
    const lead = on.wires.find(({ kind }) => kind === "ac")!;
    expect(lead.currentA).toBe(supply(on).phaseA);
  });
});

describe("an excited alternator", () => {
  const job: Job = JSON.parse(
    readFileSync(new URL("../../demos/brenzach-twin.json", import.meta.url), "utf8"),
  );
  const conductors = conductorsOf(job, routeJob(job));
  const chargeLamp = ({ lamps }: OperateSolution) =>
    lamps.find(({ part }) => part === "CHL" || part === "GEN");

  test("starts through its charge lamp, and not when the lamp's way is open", () => {
    const on = solved(job, { set: { KEY: "ON" }, ...running(4000) }, conductors);
    expect(supply(on).currentA).toBeGreaterThan(15);
    expect(supply(on).why).toBeNull();
    const off = solved(job, { set: { KEY: "OFF" }, ...running(4000) }, conductors);
    expect(supply(off).why).toMatch(/not fed/);
    expect(supply(off).currentA).toBe(0);
    expect(chargeLamp(on)?.lit ?? false).toBe(false);
  });
});

describe("alternating nets", () => {
  const job: Job = JSON.parse(
    readFileSync(new URL("../../demos/orivesta-enduro.json", import.meta.url), "utf8"),
  );
  const conductors = conductorsOf(job, routeJob(job));
  const riding = (speedRpm: number, more: OperateRequest = {}): OperateSolution =>
    solved(
      job,
      { set: { KEY: "ON", LSW: "ON", DIP: "HI" }, ...running(speedRpm), ...more },
      conductors,
    );

  test("the clamp holds its pin at the set volts, rms, and currents balance on the net apart from sign", () => {
    const fast = riding(6000);
    const pin = fast.pins.find((row) => row.pin === "ACR.L")!;
    expect(pin.net).toMatch(/^ac/);
    expect(pin.v).toBeGreaterThan(13.5 * 0.99);
    expect(pin.v).toBeLessThan(13.5);
    const net = fast.nets.find(({ from }) => from === "MAG: lighting")!;
    expect(net.solved).toBe(true);
    // Power is neither made nor lost: the coil gives what clamp, lamps, wires and the shared earth take.
    const givenW = net.elements
      .filter(({ powerW }) => powerW < 0)
      .reduce((sum, { powerW }) => sum - powerW, 0);
    const takenW = net.elements
      .filter(({ powerW }) => powerW > 0)
      .reduce((sum, { powerW }) => sum + powerW, 0);
    expect(takenW).toBeLessThanOrEqual(givenW);
    expect(takenW).toBeGreaterThan(0.95 * givenW);
  });

  test("lamps dim at idle, and shared earth carries both kinds", () => {
    const [slow, fast] = [riding(1500), riding(6000)];
    const main = (solution: OperateSolution) =>
      solution.lamps.find(({ part, filament }) => part === "HEAD" && filament === "MAIN-E")!;
    expect(main(slow).kind).toBe("ac");
    expect(main(slow).v).toBeLessThan(main(fast).v);
    expect(main(slow).relativeLight).toBeLessThan(0.6);
    expect(fast.wires.some(({ acA }) => (acA ?? 0) > 2)).toBe(true);
  });

  test("a wire to the battery's live side joins the two, and the net is not solved as if it did not", () => {
    const joined = riding(6000, { short: [{ a: "ACR.L", b: "F1.OUT" }] });
    const net = joined.nets.find(({ from }) => from === "MAG: lighting")!;
    expect(net.solved).toBe(false);
    expect(net.meetsDcThrough!.at(-1)).toMatch(/^BAT/);
    expect(joined.converged).toBe(false);
    expect(joined.pins.find((row) => row.pin === "ACR.L")!.v).toBeNull();
    // Standing still the coil is a short to earth for the battery, and that is solved.
    const standing = solved(job, { short: [{ a: "ACR.L", b: "F1.OUT" }] }, conductors);
    expect(standing.converged).toBe(true);
    expect(standing.fuses.find(({ part }) => part === "F1")!.currentA).toBeGreaterThan(10);
  });
});
