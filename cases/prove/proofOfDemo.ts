import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Job, planJob, preparedProof, readJob } from "../../engine/index.ts";

export const DEMOS = [
  "aldreth-single",
  "minazuru-four",
  "orivesta-enduro",
  "brenzach-twin",
] as const;
export type Demo = (typeof DEMOS)[number];

export const jobOfDemo = (name: Demo): Job => {
  const path = join(import.meta.dirname, "../../demos", `${name}.json`);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read.refusals[0])}`);
  return read.job;
};

/** A job planned as `check` plans it, and made ready for the proof. */
export const proofInputOf = (job: Job) => preparedProof(planJob(job));
