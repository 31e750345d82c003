import { expect, test } from "vitest";
import type { Job, Part } from "../../engine/job/index.ts";
import { conductorsOf, routeJob } from "../../engine/route/index.ts";
import { demandAt } from "../../engine/supply/demandCurve.ts";
import { supplyAnswer } from "../../engine/supply/index.ts";
import { jobAt, modelOf } from "../../engine/supply/sampleModel.fixture.ts";
import { settledVolts } from "../../engine/supply/settledVolts.ts";

/** The same machine with its alternator regulated in three ways: what each loads the winding with, and where the rest goes. */
const four = jobAt("demos/minazuru-four.json");

const withUnit = (
  change: (unit: Extract<Part, { kind: "regulator" }>) => readonly Part[],
): Job => ({
  ...four,
  parts: four.parts.flatMap((part) => (part.kind === "regulator" ? change(part) : [part])),
});

const heatOf = (job: Job) => {
  const { heat } = supplyAnswer(job, conductorsOf(job, routeJob(job)), {});
  if (heat.length !== 1) throw new Error("one generator");
  return heat[0]!;
};

test("a series regulator loads the winding with what is used, a shunt one with all it can give", () => {
  const shunt = heatOf(four);
  const series = heatOf(withUnit((unit) => [{ ...unit, type: "series" }]));
  expect([shunt.isShunt, series.isShunt]).toEqual([true, false]);
  shunt.rows.forEach((row, k) => {
    const other = series.rows[k]!;
    // The same volts and the same use: only the winding differs.
    expect(other.outputA).toBeCloseTo(row.outputA, 9);
    expect(other.windingA).toBe(other.outputA);
    expect(row.windingA).toBeGreaterThan(row.outputA);
    expect(other.windingW!).toBeLessThan(row.windingW!);
    // Two silicon diodes of the bridge, 1.4 V, carry the use and nothing else.
    expect(other.unitW / other.outputA).toBeCloseTo(shunt.rows[k]!.unitW === 0 ? 0 : 1.4, 1);
  });
});

test("a zener burns what neither loads nor battery take: watts by its own line and by what is left over", () => {
  const zenered: Job = {
    ...withUnit((unit) => [
      {
        id: unit.id,
        name: "bridge",
        station: unit.station!,
        status: "new",
        pins: unit.pins,
        kind: "rectifier",
        junctions: ["Y1", "Y2", "Y3"].flatMap((pin) => [
          { anode: pin, cathode: "P" },
          { anode: "E", cathode: pin },
        ]),
      },
      {
        id: "ZEN",
        name: "zener",
        station: unit.station!,
        pins: [{ id: "P" }, { id: "E" }],
        kind: "regulator",
        type: "zener",
        generator: "ALT",
        inputPins: ["P"],
        positivePin: "P",
        negativePin: "E",
        setV: { value: 13.5, basis: "stated" },
        temperatureMvPerC: { value: 0, basis: "stated" },
      },
    ]),
  };
  const wire = (id: string, from: string, to: string) => ({
    ...four.wires[0]!,
    id,
    from,
    to,
    lengthMm: { value: 200, basis: "stated" as const },
    size: { make: "thin-4.0", basis: "chosen" as const },
  });
  const job: Job = {
    ...zenered,
    wires: [...zenered.wires, wire("Z1", "BAT.+", "ZEN.P"), wire("Z2", "BAT.-", "ZEN.E")],
  };
  const model = modelOf(job);
  const plain = modelOf(withUnit((unit) => [{ ...unit, type: "series" }]));
  const heat = heatOf(job);
  const state = model.states.find(({ id }) => id === heat.state)!;
  const bare = plain.states.find(({ id }) => id === heat.state)!;
  for (const { speedRpm, outputA, zenerW } of heat.rows) {
    const v = settledVolts(model.battery, state, speedRpm, 0.95);
    // By its line: nothing below 13.5 V, ten amperes at 15 V.
    const burntA = Math.max(0, (10 * (v - 13.5)) / 1.5);
    expect(Math.abs(zenerW! - v * burntA), `${speedRpm} rpm`).toBeLessThan(0.02 * v * burntA + 0.1);
    // By what is left: given, less the loads at that voltage, less what the nearly full battery takes (under 0.3 A at 14.4 V).
    const leftA = outputA - demandAt(bare.demand, v);
    expect(leftA - burntA, `${speedRpm} rpm`).toBeLessThan(1.4);
    if (v > 13) expect(leftA - burntA, `${speedRpm} rpm`).toBeGreaterThan(-0.1);
  }
  const hottest = Math.max(...heat.rows.map(({ zenerW }) => zenerW!));
  expect(hottest).toBeGreaterThan(10);
});

test("ripple of a capacitor in place of the battery: I / (C f)", () => {
  const enduro = jobAt("demos/orivesta-enduro.json");
  const answer = supplyAnswer(enduro, conductorsOf(enduro, routeJob(enduro)), {});
  const { ripple } = answer.withoutBattery;
  // Half-wave: one pulse a pole pair and turn. 0.5 A, 4700 microfarad, 2 pairs at 2580 rpm: 86 Hz, 1.24 V.
  expect(ripple!.isFitted).toBe(false);
  const [two] = ripple!.rows;
  expect(two!.pulseHz).toBeCloseTo((2 * ripple!.speedRpm) / 60, 9);
  expect(two!.rippleV).toBeCloseTo(ripple!.currentA / (4.7e-3 * two!.pulseHz), 9);
  expect(two!.rippleV).toBeGreaterThan(1.1);
  expect(two!.rippleV).toBeLessThan(1.4);
});
