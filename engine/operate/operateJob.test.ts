import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Job } from "../job/index.ts";
import { type Law, lawCurrentA } from "../network/index.ts";
import { conductorsOf, routeJob } from "../route/index.ts";
import { benchConductors, benchJob } from "./benchForTests.ts";
import { operateJob } from "./operateJob.ts";
import type { ElementRow, OperateRequest, OperateSolution } from "./operateResult.ts";

const DEMOS = ["accessory-five-wires", "brenzach-twin", "minazuru-four", "orivesta-enduro"];
const demo = (name: string): Job =>
  JSON.parse(readFileSync(new URL(`../../demos/${name}.json`, import.meta.url), "utf8"));

function solved(
  job: Job,
  request: OperateRequest,
  lengthMm: number | null = 1000,
): OperateSolution {
  const answer = operateJob(job, benchConductors(job, lengthMm), request);
  if (!answer.ok) throw new Error(answer.refusals[0]?.message);
  return answer.solution;
}

const bench = (request: OperateRequest = {}): OperateSolution => solved(benchJob(), request);
const lamp = (solution: OperateSolution, part: string, filament: string) =>
  solution.lamps.find((row) => row.part === part && row.filament === filament)!;

/** The law of a row as the network room knows it, from what the answer prints. */
function lawOf({ law }: ElementRow): Law {
  const numbers = law as Record<string, never>;
  const kind = ["ohm", "emfV", "ratedV", "isA", "points"].find((key) => key in law)!;
  const kinds = { ohm: "ohm", emfV: "emf", ratedV: "filament", isA: "diode", points: "curve" };
  return { ...numbers, kind: kinds[kind as keyof typeof kinds] } as Law;
}

function nodeVolts(solution: OperateSolution): Map<string, number> {
  const volts = new Map([["0", 0]]);
  // Leaks name every node and give its volts, floating or inside a part: v = i · 1e9.
  for (const { kind, nodes, currentA, law } of solution.elements) {
    if (kind === "leak") volts.set(nodes[0], currentA * (law.ohm as number));
  }
  return volts;
}

describe.each(DEMOS)("%s", (name) => {
  const job = demo(name);
  const conductors = conductorsOf(job, routeJob(job));
  const solutions = job.states.map(({ positions, engine, flash }) => {
    const answer = operateJob(job, conductors, {
      set: positions,
      ...(engine && { engine: engine as NonNullable<OperateRequest["engine"]> }),
      ...(flash && { flash }),
    });
    if (!answer.ok) throw new Error(answer.refusals[0]?.message);
    return answer.solution;
  });

  test("currents at every node sum to zero over the list of elements alone", () => {
    for (const { elements, converged } of solutions) {
      expect(converged).toBe(true);
      const sums = new Map<string, number>();
      let largestA = 0;
      for (const { nodes, currentA } of elements) {
        largestA = Math.max(largestA, Math.abs(currentA));
        sums.set(nodes[0], (sums.get(nodes[0]) ?? 0) + currentA);
        sums.set(nodes[1], (sums.get(nodes[1]) ?? 0) - currentA);
      }
      // The solver's own acceptance, 1e-9 A + 1e-12 of the largest current, plus rounding of the sums.
      const allowedA = 2e-9 + 1e-11 * largestA;
      for (const [node, sumA] of sums)
        if (node !== "0") expect(Math.abs(sumA)).toBeLessThan(allowedA);
    }
  });

  test("each element's law at the printed volts gives its current", () => {
    for (const solution of solutions) {
      const volts = nodeVolts(solution);
      for (const row of solution.elements) {
        if (row.kind === "leak") continue;
        const v = volts.get(row.nodes[0])! - volts.get(row.nodes[1])!;
        const fromLawA = lawCurrentA(lawOf(row), v);
        // The contract's bound.
        expect(Math.abs(fromLawA - row.currentA)).toBeLessThan(
          1e-6 + 1e-6 * Math.abs(row.currentA),
        );
      }
    }
  });

  test("every load does what its intents say in every named state", () => {
    job.states.forEach((state, k) => {
      const { lamps, loads, strayLit } = solutions[k]!;
      for (const row of lamps)
        if (row.expected !== null)
          expect([state.id, row.part, row.lit]).toEqual([state.id, row.part, row.expected]);
      for (const row of loads)
        if (row.expected !== null)
          expect([state.id, row.part, row.works]).toEqual([state.id, row.part, row.expected]);
      expect(strayLit).toEqual([]);
    });
  });
});

describe("a state", () => {
  test("stands at rest where nothing is said, and says so", () => {
    const { state, reference, pins } = bench();
    expect(state).toEqual({
      positions: { SW: "OFF", TSW: "OFF" },
      engine: { mode: "stopped", speedRpm: 0 },
      flash: "off",
      held: [],
      battery: { label: "full", emfV: 12.6, internalOhm: 0.02 },
      ambientC: 25,
      conductorC: 20,
      open: [],
      short: [],
      extraOhm: {},
      lampExponent: 0.55,
      aged: false,
    });
    expect(reference).toEqual({ pin: "BAT.-" });
    expect(pins.find(({ pin }) => pin === "BAT.-")).toEqual({
      pin: "BAT.-",
      node: "0",
      net: "dc",
      v: 0,
      floating: false,
    });
  });

  test("numbers its nodes by sorted pin, whatever happens to the machine", () => {
    const nodes = (request: OperateRequest) =>
      bench(request).pins.map(({ pin, node }) => `${pin} ${node}`);
    const intact = nodes({});
    expect(intact[0]).toBe("BAT.+ n1");
    expect(nodes({ set: { SW: "ON" }, open: ["REAR.E", "W4"], short: [{ a: "J.1" }] })).toEqual(
      intact,
    );
  });

  test("a node nothing holds floats and has no volts", () => {
    const pin = bench({ open: ["W4", "W5"] }).pins.find((row) => row.pin === "SW.B");
    expect(pin).toMatchObject({ v: null, floating: true });
    expect(bench().pins.find((row) => row.pin === "SW.A")).toMatchObject({ floating: false });
  });

  test("the relay pulls and its lamp lights; the current of a lamp at 12 V is its rated current", () => {
    const on = bench({ set: { SW: "ON" }, battery: { emfV: 12, internalOhm: 1e-6 } });
    expect(on.relays).toEqual([
      expect.objectContaining({ part: "REL", pulled: true, buzzing: false }),
    ]);
    expect(lamp(on, "LED", "A-E").lit).toBe(true);
    const stop = lamp(on, "REAR", "STOP-E");
    expect(stop.expected).toBe(true);
    // I = In (V/Vn)^0.55 by the published power law; eps 0.004 changes it by under 1e-5.
    expect(stop.currentA).toBeCloseTo((21 / 12) * (stop.v / 12) ** 0.55, 4);
  });

  test("the law can be made a plain resistance", () => {
    const { currentA, v } = lamp(bench({ set: { SW: "ON" }, lampExponent: 1 }), "REAR", "STOP-E");
    expect(v / currentA).toBeCloseTo(144 / 21, 9);
  });

  test("an unknown length leaves the network whole and the wire's own figures unknown", () => {
    const row = solved(benchJob(), { set: { SW: "ON" } }, null).wires.find(
      ({ wire }) => wire === "W4",
    );
    expect(row).toMatchObject({ ohm: null, dropV: null, lossW: null, why: "length not known" });
    expect(row!.currentA).toBeGreaterThan(1);
  });

  test("copper warms: 234.5 + T over 254.5", () => {
    const at = (conductorC: number): number =>
      bench({ conductorC }).wires.find(({ wire }) => wire === "W1")!.ohm!;
    expect(at(20)).toBeCloseTo(0.02, 12);
    // The published straight line of copper's resistance, 234.5 C below zero.
    expect(at(80) / at(20)).toBeCloseTo((234.5 + 80) / 254.5, 9);
  });
});

describe("faults", () => {
  test("a shared earth that opens lights the other filament, and it is called stray", () => {
    const { strayLit, lamps } = bench({ set: { SW: "ON" }, open: ["REAR.E"] });
    expect(strayLit).toEqual([]);
    // Nothing else leads to earth from the tail feed here; give it a second lamp's way.
    expect(lamps.every(({ part, lit }) => part !== "REAR" || !lit)).toBe(true);
    const withLamp = solved(withSecondTail(), { set: { SW: "ON" }, open: ["REAR.E"] });
    expect(lamp(withLamp, "REAR", "TAIL-E").lit).toBe(true);
    expect(withLamp.strayLit).toEqual(["REAR:TAIL-E"]);
    const wireOpen = solved(withSecondTail(), { set: { SW: "ON" }, open: ["E1"] });
    expect(wireOpen.strayLit).toEqual(["REAR:TAIL-E"]);
  });

  test("added resistance takes its share of the volts", () => {
    const drop = bench({ set: { SW: "ON" }, extraOhm: { W4: 1, "REAR.E": 0.5 } });
    const row = drop.wires.find(({ wire }) => wire === "W4")!;
    expect(row.ohm).toBeCloseTo(1.02, 12);
    expect(row.dropV! / row.currentA).toBeCloseTo(1.02, 9);
    const worse = drop.elements.find(({ of }) => of === "REAR.E")!;
    expect(worse.law).toEqual({ ohm: expect.closeTo(0.5, 4) });
  });

  test("a short behind the fuse opens it, and the rest is solved again", () => {
    const { fuses, afterFuses, elements } = bench({ set: { SW: "ON" }, short: [{ a: "J.1" }] });
    const shortRow = elements.find(({ kind }) => kind === "short")!;
    expect(shortRow.of).toBe("J.1=FR.hub");
    // 12.6 V over battery, two wires, fuse, way of the joint and frame: far over six times the rating.
    expect(fuses[0]!.currentA).toBeGreaterThan(60);
    expect(fuses[0]!.opensMaxS).toBeLessThan(0.1);
    expect(afterFuses).toHaveLength(1);
    expect(afterFuses[0]).toMatchObject({ opened: ["F"], state: { open: ["F"] } });
    expect(afterFuses[0]!.atS).toEqual([fuses[0]!.opensMinS, fuses[0]!.opensMaxS]);
    expect(Math.abs(afterFuses[0]!.solution.fuses[0]!.currentA)).toBeLessThan(1e-6);
  });

  test("a short between two pins is a resistance between them", () => {
    const { elements, lamps } = bench({ short: [{ a: "SW.A", b: "SW.B", ohm: 0.1 }] });
    const row = elements.find(({ kind }) => kind === "short")!;
    expect(row.law).toEqual({ ohm: 0.1 });
    expect(lamps.find(({ filament }) => filament === "STOP-E")!.lit).toBe(true);
  });
});

function withSecondTail(): Job {
  const job = benchJob();
  const rear = job.parts.find(({ id }) => id === "REAR")!;
  const second = { ...rear, id: "PLATE" } as Job["parts"][number];
  const wires = [
    ["X1", "REAR.TAIL", "PLATE.TAIL"],
    ["X2", "PLATE.E", "FR.2"],
  ].map(([id, from, to]) => ({
    id: id!,
    from: from!,
    to: to!,
    circuit: "C",
    status: "new" as const,
  }));
  return {
    ...job,
    parts: [...job.parts, second],
    wires: [...job.wires, ...wires],
    intents: [{ id: "tail", load: "REAR:TAIL-E", when: [{ positions: { TSW: ["ON"] } }] }],
  };
}

describe("refusals", () => {
  const refused = (request: OperateRequest) => {
    const answer = operateJob(benchJob(), benchConductors(benchJob()), request);
    return answer.ok ? [] : answer.refusals.map(({ code, remedy }) => `${code} ${remedy}`);
  };
  test.each<[OperateRequest, string]>([
    [{ set: { SWW: "ON" } }, "state-unknown-switch Did you mean SW?"],
    [{ set: { SW: "OM" } }, "state-unknown-position Did you mean ON?"],
    [{ held: ["RELL"] }, "state-unknown-relay Did you mean REL?"],
    [{ open: ["W44"] }, "state-unknown-place Did you mean W4?"],
    [{ open: ["FR.hub"] }, "state-hub-cannot-open Open its points or its bonds instead."],
    [{ short: [{ a: "J.9" }] }, "state-unknown-pin Did you mean J.1?"],
    [{ short: [{ a: "J.1", b: "J.1" }] }, "state-short-on-itself Name two pins."],
    [
      { extraOhm: { W1: -1 } },
      "state-number Give a finite number in the range of things that exist.",
    ],
    [
      { battery: { emfV: Number.NaN } },
      "state-number Give a finite number in the range of things that exist.",
    ],
    // Each of these was once worked with: a battery of -5 V, an engine at a thousand million rpm, a lamp of exponent 7.
    ...[
      { battery: { emfV: -5 } },
      { engine: { mode: "running" as const, speedRpm: 1e9 } },
      { lampExponent: 7 },
    ].map((request): [OperateRequest, string] => [
      request,
      "state-number Give a finite number in the range of things that exist.",
    ]),
  ])("%j", (request, expected) => {
    expect(refused(request)).toEqual([expected]);
  });
});
