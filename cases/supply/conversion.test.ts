import { expect, test } from "vitest";
import { readJob, writeJob } from "../../engine/job/index.ts";
import { conversionOf } from "../../engine/judge/index.ts";
import { jobAt } from "../../engine/supply/sampleModel.fixture.ts";

const DEMOS = ["aldreth-single", "minazuru-four"] as const;

test.each(DEMOS)(
  "%s on the other earth reads, names every part and is told nothing it must stop for",
  (name) => {
    const job = jobAt(`demos/${name}.json`);
    const earth = job.supply.earthPolarity === "positive" ? "negative" : "positive";
    const plan = conversionOf(job, { earth });
    const read = readJob(writeJob(plan.job));
    expect(read.ok).toBe(true);
    expect(plan.parts.map(({ part }) => part).sort()).toEqual(job.parts.map(({ id }) => id).sort());
    expect(plan.parts.every(({ reason }) => reason.length > 5)).toBe(true);
    expect(plan.after.counts.stop).toBe(0);
    // The same loads draw the same current.
    for (const one of plan.balances) expect(one.demandAfterA).toBeCloseTo(one.demandBeforeA, 3);
  },
);

test("there and back again: 6 to 12 to 6 V leaves the same currents and speeds", () => {
  const job = jobAt("demos/aldreth-single.json");
  const there = conversionOf(job, { nominalV: 12 });
  const back = conversionOf(there.job, { nominalV: 6 });
  expect(there.after.verdict).toBe("fit");
  for (const [k, one] of back.balances.entries()) {
    const first = there.balances[k]!;
    expect(one.state).toBe(first.state);
    // Lamps of the two voltages are anchored at different points of the tables: a part in fifty.
    expect(Math.abs(one.demandAfterA / first.demandBeforeA - 1)).toBeLessThan(0.02);
  }
  const battery = back.job.parts.find(({ kind }) => kind === "battery");
  expect(battery?.kind === "battery" && battery.nominalV).toBe(6);
});

test("12 to 6 V of a machine with thin wires says which no longer do", () => {
  const plan = conversionOf(jobAt("demos/orivesta-enduro.json"), { nominalV: 6 });
  const larger = plan.wires.filter(
    ({ newFindings, makeId, makeAfterId }) => newFindings.length > 0 || makeId !== makeAfterId,
  );
  // Twice the current in the same wire, half the limit: somewhere it does not do.
  expect(larger.length + plan.after.counts.mend + plan.after.counts.stop).toBeGreaterThan(0);
  expect(readJob(writeJob(plan.job)).ok).toBe(true);
});
