import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readJob } from "../../job/index.ts";
import { messageOf } from "../../messages/index.ts";
import { checkedJob } from "../checkJob.ts";

test("a starter cable nobody has measured is told without its length", () => {
  const read = readJob(readFileSync("demos/brenzach-twin.json", "utf8"));
  if (!read.ok) throw new Error("the demo is refused");
  const { job } = read;
  const told = (runs: typeof job.runs) =>
    checkedJob({ ...job, runs }).result.findings.find(
      ({ code }) => code === "unfused-starter-cable",
    )!;
  const whole = told(job.runs);
  expect(messageOf(whole)).toMatch(/ lies \d/);
  const unmeasured = told(job.runs.map(({ lengthMm: _, ...run }) => run));
  expect(unmeasured.numbers.unfusedMm).toBeNull();
  expect(messageOf(unmeasured)).toMatch(/no fuse, as is usual/);
  expect(messageOf(unmeasured)).not.toMatch(/ lies /);
});
