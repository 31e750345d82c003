import { expect, test } from "vitest";
import { batteryOf } from "../job/index.ts";
import { compileJob, conditionsOf } from "../operate/index.ts";
import { givingOhm, restV, takingS } from "./batteryCharge.ts";
import { jobAt, modelOf } from "./sampleModel.fixture.ts";
import { settledVolts } from "./settledVolts.ts";
import { ridden } from "./supplyModel.ts";

const CHARGE_RATIO = 0.75;
/** Share of nominal volts the few curves may be away from the whole network. */
const SHARE = 0.01;

/** Excited and magnet alternators; a dynamo's field is fed by the network from the output it is stated behind (see neverCharges). */
test.each(["minazuru-four", "brenzach-twin"])(
  "%s: volts from the curves are those of the whole network with its sources",
  (name) => {
    const model = modelOf(jobAt(`demos/${name}.json`));
    const battery = model.battery!;
    const emfV = restV(battery, CHARGE_RATIO);
    let worst = 0;
    for (const state of model.states) {
      const heldV = Math.max(...state.sources.map((one) => one.heldV ?? 0));
      const fastestRpm = Math.max(...state.sources.map((one) => one.fastestRpm ?? 0));
      for (const ratio of [0.35, 0.5, 0.7, 1]) {
        const speedRpm = ratio * fastestRpm;
        const v = settledVolts(battery, state, speedRpm, CHARGE_RATIO);
        const conductance =
          v > emfV ? takingS(battery, CHARGE_RATIO, heldV) : 1 / givingOhm(battery, CHARGE_RATIO);
        const conditions = {
          ...conditionsOf(model.averaged.job, model.options),
          battery: { emfV, internalOhm: 1 / conductance },
        };
        const whole = compileJob(model.averaged.job, model.conductors, { conditions });
        const solution = whole.solve({
          positions: ridden(state, model.duty),
          flash: "on",
          engine: { mode: "running", speedRpm },
        });
        expect(solution.converged).toBe(true);
        const posts = batteryOf(whole.job)!;
        const at = (ref: string): number =>
          solution.nodeV[whole.jobNetwork.nodes.indexOf.get(ref)!]!;
        const wholeV = Math.abs(at(posts.livePost) - at(posts.earthedPost));
        worst = Math.max(worst, Math.abs(wholeV - v) / model.job.supply.nominalV);
      }
    }
    expect(worst).toBeLessThan(SHARE);
  },
);
