import { expect, test } from "vitest";
import { bridgedCurrents } from "../../engine/prove/bridgedCurrents.ts";
import { proofPlan } from "../../engine/prove/proofPlan.ts";
import { jobOfDemo, proofInputOf } from "../prove/proofOfDemo.ts";

test("a bridged starter pulls the volts down, its relays chatter, and its earth cable still counts at all the battery gives", () => {
  const plan = proofPlan(proofInputOf(jobOfDemo("brenzach-twin")));
  const { solver, states } = plan;
  const starter = solver.loads.find(({ load }) => load.ref === "STM:1-E")!;
  const [a, b] = starter.load.pins;
  const short = [{ a, b, ohm: 0.001 }];
  const turning = states.filter(({ light, engine }) => {
    const { elementA, converged } = solver.solve(light);
    return engine.mode !== "running" && converged && Math.abs(elementA[starter.element]!) > 50;
  });
  expect(turning.length).toBeGreaterThan(0);
  const element = solver.compiled.elementOfConductor.get("E01")!;
  for (const { light } of turning) {
    // Nothing comes to rest: what is read last depends on which relay is counted first.
    expect(solver.solve({ ...light, short }).converged).toBe(false);
    // A full battery of 12.7 V behind some 20 milliohm with its cables: hundreds of amperes at the first moment.
    const { pulled } = solver.solve(light);
    expect(bridgedCurrents(solver, light, pulled, short)[element]).toBeGreaterThan(300);
  }
});
