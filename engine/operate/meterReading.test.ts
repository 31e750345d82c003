import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Job } from "../job/index.ts";
import { conductorsOf, routeJob } from "../route/index.ts";
import { benchConductors, benchJob } from "./benchForTests.ts";
import { type MeterReading, meterReading } from "./meterReading.ts";
import type { OperateRequest } from "./operateResult.ts";

const job = benchJob();
const conductors = benchConductors(job);

function read(
  red: string,
  black: string,
  mode: "volts" | "ohms",
  request: OperateRequest = {},
): MeterReading {
  const answer = meterReading(job, conductors, request, { red, black, mode });
  if (!answer.ok) throw new Error(answer.refusals[0]?.message);
  return answer.reading;
}

const demo = (name: string): Job =>
  JSON.parse(readFileSync(new URL(`../../demos/${name}.json`, import.meta.url), "utf8"));

describe("volts", () => {
  test("the leads exchanged change the sign and nothing else", () => {
    const battery = job.parts.find(({ kind }) => kind === "battery");
    if (battery?.kind !== "battery") throw new Error("no battery on the bench");
    const [plus, minus] = [battery.positivePin, battery.negativePin].map(
      (pin) => `${battery.id}.${pin}`,
    );
    const right = read(plus!, minus!, "volts");
    expect(right.value).toBeGreaterThan(12);
    expect(read(minus!, plus!, "volts").value).toBeCloseTo(-right.value!, 12);
  });

  test("on a positive-earth machine the live side reads below earth", () => {
    const positive = demo("aldreth-single");
    const known = conductorsOf(positive, routeJob(positive));
    const answer = meterReading(
      positive,
      known,
      {},
      { red: "BAT.-", black: "earth", mode: "volts" },
    );
    const other = meterReading(
      positive,
      known,
      {},
      { red: "BAT.N", black: "earth", mode: "volts" },
    );
    const good = answer.ok ? answer : other;
    expect(good.ok && good.reading.value).toBeLessThan(-5.5);
  });

  test("a pin that is not there is refused by its lead", () => {
    const answer = meterReading(
      job,
      conductors,
      {},
      { red: "NO.1", black: "earth", mode: "volts" },
    );
    expect(!answer.ok && answer.refusals[0]?.pointer).toBe("red lead");
  });
});

describe("ohms, battery off", () => {
  const wire = job.wires[0]!;

  test("one wire of one metre with 0.02 ohm a metre, in parallel with nothing", () => {
    const alone: OperateRequest = {};
    expect(read(wire.from, wire.to, "ohms", alone).value).toBeCloseTo(0.02, 4);
  });

  test("resistances in series add; an open shows no figure", () => {
    const corroded = read(wire.from, wire.to, "ohms", { extraOhm: { [wire.id]: 3 } });
    expect(corroded.value).toBeCloseTo(3.02, 3);
    const broken = read(wire.from, wire.to, "ohms", { open: [wire.id] });
    expect([broken.value, broken.why]).toEqual([null, "open"]);
  });

  test("the same either way round, and no state of charge of the battery is seen in it", () => {
    const there = read(wire.to, "earth", "ohms", { short: [{ a: wire.to, ohm: 5 }] });
    const back = read("earth", wire.to, "ohms", {
      short: [{ a: wire.to, ohm: 5 }],
      battery: "weak",
    });
    expect(there.value).toBeLessThanOrEqual(5.001);
    expect(back.value).toBeCloseTo(there.value!, 4);
  });

  test("a running engine is taken as standing: nothing but the meter drives a current", () => {
    const standing = read(wire.from, wire.to, "ohms", { engine: { mode: "stopped" } });
    const running = read(wire.from, wire.to, "ohms", { engine: { mode: "running" } });
    expect(running.value).toBe(standing.value);
  });
});
