import { readdirSync, readFileSync } from "node:fs";
import type { Job } from "../job.ts";
import { readJob } from "../read/readJob.ts";
import { writeJob } from "../write/writeJob.ts";
import { applyOperation } from "./applyOperation.ts";
import type { Operation } from "./operation.ts";

/** Every demo as read, by its name. */
export const demoJobs: readonly (readonly [string, Job])[] = readdirSync("demos")
  .filter((name) => name.endsWith(".json"))
  .map((name) => {
    const read = readJob(readFileSync(`demos/${name}`, "utf8"));
    if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read.refusals.slice(0, 2))}`);
    return [name.replace(".json", ""), read.job];
  });

/** The two that are quickly gone through: five wires at 12 V, and a whole machine at 6 V with the positive pole earthed. */
export const smallDemos = demoJobs.filter(([name]) =>
  ["accessory-five-wires", "aldreth-single"].includes(name),
);

export const demoJob = (name: string): Job => demoJobs.find(([one]) => one === name)![1];

/** The job after an operation that must be done, and undone without a trace. */
export function after(job: Job, operation: Operation): Job {
  const done = applyOperation(job, operation);
  if (!done.ok) throw new Error(JSON.stringify(done.refusals.slice(0, 3)));
  const undone = applyOperation(done.job, done.inverse);
  if (!undone.ok || writeJob(undone.job) !== writeJob(job)) throw new Error("leaves a trace");
  return done.job;
}
