import { describe, expect, test } from "vitest";
import { compileJob, conditionsOf } from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import { restV } from "./batteryCharge.ts";
import { chargeBalance } from "./chargeBalance.ts";
import { demandAt, solveStiff } from "./demandCurve.ts";
import { RIDES, rideSteps } from "./rideSteps.ts";
import { jobAt, modelOf } from "./sampleModel.fixture.ts";
import { settledVolts } from "./settledVolts.ts";
import { simulateRide } from "./simulateRide.ts";

const MACHINES = ["aldreth-single", "minazuru-four", "brenzach-twin", "orivesta-enduro"] as const;

describe.each(MACHINES)("%s", (name) => {
  const model = modelOf(jobAt(`demos/${name}.json`));
  const battery = model.battery!;

  test.each(RIDES)(
    "%s: energy closes to 0.1 % of what was turned over, and charge stays a charge",
    (ride) => {
      const steps = rideSteps(model, ride)!;
      const done = simulateRide(model, battery, steps, { startRatio: 0.75, parkedA: 0 });
      expect(done.energy.residualRatio).toBeLessThan(0.001);
      expect(done.durationS).toBeCloseTo(
        steps.reduce((sum, one) => sum + one.durationS, 0),
        6,
      );
      for (const row of done.rows) {
        expect(row.chargePercent).toBeGreaterThanOrEqual(0);
        expect(row.chargePercent).toBeLessThanOrEqual(100);
        // Kirchhoff at the posts.
        expect(row.sourceA - row.demandA - row.batteryA).toBeCloseTo(0, 9);
      }
    },
  );

  test("at the balance speed, struck at the battery's rest volts, its current is none", () => {
    const chargeRatio = 0.75;
    const v = restV(battery, chargeRatio);
    for (const state of model.states) {
      const { balanceRpm } = chargeBalance(model, state, v);
      if (balanceRpm === null) continue;
      const at = (speedRpm: number): number => {
        const settledV = settledVolts(battery, state, speedRpm, chargeRatio);
        return settledV - v;
      };
      // A cut-out closes at once with more than nothing; every other source begins from nothing.
      const steps = state.sources.some(({ cutInV }) => cutInV !== null);
      if (steps) expect(at(balanceRpm)).toBeGreaterThan(-1e-4);
      else expect(at(balanceRpm)).toBeCloseTo(0, 4);
      expect(at(0.98 * balanceRpm)).toBeLessThan(0);
      expect(at(1.02 * balanceRpm)).toBeGreaterThan(0);
    }
  });

  test("mean currents of the averaged machine are those of its states solved one by one", () => {
    const { job, conductors, duty, duties, options } = model;
    const compiled = compileJob(job, conductors, { conditions: conditionsOf(job, options) });
    const v = 1.1 * job.supply.nominalV;
    for (const state of model.states) {
      const flags = [
        duty.stop.slice(0, 1),
        duty.turn.slice(0, 1),
        ...duty.points.map((one) => [one]),
      ];
      const shares = [
        duties.stopRatio,
        duties.flashRatio,
        ...duty.points.map(() => duties.coilRatio),
      ];
      let meanA = 0;
      for (let mask = 0; mask < 2 ** flags.length; mask++) {
        const positions = { ...state.positions };
        let weight = 1;
        flags.forEach((settings, bit) => {
          const isOn = (mask >> bit) % 2 === 1;
          weight *= isOn ? shares[bit]! : 1 - shares[bit]!;
          for (const { part, position } of settings) {
            positions[part] = isOn ? position : otherOf(job, part, position);
          }
        });
        const flash = ((mask >> 1) % 2 === 1 ? "on" : "off") as "on" | "off";
        meanA += weight * solveStiff(compiled, { positions, flash }, v).drawnA;
      }
      // An ignition box that switches the coil itself is solved as conducting all the time: its share is not in `flags`.
      if (job.supply.ignition === "electronic") continue;
      // Drops go with the square of part-time currents: the mean hides at most a few parts in a hundred of the part-time share.
      expect(Math.abs(demandAt(state.demand, v) - meanA)).toBeLessThanOrEqual(0.02 * meanA + 0.005);
    }
  });
});

function otherOf(job: ReturnType<typeof jobAt>, part: string, position: string): string {
  const found = job.parts.find(({ id }) => id === part);
  if (found?.kind !== "switch") throw new Error(`${part} is no switch`);
  return found.rest !== position
    ? found.rest
    : found.positions.find(({ id }) => id !== position)!.id;
}

test("parked with a drain the battery goes flat when capacity over current says", () => {
  const model = modelOf(jobAt("demos/minazuru-four.json"));
  const steps = [{ durationS: 40 * 3600, speedRpm: 0, state: null }];
  const left = simulateRide(model, model.battery!, steps, { startRatio: 1, parkedA: 0.5 });
  const flatS = (model.battery!.capacityAh / 0.5) * 3600;
  expect(Math.abs(left.emptyAtS! - flatS)).toBeLessThanOrEqual(600);
});

test("a steady 5 A empties 14 Ah when Peukert's law says: 10 h (14 / 50)^k, and not in 2.8 h", () => {
  const model = modelOf(jobAt("demos/minazuru-four.json"));
  const exponent = figure("batteryRules", "peukert-flooded", "value").value;
  expect(model.battery!.capacityAh).toBe(14);
  const steps = [{ durationS: 4 * 3600, speedRpm: 0, state: null }];
  const left = simulateRide(model, model.battery!, steps, { startRatio: 1, parkedA: 5 });
  expect(left.emptyAtS! / 3600).toBeCloseTo(10 * (14 / 50) ** exponent, 6);
  expect(left.emptyAtS! / 3600).toBeLessThan(14 / 5);
  expect(left.energy.residualRatio).toBeLessThan(0.001);
});

test.each(MACHINES)("%s: a week in town ends flat or closes its energy all the same", (name) => {
  const model = modelOf(jobAt(`demos/${name}.json`));
  const town = rideSteps(model, "town", 1800)!;
  const night = rideSteps(model, "night", 1800)!;
  const steps = Array.from({ length: 10 }, () => [...town, ...night]).flat();
  for (const startRatio of [0.1, 0.5, 1]) {
    const done = simulateRide(model, model.battery!, steps, { startRatio, parkedA: 0 });
    expect(done.energy.residualRatio, `from ${startRatio}`).toBeLessThan(0.001);
    expect(done.overchargeAh).toBeGreaterThanOrEqual(0);
    if (done.emptyAtS !== null) expect(done.endPercent).toBe(0);
  }
});
