import { expect, test } from "vitest";
import type { Job } from "../../engine/job/index.ts";
import { coilsLeftOn } from "../../engine/supply/coilsLeftOn.ts";
import { excitation } from "../../engine/supply/excitation.ts";
import { chargeBalance, readTrace } from "../../engine/supply/index.ts";
import { jobAt, modelOf } from "../../engine/supply/sampleModel.fixture.ts";

const stated = (value: number) => ({ value, basis: "stated" as const });

test("charge lamp replaced by a light-emitting diode: the first field current falls under what is relied on", () => {
  const answer = excitation(modelOf(jobAt("demos/brenzach-twin.json"), { lampExponent: 1 }))!;
  const [lamp, diode, parallel] = answer.rows;
  // Handed over with the machines: 12.6 / (36 + 3.4) = 0.32 A through the 4 W lamp, 10 to 20 mA through a diode. Wire and contacts take a little.
  expect(Math.abs(lamp!.fieldA - 0.32)).toBeLessThanOrEqual(0.01 * 0.32 + 0.005);
  expect(lamp!.excites).toBe(true);
  expect(diode!.fieldA).toBeLessThan(0.025);
  expect(diode!.excites).toBe(false);
  // The customary 470 ohm adds about 12.6 / 473 = 27 mA: better, and still not relied on.
  expect(parallel!.fieldA - diode!.fieldA).toBeGreaterThan(0.02);
  expect(parallel!.fieldA - diode!.fieldA).toBeLessThan(0.03);
  expect(parallel!.excites).toBe(false);
  expect(answer.chargeLamp).toBe("CHL");
});

/** Machine B of the scenarios is not among the jobs: C with its coils and its battery, lamps out of the way. */
function twoCoils(): Job {
  const job = jobAt("cases/reference-machines/c/job.json");
  const parts = job.parts.map((part) => {
    if (part.kind === "battery") return { ...part, capacityAh: stated(9) };
    if (part.kind !== "coil") return part;
    return { ...part, elements: part.elements.map((one) => ({ ...one, ohm: stated(3.3) })) };
  });
  return { ...job, parts };
}

test("key left on with both points closed: amperes, heat in each coil, hours", () => {
  const left = coilsLeftOn(modelOf(twoCoils(), { ambientC: 27 }))!;
  expect(left.coils).toHaveLength(2);
  const [one, other] = left.coils;
  // Watts are V²/R at the volts the coil gets.
  for (const coil of left.coils) expect(coil.powerW).toBeCloseTo(coil.v ** 2 / 3.3, 6);
  // The scenario's machine: 6.86 A, 38 W in each, 9 Ah gone in 1.3 h; ours loses its own few tenths of a volt on the way.
  expect(Math.abs(one!.powerW - 38)).toBeLessThan(0.1 * 38);
  expect(one!.powerW).toBeCloseTo(other!.powerW, 0);
  expect(Math.abs(left.currentA - 6.86)).toBeLessThan(0.07 * 6.86);
  // Capacity over current says 1.3 h; Peukert's law for a battery rated over ten hours says less, never more.
  expect(left.toEmptyS! / 3600).toBeLessThan(9 / left.currentA);
  expect(left.toEmptyS! / 3600).toBeGreaterThan(0.5);
});

test("a generator whose output nobody has stated is not guessed at", () => {
  const model = modelOf(jobAt("cases/reference-machines/c/job.json"));
  for (const state of model.states) {
    const balance = chargeBalance(model, state);
    expect(balance.balanceRpm).toBeNull();
    expect(balance.rows).toEqual([]);
    expect(balance.why).toMatch(/two speeds/);
    expect(balance.demandA).toBeGreaterThan(0);
  }
});

test.each([
  ["", 1],
  ["timeS,speedRpm", null],
  ["timeS,speedRpm\n0,1000\n0,2000", 3],
  ["timeS,speedRpm\n0,1000\n5,=1+1", 3],
  ["timeS,speedRpm\n0,1000\n5,-4", 3],
  ["timeS,speedRpm,lights\n0,1000,dip\n5,2000,<b>", 3],
  ["speed,time\n1,2", 1],
])("trace %j is refused at line %s", (text, line) => {
  const read = readTrace(text, ["dip"], "dip");
  expect(read.ok).toBe(false);
  if (!read.ok) expect(read.refusals[0]!.line).toBe(line);
});

test("a trace holds each line until the next; off is parked", () => {
  const read = readTrace(
    "timeS,speedRpm,lights\r\n0,1500,dip\r\n60,0,off\r\n3660,0,off\r\n",
    ["dip"],
    "dip",
  );
  expect(read).toEqual({
    ok: true,
    steps: [
      { durationS: 60, speedRpm: 1500, state: "dip" },
      { durationS: 3600, speedRpm: 0, state: null },
    ],
  });
});
