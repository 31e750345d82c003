import { describe, expect, test } from "vitest";
import {
  applyOperation,
  type Job,
  type Operation,
  type ProveResult,
  proveJob,
} from "../../engine/index.ts";
import { jobOfDemo, proofInputOf } from "../prove/proofOfDemo.ts";
import { PLANTED } from "./plantedFaults.ts";

function edited(job: Job, operations: readonly Operation[]): Job {
  const applied = applyOperation(job, { op: "batch", name: "edited", operations });
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusals));
  return applied.job;
}

const graveOf = ({ findings }: ProveResult): readonly string[] =>
  findings
    .filter(({ severity }) => severity !== "advise")
    .map(({ code, subject }) => `${code} ${subject.id}`);

const plantedJob = (fault: string): Job =>
  edited(
    jobOfDemo("aldreth-single"),
    PLANTED["aldreth-single"].find((one) => one.fault === fault)!.operations,
  );

/** Each different change told as a cure, with the findings it is told at. */
function curesOf({ findings }: ProveResult) {
  const cures = new Map<string, { change: readonly Operation[]; keys: string[] }>();
  for (const { code, subject, remedies } of findings) {
    for (const { change, cures: isCure, message } of remedies) {
      if (isCure !== true) continue;
      expect(message).toBeTruthy();
      const key = JSON.stringify(change);
      const known = cures.get(key) ?? { change: change as readonly Operation[], keys: [] };
      cures.set(key, known);
      known.keys.push(`${code} ${subject.id}`);
    }
  }
  return [...cures.values()];
}

const proven = (job: Job): ProveResult => proveJob(proofInputOf(job), { tryRemedies: false });

describe("what is said to cure does so, done to the job and proven again", () => {
  test("a wire taken from before its fuse: back behind it, and every wire after it is saved", () => {
    const job = plantedJob("missing fuse");
    const cures = curesOf(proveJob(proofInputOf(job)));
    const most = cures.reduce((best, one) => (one.keys.length > best.keys.length ? one : best));
    expect(most.keys.length).toBeGreaterThan(10);
    const left = new Set(graveOf(proven(edited(job, most.change))));
    for (const key of most.keys) expect(left).not.toContain(key);
  }, 600_000);

  test("a fuse marked with what blows it: one rating saves every wire behind it", () => {
    const job = plantedJob("blow-rated fuse");
    const result = proveJob(proofInputOf(job));
    const cures = curesOf(result);
    const most = cures.reduce((best, one) => (one.keys.length > best.keys.length ? one : best));
    expect(most.change).toContainEqual(
      expect.objectContaining({ list: "parts", id: "F1", path: ["ratingA"] }),
    );
    const left = new Set(graveOf(proven(edited(job, most.change))));
    for (const key of most.keys) expect(left).not.toContain(key);
  }, 600_000);

  test("thicker copper for one wire", () => {
    const job = plantedJob("blow-rated fuse");
    const sizes = curesOf(proveJob(proofInputOf(job))).filter(({ keys }) => keys.length === 1);
    const [{ change, keys }] = [sizes[0]!];
    expect(graveOf(proven(edited(job, change)))).not.toContain(keys[0]);
  }, 600_000);
});
