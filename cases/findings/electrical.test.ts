import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { applyOperation, type Job, type Operation, readJob } from "../../engine/job/index.ts";
import { checkJob } from "../../engine/judge/index.ts";
import { explanationOf, findingCodes, severitiesOf } from "../../engine/messages/index.ts";

interface Sample {
  readonly code: string;
  readonly severity: string;
  readonly subject: string;
  readonly what: string;
  /** Job it begins with, from the root of the repository. */
  readonly base: string;
  readonly change: readonly Operation[];
}

const root = new URL("../../", import.meta.url);
const textAt = (path: string): string => readFileSync(new URL(path, root), "utf8");

function jobAt(path: string): Job {
  const read = readJob(textAt(path));
  if (!read.ok) throw new Error(read.refusals.map(({ message }) => message).join("\n"));
  return read.job;
}

function changed({ base, change }: Sample): Job {
  return change.reduce((job, operation) => {
    const applied = applyOperation(job, operation);
    if (!applied.ok) throw new Error(applied.refusals.map(({ message }) => message).join("\n"));
    return applied.job;
  }, jobAt(base));
}

const samplesIn = (name: string): readonly Sample[] =>
  JSON.parse(textAt(`cases/findings/${name}.json`));
const samples = samplesIn("electrical");

describe("one change brings a finding about", () => {
  test.each(samples.map((sample) => [`${sample.code}: ${sample.what}`, sample] as const))(
    "%s",
    (_, sample) => {
      const { findings } = checkJob(changed(sample));
      const said = findings.map((one) => `${one.code} ${one.severity} ${one.subject.id}`);
      expect(said).toContain(`${sample.code} ${sample.severity} ${sample.subject}`);
      for (const one of findings) {
        expect(severitiesOf(one.code), one.code).toContain(one.severity);
        expect(one.message).not.toMatch(/%[A-Za-z]|undefined|NaN/);
        for (const remedy of one.remedies) expect(remedy.message, one.code).toBeDefined();
      }
    },
  );
});

describe("the catalogue and the judges say the same things", () => {
  const sampled = new Set([...samples, ...samplesIn("workmanship")].map(({ code }) => code));

  test("every code has a sample, and every sample a code", () => {
    // What only a whole proof can find has its own cases beside the proof.
    const ofCheck = findingCodes.filter((code) => !code.startsWith("proof-"));
    expect([...sampled].sort()).toEqual(ofCheck);
  });

  test("every code is explained", () => {
    for (const code of findingCodes)
      expect(explanationOf(code).join(" ").length).toBeGreaterThan(20);
  });

  test("every code a judge writes down is in the catalogue", () => {
    const folder = new URL("engine/judge/", root);
    const sources = readdirSync(folder, { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts"))
      .map((name) => readFileSync(new URL(name, folder), "utf8"));
    const written = sources.flatMap((text) =>
      [...text.matchAll(/code:\s*"([a-z0-9-]+)"/g)].map((match) => match[1]!),
    );
    expect(written.length).toBeGreaterThan(40);
    expect(written.filter((code) => !findingCodes.includes(code))).toEqual([]);
  });
});
