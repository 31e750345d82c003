import { readFileSync } from "node:fs";
import { type Job, readJob } from "../job/index.ts";

/** A demo of the house, read. */
export function demo(name: string): Job {
  const text = readFileSync(new URL(`../../demos/${name}.json`, import.meta.url), "utf8");
  const read = readJob(text);
  if (!read.ok) throw new Error(`demo ${name} cannot be read`);
  return read.job;
}
