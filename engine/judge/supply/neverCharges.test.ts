import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { type Job, readJob } from "../../job/index.ts";
import { checkJob } from "../checkJob.ts";

function demo(): Job {
  const path = new URL("../../../demos/aldreth-single.json", import.meta.url);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error("the demo reads");
  return read.job;
}

/** The dynamo's amperes times a ratio. */
const weakened = (job: Job, ratio: number): Job => ({
  ...job,
  parts: job.parts.map((part) =>
    part.kind !== "generator"
      ? part
      : {
          ...part,
          windings: part.windings.map((winding) => ({
            ...winding,
            ...(winding.points && {
              points: winding.points.map((one) => ({ ...one, currentA: one.currentA * ratio })),
            }),
          })),
        },
  ),
});

const found = (job: Job) => checkJob(job).findings.filter(({ code }) => code === "never-charges");

test("a dynamo of half the output never gives what main beam takes, and the sentence says by how much", () => {
  const [finding] = found(weakened(demo(), 0.5));
  expect(finding!.severity).toBe("mend");
  expect(finding!.subject).toEqual({ kind: "part", id: "DYN" });
  // 30 + 6 + 1.8 W at 6 V take 6.3 A, and half of 8.5 A is 4.25 A.
  expect(finding!.numbers.shortA).toBeGreaterThan(1.5);
  expect(finding!.numbers.shortA).toBeLessThan(2.5);
  expect(finding!.message).toMatch(/3.000.rpm/);
});

test("the dynamo as it is charges", () => {
  expect(found(demo())).toEqual([]);
});
