import { readFileSync } from "node:fs";
import { type Job, readJob } from "../job/index.ts";
import { conductorsOf, routeJob } from "../route/index.ts";
import { type SupplyModel, type SupplyOptions, supplyModel } from "./supplyModel.ts";

/** A job of the repository, by its path from the root. */
export function jobAt(path: string): Job {
  const read = readJob(readFileSync(new URL(`../../${path}`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error(read.refusals.map(({ message }) => message).join("\n"));
  return read.job;
}

/** Laid out without sizing: wires nobody has chosen take the router's makes. */
export function modelOf(job: Job, options: SupplyOptions = {}): SupplyModel {
  return supplyModel(job, conductorsOf(job, routeJob(job)), options);
}

/** Machine C, which names no output, with two points of its generator. */
export function withOutput(
  job: Job,
  points: readonly { readonly speedRpm: number; readonly currentA: number; readonly atV: number }[],
): Job {
  const stated = points.map((one) => ({ ...one, basis: "stated" as const }));
  const parts = job.parts.map((part) => {
    if (part.kind !== "generator" || part.type !== "alternator-pm") return part;
    const [first, ...rest] = part.windings;
    return { ...part, windings: [{ ...first!, points: stated }, ...rest] };
  });
  return { ...job, parts };
}
