import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { asPlanned, type Job, readJob } from "../job/index.ts";
import { checkJob } from "./checkJob.ts";

function jobAt(path: string): Job {
  const read = readJob(readFileSync(new URL(`../../${path}`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error("refused");
  return read.job;
}

const jobs = [
  "demos/accessory-five-wires.json",
  "cases/reference-machines/a/job.json",
  "cases/reference-machines/d/job.json",
];

describe.each(jobs)("%s", (path) => {
  const job = jobAt(path);
  const result = checkJob(job);

  test("the same job gives the same answer, byte for byte", () => {
    expect(JSON.stringify(checkJob(job))).toBe(JSON.stringify(result));
  });

  test("no figure is missing without a reason, none is not a number", () => {
    const text = JSON.stringify(result, (_, value) => {
      if (typeof value === "number" && !Number.isFinite(value)) throw new Error("not a figure");
      return value;
    });
    expect(text.length).toBeGreaterThan(100);
    for (const row of result.loads) expect(row.worstDropV === null).toBe(row.why !== undefined);
    for (const row of result.wires) {
      expect(row.pathMm === null || row.worstA === null).toBe(row.why !== undefined);
    }
  });

  test("a row for every wire, fly lead, load and fuse; lists in order", () => {
    const planned = asPlanned(job);
    const wires = result.wires.filter(({ kind }) => kind === "wire").map(({ wire }) => wire);
    expect(wires).toEqual(planned.wires.map(({ id }) => id).sort());
    const fuses = planned.parts.filter(({ kind }) => kind === "fuse").map(({ id }) => id);
    expect(result.fuses.map(({ fuse }) => fuse)).toEqual(fuses.sort());
    expect(result.loads.map(({ load }) => load)).toEqual(
      result.loads.map(({ load }) => load).sort(),
    );
  });

  test("drop is feed and return, and contacts are part of it", () => {
    for (const { worstDropV, feedV, returnV, contactV } of result.loads) {
      if (worstDropV === null) continue;
      expect(worstDropV).toBeCloseTo(feedV! + returnV!, 12);
      expect(contactV!).toBeLessThanOrEqual(worstDropV + 1e-9);
    }
  });

  test("what counts is what decides", () => {
    const counted = result.findings.filter(({ accepted }) => accepted === null);
    const has = (severity: string): boolean => counted.some((one) => one.severity === severity);
    const expected = has("stop")
      ? "stop"
      : has("not-proven")
        ? "not-proven"
        : has("mend")
          ? "mend"
          : "fit";
    expect(result.verdict).toBe(expected);
  });
});

test("the accessory job is fit", () => {
  expect(checkJob(jobAt(jobs[0]!)).verdict).toBe("fit");
});
