import { describe, expect, test } from "vitest";
import { applyOperation, type Job, type Operation, proveJob } from "../../engine/index.ts";
import { DEMOS, jobOfDemo, proofInputOf } from "../prove/proofOfDemo.ts";
import { NEUTRAL, PLANTED } from "./plantedFaults.ts";

/** Findings as code and subject; a stray by the place that is open as well. */
function toldOf(job: Job): ReadonlySet<string> {
  const { findings, stray } = proveJob(proofInputOf(job), { tryRemedies: false });
  return new Set([
    ...findings.map(({ code, subject }) => `${code} ${subject.id}`),
    ...stray.map(({ load, open }) => `proof-stray ${load} ${open}`),
  ]);
}

function edited(job: Job, operations: readonly Operation[]): Job {
  const applied = applyOperation(job, { op: "batch", name: "planted", operations });
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusals));
  return applied.job;
}

describe.each(DEMOS)("%s", (name) => {
  const job = jobOfDemo(name);
  const clean = toldOf(job);

  test.each(PLANTED[name])(
    "$fault is found",
    ({ operations, told }) => {
      const after = toldOf(edited(job, operations));
      const fresh = [...after].filter((one) => !clean.has(one));
      expect(fresh.filter((one) => told.includes(one.split(" ")[0]!))).not.toEqual([]);
    },
    600_000,
  );

  test("an edit that changes nothing is not found", () => {
    expect([...toldOf(edited(job, [NEUTRAL[name]]))].sort()).toEqual([...clean].sort());
  }, 600_000);
});
